package org.wattwright.thermal;

import java.io.Serializable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Course of a lump in pieces of constant heat, in growing arrays; filled once, then only read. */
final class CoursePieces implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final int ROOM = 64;

  /** Thermal part of a piece. */
  record Piece(double lengthS, double endK, double lossW, double reversibleW) {}

  /** Electrical part of a piece: current at both ends, state of charge at its end. */
  record Drive(double fromA, double toA, double endSoc) {}

  private int size;
  private double startK;
  private double errorK;
  private double[] timesS = new double[ROOM];
  private double[] endsK = new double[ROOM];
  private double[] lossesW = new double[ROOM];
  private double[] reversiblesW = new double[ROOM];
  private double[] fromA = new double[ROOM];
  private double[] toA = new double[ROOM];
  private double[] endSocs = new double[ROOM];

  void start(double atK) {
    startK = atK;
  }

  void add(Piece piece, Drive drive) {
    if (size == timesS.length) {
      resize(2 * size);
    }
    timesS[size] = endS(size - 1) + piece.lengthS();
    endsK[size] = piece.endK();
    lossesW[size] = piece.lossW();
    reversiblesW[size] = piece.reversibleW();
    fromA[size] = drive.fromA();
    toA[size] = drive.toA();
    endSocs[size] = drive.endSoc();
    size++;
  }

  void finish(double summedErrorK) {
    errorK = summedErrorK;
    resize(size);
  }

  private void resize(int room) {
    timesS = Arrays.copyOf(timesS, room);
    endsK = Arrays.copyOf(endsK, room);
    lossesW = Arrays.copyOf(lossesW, room);
    reversiblesW = Arrays.copyOf(reversiblesW, room);
    fromA = Arrays.copyOf(fromA, room);
    toA = Arrays.copyOf(toA, room);
    endSocs = Arrays.copyOf(endSocs, room);
  }

  int size() {
    return size;
  }

  double errorK() {
    return errorK;
  }

  double startK(int i) {
    return i == 0 ? startK : endsK[i - 1];
  }

  double endK(int i) {
    return endsK[i];
  }

  double startS(int i) {
    return endS(i - 1);
  }

  double endS(int i) {
    return i < 0 ? 0 : timesS[i];
  }

  double lengthS(int i) {
    return endS(i) - startS(i);
  }

  double lossW(int i) {
    return lossesW[i];
  }

  double reversibleW(int i) {
    return reversiblesW[i];
  }

  double endSoc(int i) {
    return endSocs[i];
  }

  boolean charges(int i) {
    return Math.min(fromA[i], toA[i]) < 0;
  }

  boolean isCharging(int i, boolean charging) {
    return charging ? charges(i) : Math.max(fromA[i], toA[i]) >= 0;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CoursePieces that
        && startK == that.startK
        && Arrays.equals(timesS, that.timesS)
        && Arrays.equals(endsK, that.endsK)
        && Arrays.equals(lossesW, that.lossesW)
        && Arrays.equals(reversiblesW, that.reversiblesW)
        && Arrays.equals(endSocs, that.endSocs);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(startK) + Arrays.hashCode(endsK);
  }
}
