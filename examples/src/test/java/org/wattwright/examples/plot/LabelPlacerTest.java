package org.wattwright.examples.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelPlacerTest {
  private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 600, 400);
  private static final double[] DISTANCES = {7, 14, 24, 36, 50, 66, 84, 104};

  private static Rectangle2D box(double x, double y) {
    return new Rectangle2D.Double(x, y, 50, 14);
  }

  @Test
  void takesTheFirstFreePlace() {
    LabelPlacer placer = new LabelPlacer(AREA);
    assertThat(placer.place(List.of(box(10, 10), box(100, 10)))).isEqualTo(box(10, 10));
    assertThat(placer.place(List.of(box(10, 10), box(100, 10)))).isEqualTo(box(100, 10));
  }

  @Test
  void staysInsideTheAreaAndOffMarksAndLines() {
    LabelPlacer placer = new LabelPlacer(AREA);
    placer.avoid(box(100, 10));
    placer.avoid(new Line2D.Double(200, 0, 230, 40));
    assertThat(placer.place(List.of(box(580, 10), box(100, 10), box(200, 10), box(300, 10))))
        .isEqualTo(box(300, 10));
  }

  @Test
  void ratherCoversALineThanALabel() {
    LabelPlacer placer = new LabelPlacer(AREA);
    placer.avoid(box(10, 10));
    placer.avoid(new Line2D.Double(100, 0, 130, 40));
    assertThat(placer.place(List.of(box(10, 10), box(100, 10)))).isEqualTo(box(100, 10));
  }

  @Test
  void aLeaderDoesNotCrossALabel() {
    LabelPlacer placer = new LabelPlacer(AREA);
    placer.place(List.of(box(100, 10)));
    Point2D point = new Point2D.Double(80, 17);
    assertThat(placer.place(List.of(box(170, 10), box(10, 10)), point)).isEqualTo(box(10, 10));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void twentyLabelsNeverOverlap(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    LabelPlacer placer = new LabelPlacer(AREA);
    List<Rectangle2D> placed = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      Point2D point = new Point2D.Double(150 + random.nextInt(300), 100 + random.nextInt(200));
      placed.add(placer.place(Surroundings.of(point, box(0, 0), DISTANCES), point));
    }
    for (int i = 0; i < placed.size(); i++) {
      assertThat(AREA.contains(placed.get(i))).isTrue();
      for (int j = 0; j < i; j++) {
        assertThat(placed.get(i).intersects(placed.get(j))).as("seed %d", seed).isFalse();
      }
    }
  }
}
