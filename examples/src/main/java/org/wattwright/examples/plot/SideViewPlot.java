package org.wattwright.examples.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Two side views of a vehicle, one below the other: what leaves it, with the axle loads before, and
 * what goes in, with the axle loads after.
 *
 * <p>Places are to scale. Each mass is a mark whose area is in proportion to it; each axle load is
 * an arrow whose length is. Marks are numbered and named in a key below their view, so that marks
 * close together stay readable. The front of the vehicle is to the left. Immutable; each method
 * returns a plot with more in it.
 */
public final class SideViewPlot {
  private final Outline outline;
  private final List<View> views;

  private SideViewPlot(Outline outline, List<View> views) {
    this.outline = outline;
    this.views = List.copyOf(views);
  }

  /**
   * The vehicle from the side, in m.
   *
   * @param wheelbase &gt; 0
   * @param frontOverhang from the front axle forward, ≥ 0
   * @param rearOverhang from the rear axle backward, ≥ 0
   * @param height overall, &gt; 0
   * @param wheelRadius &gt; 0
   */
  public record Outline(
      double wheelbase,
      double frontOverhang,
      double rearOverhang,
      double height,
      double wheelRadius) {
    /**
     * Checks the sizes.
     *
     * @param wheelbase &gt; 0
     * @param frontOverhang ≥ 0
     * @param rearOverhang ≥ 0
     * @param height &gt; 0
     * @param wheelRadius &gt; 0
     * @throws IllegalArgumentException if a size is out of range or not finite
     */
    public Outline {
      requirePositive(wheelbase);
      requirePositive(height);
      requirePositive(wheelRadius);
      requirePositive(frontOverhang + wheelbase);
      requirePositive(rearOverhang + wheelbase);
    }

    double length() {
      return frontOverhang + wheelbase + rearOverhang;
    }
  }

  /** What a mark stands for. */
  public enum Sort {
    /** A part that leaves the vehicle. */
    REMOVED,
    /** A part that goes in. */
    ADDED,
    /** Battery modules or their enclosure. */
    BATTERY
  }

  /**
   * A mass at its place.
   *
   * @param label as the key names it
   * @param kilograms &gt; 0
   * @param behind distance behind the front axle in m
   * @param above height above the ground in m
   * @param sort what it stands for
   */
  public record Mark(String label, double kilograms, double behind, double above, Sort sort) {
    /**
     * Checks the numbers.
     *
     * @param label as the key names it
     * @param kilograms &gt; 0
     * @param behind distance behind the front axle in m
     * @param above height above the ground in m
     * @param sort what it stands for
     * @throws IllegalArgumentException if a number is out of range or not finite
     */
    public Mark {
      requirePositive(kilograms);
      Point.requireFinite(behind);
      Point.requireFinite(above);
    }
  }

  /**
   * Loads of both axles in kg.
   *
   * @param label the load case
   * @param front of the front axle
   * @param rear of the rear axle
   */
  public record AxleLoad(String label, double front, double rear) {
    /**
     * Checks the numbers.
     *
     * @param label the load case
     * @param front of the front axle
     * @param rear of the rear axle
     * @throws IllegalArgumentException if a number is not finite
     */
    public AxleLoad {
      Point.requireFinite(front);
      Point.requireFinite(rear);
    }
  }

  /**
   * One of the views.
   *
   * @param title above it
   * @param marks masses in it
   * @param light load of the empty vehicle
   * @param laden load of the laden vehicle
   * @param centre centre of gravity of the empty vehicle: behind the front axle, above the ground;
   *     left out if one of them is NaN
   */
  public record View(
      String title, List<Mark> marks, AxleLoad light, AxleLoad laden, Centre centre) {
    /**
     * Copies the list.
     *
     * @param title above it
     * @param marks masses in it
     * @param light load of the empty vehicle
     * @param laden load of the laden vehicle
     * @param centre centre of gravity of the empty vehicle
     */
    public View {
      marks = List.copyOf(marks);
    }
  }

  /**
   * A centre of gravity in m; NaN where it is not known.
   *
   * @param behind the front axle
   * @param above the ground
   */
  public record Centre(double behind, double above) {
    boolean isKnown() {
      return Double.isFinite(behind) && Double.isFinite(above);
    }
  }

  /**
   * A plot without views.
   *
   * @param outline of the vehicle
   * @return the start
   */
  public static SideViewPlot of(Outline outline) {
    return new SideViewPlot(outline, List.of());
  }

  /**
   * With one more view, below those before.
   *
   * @param view the view
   * @return a new plot
   */
  public SideViewPlot view(View view) {
    List<View> more = new ArrayList<>(views);
    more.add(view);
    return new SideViewPlot(outline, more);
  }

  /**
   * Draws it; views below the first say how the axle loads differ from those of the first.
   *
   * @param id of the drawing, unique on its page: lower-case letters, digits and hyphens
   * @return one {@code <svg>} element
   * @throws IllegalStateException if there is no view
   * @throws IllegalArgumentException if the identifier has other characters
   */
  public String svg(String id) {
    if (views.isEmpty()) {
      throw new IllegalStateException("a side view needs at least one view");
    }
    SideViewScale scale = SideViewScale.of(outline, views);
    double height =
        views.stream().mapToDouble(view -> scale.heightOf(view, outline)).sum()
            + SideViewScale.FOOTER;
    return SvgChart.draw(
        graphics -> {
          double top = 0;
          for (View view : views) {
            new SideViewPainter(graphics, outline, scale, top).paint(view, views.get(0));
            top += scale.heightOf(view, outline);
          }
          new SideViewLegend(graphics, scale).paint(top + SideViewScale.FOOTER - 16, views.get(0));
        },
        (int) Math.ceil(height),
        id);
  }

  private static void requirePositive(double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("must be > 0 and finite, but was " + value);
    }
  }
}
