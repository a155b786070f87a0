package org.wattwright.check;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.WorkshopUnits.VOLT;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricResistance;
import org.junit.jupiter.api.Nested;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.Kind;
import org.wattwright.units.Price;

class CheckContractTest {
  private static Figure v(double volts) {
    return Figure.of(volts(volts), VOLT);
  }

  @Nested
  class OfCheck extends ValueTypeContract<Check> {
    private CheckBuilder builder() {
      return Check.named("a.b", "what").source(Source.dataSheet("x"));
    }

    @Override
    protected Check sample() {
      return builder().atMost(v(1), v(2));
    }

    @Override
    protected List<Check> different() {
      return List.of(
          builder().atMost(v(1.1), v(2)),
          builder().atMost(v(1), v(2.1)),
          builder().atLeast(v(1), v(2)),
          builder().basis(Basis.MEASURED).atMost(v(1), v(2)),
          builder().note("n").atMost(v(1), v(2)),
          builder().safety().atMost(v(1), v(2)),
          builder().answeredBy(Party.CUSTOMER).atMost(v(1), v(2)),
          builder().estimated("e").atMost(v(1), v(2)),
          builder().source(Source.PHYSICS).atMost(v(1), v(2)),
          builder().holds(true),
          builder().notChecked("m"),
          builder().notChecked("n"),
          builder().notChecked(v(1), "m"),
          Check.named("a.c", "what").source(Source.dataSheet("x")).atMost(v(1), v(2)),
          Check.named("a.b", "other").source(Source.dataSheet("x")).atMost(v(1), v(2)));
    }

    @Override
    protected Stream<Check> madeFromInputsChangedLater() {
      CheckBuilder builder = builder();
      Check made = builder.atMost(v(1), v(2));
      builder.estimated("later");
      return Stream.of(made);
    }

    @Override
    protected Stream<Object> partsHandedOut(Check value) {
      return Stream.of(value.missing(), value.estimates());
    }
  }

  @Nested
  class OfFigure extends ValueTypeContract<Figure> {
    @Override
    protected Figure sample() {
      return v(3.65);
    }

    @Override
    protected List<Figure> different() {
      return List.of(
          v(3.66),
          Figure.of(amperes(3.65), Kind.CURRENT),
          Figure.number(3.65),
          Figure.share(0.5),
          Figure.count(3),
          Figure.of(celsius(20), Kind.TEMPERATURE),
          Figure.of(Price.of("4", "EUR")),
          Figure.of(Price.of("4", "USD")));
    }
  }

  @Nested
  class OfStep extends ValueTypeContract<Step> {
    @Override
    protected Step sample() {
      return step(List.of(new Step.Input("a", v(1))));
    }

    @Override
    protected List<Step> different() {
      return List.of(step(List.of()), step(List.of(new Step.Input("a", v(2)))));
    }

    private Step step(List<Step.Input> inputs) {
      return new Step("U", "m", "2·a", inputs, v(2), Basis.MEASURED, Source.PHYSICS);
    }

    @Override
    protected Stream<Step> madeFromInputsChangedLater() {
      List<Step.Input> inputs = new ArrayList<>(List.of(new Step.Input("a", v(1))));
      Step made = step(inputs);
      inputs.clear();
      return Stream.of(made);
    }

    @Override
    protected Stream<Object> partsHandedOut(Step value) {
      return Stream.of(value.inputs());
    }
  }

  @Nested
  class OfWorksheet extends ValueTypeContract<Worksheet> {
    @Override
    protected Worksheet sample() {
      return sheet("t", 1);
    }

    @Override
    protected List<Worksheet> different() {
      return List.of(sheet("u", 1), sheet("t", 2), new Worksheet("t", List.of()));
    }

    private Worksheet sheet(String title, double result) {
      Worksheet.Recording recording = Worksheet.record(title);
      recording.step("a", "m").gives(result, VOLT);
      return recording.toWorksheet();
    }

    @Override
    protected Stream<Object> partsHandedOut(Worksheet value) {
      return Stream.of(value.steps());
    }
  }

  @Nested
  class OfSource extends ValueTypeContract<Source> {
    @Override
    protected Source sample() {
      return Source.standard("IEC 60228", "Table 2");
    }

    @Override
    protected List<Source> different() {
      return List.of(
          Source.literature("IEC 60228", "Table 2"),
          Source.standard("IEC 60228", "Table 3"),
          Source.standard("IEC 60949", "Table 2"));
    }
  }

  @Nested
  class OfGiven extends ValueTypeContract<Given<?>> {
    @Override
    protected Given<?> sample() {
      return Given.measured(volts(3), "meter");
    }

    @Override
    protected List<Given<?>> different() {
      return List.of(
          Given.measured(volts(4), "meter"),
          Given.measured(volts(3), "other meter"),
          Given.dataSheet(volts(3), "meter"));
    }
  }

  @Nested
  class OfEstimate extends ValueTypeContract<Estimate<ElectricResistance>> {
    @Override
    protected Estimate<ElectricResistance> sample() {
      return estimate("r", 1, 2);
    }

    @Override
    protected List<Estimate<ElectricResistance>> different() {
      return List.of(estimate("s", 1, 2), estimate("r", 1.1, 2), estimate("r", 1, 2.1));
    }

    private Estimate<ElectricResistance> estimate(String name, double typical, double high) {
      return Estimate.of(
          name,
          milliohms(typical),
          Kind.RESISTANCE,
          new Estimate.Band(0.5, high),
          Source.commonPractice("x"));
    }
  }

  @Nested
  class OfCautionBand extends ValueTypeContract<CautionBand> {
    @Override
    protected CautionBand sample() {
      return CautionBand.shareOfLimit(0.05);
    }

    @Override
    protected List<CautionBand> different() {
      return List.of(
          CautionBand.NONE,
          CautionBand.shareOfLimit(0.06),
          CautionBand.absolute(volts(5), Kind.VOLTAGE),
          CautionBand.absolute(amperes(5), Kind.CURRENT));
    }
  }

  @Nested
  class OfOpenItem extends ValueTypeContract<OpenItem> {
    @Override
    protected OpenItem sample() {
      return new OpenItem(
          Party.CUSTOMER, OpenItem.Reason.MISSING, "range", List.of("a", "b"), false);
    }

    @Override
    protected List<OpenItem> different() {
      return List.of(
          new OpenItem(Party.CUSTOMER, OpenItem.Reason.MISSING, "range", List.of("a"), false),
          new OpenItem(Party.WORKSHOP, OpenItem.Reason.MISSING, "range", List.of("a", "b"), false),
          new OpenItem(Party.CUSTOMER, OpenItem.Reason.MISSING, "rang", List.of("a", "b"), false));
    }

    @Override
    protected Stream<OpenItem> madeFromInputsChangedLater() {
      List<String> codes = new ArrayList<>(List.of("b", "a"));
      OpenItem made = new OpenItem(Party.CUSTOMER, OpenItem.Reason.MISSING, "range", codes, false);
      codes.clear();
      return Stream.of(made);
    }

    @Override
    protected Stream<Object> partsHandedOut(OpenItem value) {
      return Stream.of(value.checks());
    }
  }
}
