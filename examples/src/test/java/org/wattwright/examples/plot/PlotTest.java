package org.wattwright.examples.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PlotTest {
  private static final String NASTY = "<script>alert(1)</script> & \"x\"";

  static Stream<Function<String, String>> plots() {
    return Stream.of(
        label -> windows(label).svg("p"),
        label -> power(label).svg("p"),
        label -> fuse(label).svg("p"),
        label -> single(label).svg("p"),
        label -> front(label).svg("p"),
        label -> side(label).svg("p"));
  }

  private static SideViewPlot side(String label) {
    SideViewPlot.Outline outline = new SideViewPlot.Outline(2.28, 0.62, 0.78, 1.86, 0.285);
    SideViewPlot.Centre centre = new SideViewPlot.Centre(0.94, 0.58);
    return SideViewPlot.of(outline)
        .view(
            new SideViewPlot.View(
                "before",
                List.of(
                    new SideViewPlot.Mark(label, 131, 0.08, 0.58, SideViewPlot.Sort.REMOVED),
                    new SideViewPlot.Mark("pin", 0.5, 0.08, 0.58, SideViewPlot.Sort.REMOVED)),
                new SideViewPlot.AxleLoad("kerb", 555, 390),
                new SideViewPlot.AxleLoad("laden", 680, 720),
                centre))
        .view(
            new SideViewPlot.View(
                "after",
                List.of(new SideViewPlot.Mark("box", 90.27, 2.6, 0.5, SideViewPlot.Sort.BATTERY)),
                new SideViewPlot.AxleLoad("kerb", 524, 533),
                new SideViewPlot.AxleLoad("laden", 645, 855),
                centre));
  }

  private static VoltageWindowPlot windows(String label) {
    return VoltageWindowPlot.empty()
        .packVoltage("full, at rest", 131.4)
        .packVoltage("empty, cold, peak load", 98.6)
        .device(window(label, 118.8));
  }

  private static VoltageWindowPlot.Window window(String label, double most) {
    return new VoltageWindowPlot.Window(
        label, new VoltageWindowPlot.Band(48, most), new VoltageWindowPlot.Band(60, most), 140);
  }

  private static LineSeriesPlot power(String label) {
    return LineSeriesPlot.of("State of charge [%]", "Power [kW]")
        .series(Series.of(label, List.of(new Point(0, 20), new Point(50, 40), new Point(100, 55))))
        .series(Series.of(label, List.of(new Point(0, 10), new Point(100, 30))))
        .horizontalLimit(label, 48)
        .verticalLimit("empty 10 %", 10)
        .mark("required", new Point(20, 48));
  }

  private static LineSeriesPlot fuse(String label) {
    return LineSeriesPlot.logarithmic("Current [A]", "Time [s]")
        .series(Series.of(label, List.of(new Point(600, 3600), new Point(10000, 0.004))))
        .verticalLimit("highest fault", 7400)
        .gap("left open", 700, 900);
  }

  private static SingleLinePlot single(String label) {
    List<SingleLinePlot.Element> every =
        Stream.of(LineSymbol.values())
            .map(symbol -> new SingleLinePlot.Element(symbol, symbol.name()))
            .toList();
    return SingleLinePlot.empty()
        .source(new SingleLinePlot.Column(label, every))
        .main(new SingleLinePlot.Column("main", every))
        .branch(new SingleLinePlot.Column("branch", every))
        .apart(new SingleLinePlot.Column("apart", every));
  }

  @Test
  void aSingleLineDiagramNamesEveryCircuitAndElement() {
    List<String> texts = texts(single("source").svg("p"));
    assertThat(texts).contains("source", "main", "branch", "apart", "M", "3~", "=", "~");
    assertThat(texts.stream().filter("FUSE"::equals)).hasSize(4);
  }

  @Test
  void aGapIsNamed() {
    assertThat(texts(fuse("label").svg("p"))).contains("left open");
    assertThatThrownBy(() -> fuse("label").gap("x", 0, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static ScatterFrontPlot front(String label) {
    ScatterFrontPlot plot = ScatterFrontPlot.of("Mass [kg]", "Usable energy [kWh]");
    for (int i = 0; i < 6; i++) {
      plot =
          plot.candidate(
              new ScatterFrontPlot.Candidate(
                  label,
                  "module " + i % 2,
                  new Point(200 + i, 30 + i % 3),
                  ScatterFrontPlot.Standing.values()[i % 3]));
    }
    return plot;
  }

  private static Document parse(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError(svg, e);
    }
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static List<String> texts(String svg) {
    return elements(parse(svg), "text").stream().map(Element::getTextContent).toList();
  }

  @ParameterizedTest
  @MethodSource("plots")
  void isOneScalableElementWithTextAsText(Function<String, String> plot) {
    String svg = plot.apply("label");
    Element root = parse(svg).getDocumentElement();
    assertThat(root.getTagName()).isEqualTo("svg");
    assertThat(root.getAttribute("viewBox")).startsWith("0 0 680 ");
    assertThat(root.hasAttribute("width")).isFalse();
    assertThat(texts(svg)).contains("label");
    assertThat(svg).contains("sans-serif").doesNotContain("Dialog").doesNotContain("<?xml");
  }

  @ParameterizedTest
  @MethodSource("plots")
  void isTheSameEveryTimeAndInEveryLocale(Function<String, String> plot) {
    String first = plot.apply("label");
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("de-DE", "ar-EG", "en-US")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(plot.apply("label")).isEqualTo(first);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @MethodSource("plots")
  void textFromInputStaysText(Function<String, String> plot) {
    String svg = plot.apply(NASTY);
    assertThat(svg).doesNotContain("<script");
    assertThat(elements(parse(svg), "script")).isEmpty();
    assertThat(String.join("\n", texts(svg))).contains("<script>alert(1)</script>");
  }

  @ParameterizedTest
  @MethodSource("plots")
  void everyIdentifierBearsTheNameOfThePlotAndEveryReferenceIsFound(Function<String, String> plot) {
    String svg = plot.apply("label");
    List<String> ids =
        elements(parse(svg), "*").stream()
            .map(e -> e.getAttribute("id"))
            .filter(id -> !id.isEmpty())
            .toList();
    assertThat(ids).isNotEmpty().doesNotHaveDuplicates().allMatch(id -> id.startsWith("p-"));
    List<String> references =
        Pattern.compile("url\\(#([^)]*)\\)")
            .matcher(svg)
            .results()
            .map(r -> r.group(1))
            .distinct()
            .toList();
    assertThat(ids).containsAll(references);
  }

  @Test
  void marksTheStretchWhereThePackLeavesTheWindow() {
    assertThat(texts(windows("charger").svg("p"))).contains("12.6 V outside", "118.8 V", "140 V");
    VoltageWindowPlot fits =
        VoltageWindowPlot.empty().packVoltage("full", 116.8).device(window("charger", 118.8));
    assertThat(texts(fits.svg("p"))).noneMatch(text -> text.endsWith("outside"));
  }

  @Test
  void marksAPackBelowTheWindowToo() {
    VoltageWindowPlot low =
        VoltageWindowPlot.empty()
            .packVoltage("full", 70)
            .packVoltage("empty", 40.5)
            .device(window("charger", 118.8));
    assertThat(texts(low.svg("p"))).contains("7.5 V outside");
  }

  @Test
  void sideViewSaysLoadsSharesAndChanges() {
    assertThat(texts(side("engine").svg("p")))
        .contains("555 kg", "390 kg", "58.7 %", "41.3 %", "524 kg", "533 kg")
        .contains("\u221231 kg", "+143 kg", "\u221235 kg", "+135 kg")
        .contains("engine", "131 kg", "0.5 kg", "90.3 kg", "centre of gravity, kerb");
  }

  @Test
  void sideViewWithoutAHeightHasNoCentreOfGravity() {
    SideViewPlot.Outline outline = new SideViewPlot.Outline(2.28, 0.62, 0.78, 1.86, 0.285);
    SideViewPlot plot =
        SideViewPlot.of(outline)
            .view(
                new SideViewPlot.View(
                    "empty",
                    List.of(),
                    new SideViewPlot.AxleLoad("kerb", 555, 390),
                    new SideViewPlot.AxleLoad("laden", 600, -10),
                    new SideViewPlot.Centre(0.94, Double.NaN)));
    assertThat(texts(plot.svg("p")))
        .contains("555 kg", "-10 kg")
        .noneMatch(t -> t.contains("gravity"));
  }

  /**
   * Length of an arrow and area of a mark are in proportion to kilograms, whatever the largest is.
   */
  @ParameterizedTest
  @ValueSource(doubles = {10, 131, 1000})
  void sideViewIsToScale(double heaviest) {
    SideViewPlot.View view =
        new SideViewPlot.View(
            "v",
            List.of(new SideViewPlot.Mark("m", heaviest, 0, 0.5, SideViewPlot.Sort.ADDED)),
            new SideViewPlot.AxleLoad("kerb", heaviest, heaviest),
            new SideViewPlot.AxleLoad("laden", heaviest, 2 * heaviest),
            new SideViewPlot.Centre(1, 0.5));
    SideViewPlot.Outline outline = new SideViewPlot.Outline(2, 0.5, 0.5, 1.8, 0.3);
    SideViewScale scale = SideViewScale.of(outline, List.of(view));
    assertThat(scale.arrow(2 * heaviest) / scale.arrow(heaviest)).isCloseTo(2, within(1e-12));
    assertThat(Math.pow(scale.radius(heaviest) / scale.radius(heaviest / 4), 2))
        .isCloseTo(4, within(1e-12));
    assertThat(scale.x(2) - scale.x(0)).isCloseTo(2 * scale.perMetre(), within(1e-9));
    assertThat(scale.x(-0.5)).isGreaterThan(0);
    assertThat(scale.x(2.5)).isLessThan(SvgChart.WIDTH);
  }

  @Test
  void legendNamesEverySeriesEvenOfEqualName() {
    assertThat(texts(power("0 °C").svg("p"))).filteredOn("0 °C"::equals).hasSize(3);
  }

  @Test
  void decadesHaveRoundLabels() {
    assertThat(texts(fuse("fuse").svg("p")))
        .contains("1000", "10000", "0.01", "0.1", "1", "10", "100");
  }

  @Test
  void aNarrowLogarithmicAxisStillHasLabels() {
    String svg =
        LineSeriesPlot.logarithmic("Current [A]", "Time [s]")
            .series(Series.of("a", List.of(new Point(310, 3.1), new Point(320, 3.2))))
            .svg("p");
    assertThat(texts(svg)).contains("300", "400", "3", "4");
  }

  @Test
  void aSinglePointIsDrawnToo() {
    String svg =
        LineSeriesPlot.of("x [m]", "y [m]")
            .series(Series.of("a", List.of(new Point(5, 0))))
            .svg("p");
    assertThat(texts(svg)).contains("a");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void rejectsWhatIsNotFinite(double value) {
    assertThatThrownBy(() -> new Point(value, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Point(1, value)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SideViewPlot.AxleLoad("a", value, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SideViewPlot.Mark("a", value, 0, 0, SideViewPlot.Sort.ADDED))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SideViewPlot.Outline(value, 0, 0, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new VoltageWindowPlot.Band(1, value))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> VoltageWindowPlot.empty().packVoltage("full", value))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void rejectsWhatALogarithmicAxisCannotShow() {
    LineSeriesPlot plot = LineSeriesPlot.logarithmic("I [A]", "t [s]");
    assertThatThrownBy(() -> plot.series(Series.of("a", List.of(new Point(0, 1)))))
        .hasMessageContaining("need values > 0");
    assertThatThrownBy(() -> plot.horizontalLimit("a", -1)).hasMessageContaining("> 0");
    assertThatThrownBy(() -> plot.verticalLimit("a", 0)).hasMessageContaining("> 0");
    assertThatThrownBy(() -> plot.mark("a", new Point(1, 0))).hasMessageContaining("> 0");
  }

  @Test
  void rejectsSwappedBandsEmptySeriesAndOddNames() {
    assertThatThrownBy(() -> new VoltageWindowPlot.Band(2, 1)).hasMessageContaining("least");
    assertThatThrownBy(() -> Series.of("a", List.of())).hasMessageContaining("a point");
    assertThatThrownBy(() -> power("a").svg("a\"b")).hasMessageContaining("plot id");
    assertThatThrownBy(() -> SideViewPlot.of(new SideViewPlot.Outline(2, 0, 0, 1, 0.3)).svg("p"))
        .isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> VoltageWindowPlot.empty().svg("p"))
        .isInstanceOf(IllegalStateException.class);
  }
}
