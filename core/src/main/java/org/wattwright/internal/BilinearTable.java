package org.wattwright.internal;

import java.io.Serializable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wattwright.units.InvalidInputException;

/**
 * Bilinear function of two variables on a rectangular grid; beyond its edges the edge value is
 * held. A single value is a 1 × 1 grid.
 *
 * <p>Immutable; the arrays are copied in.
 */
public final class BilinearTable implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] rowAxis;
  private final double[] columnAxis;

  /** values[row][column]. */
  private final double[][] values;

  private BilinearTable(double[] rowAxis, double[] columnAxis, double[][] values) {
    this.rowAxis = rowAxis;
    this.columnAxis = columnAxis;
    this.values = values;
  }

  /** From strictly increasing axes and values[row][column]; all finite. */
  public static BilinearTable of(
      String field, double[] rowAxis, double[] columnAxis, double[][] values) {
    LinearTable.requireIncreasing(field + ".rows", rowAxis);
    LinearTable.requireIncreasing(field + ".columns", columnAxis);
    if (values.length != rowAxis.length) {
      throw InvalidInputException.of(field, rowAxis.length + " rows", values.length + " rows");
    }
    double[][] copy = new double[values.length][];
    for (int row = 0; row < values.length; row++) {
      copy[row] = rowCopy(field + "[" + row + "]", values[row], columnAxis.length);
    }
    return new BilinearTable(rowAxis.clone(), columnAxis.clone(), copy);
  }

  private static double[] rowCopy(String field, double[] row, int columns) {
    if (row.length != columns) {
      throw InvalidInputException.of(field, columns + " columns", row.length + " columns");
    }
    for (int column = 0; column < columns; column++) {
      Require.finite(field + "[" + column + "]", row[column]);
    }
    return row.clone();
  }

  /** A single value everywhere. */
  public static BilinearTable constant(double value) {
    return new BilinearTable(new double[] {0}, new double[] {0}, new double[][] {{value}});
  }

  /** Value at a point, held at the edges. */
  public double at(double row, double column) {
    int i = rowAxis.length == 1 ? 0 : LinearTable.segment(rowAxis, row);
    double low = alongColumns(values[i], column);
    if (rowAxis.length == 1) {
      return low;
    }
    double high = alongColumns(values[i + 1], column);
    return low + share(rowAxis, i, row) * (high - low);
  }

  private double alongColumns(double[] rowValues, double column) {
    if (columnAxis.length == 1) {
      return rowValues[0];
    }
    int j = LinearTable.segment(columnAxis, column);
    return rowValues[j] + share(columnAxis, j, column) * (rowValues[j + 1] - rowValues[j]);
  }

  private static double share(double[] axis, int i, double x) {
    double share = (x - axis[i]) / (axis[i + 1] - axis[i]);
    return Math.max(0, Math.min(1, share));
  }

  /** The table along its rows at one column value. */
  public LinearTable atColumn(double column) {
    double[] ys = new double[rowAxis.length];
    for (int i = 0; i < ys.length; i++) {
      ys[i] = alongColumns(values[i], column);
    }
    return LinearTable.of("BilinearTable", rowAxis, ys);
  }

  /** The same table with every value multiplied by a factor. */
  public BilinearTable scaled(double factor) {
    double[][] scaled = new double[values.length][];
    for (int i = 0; i < values.length; i++) {
      scaled[i] = values[i].clone();
      for (int j = 0; j < scaled[i].length; j++) {
        scaled[i][j] *= factor;
      }
    }
    return new BilinearTable(rowAxis, columnAxis, scaled);
  }

  /** Smallest value in the grid. */
  public double smallest() {
    double smallest = Double.POSITIVE_INFINITY;
    for (double[] row : values) {
      for (double value : row) {
        smallest = Math.min(smallest, value);
      }
    }
    return smallest;
  }

  /** Number of grid points. */
  public int size() {
    return rowAxis.length * columnAxis.length;
  }

  /** Copy of the row axis. */
  public double[] rowAxis() {
    return rowAxis.clone();
  }

  /** Copy of the column axis. */
  public double[] columnAxis() {
    return columnAxis.clone();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BilinearTable that
        && Arrays.equals(rowAxis, that.rowAxis)
        && Arrays.equals(columnAxis, that.columnAxis)
        && Arrays.deepEquals(values, that.values);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(rowAxis) + Arrays.deepHashCode(values);
  }
}
