package org.wattwright.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.kiloohms;
import static org.wattwright.units.Measures.microfarads;
import static org.wattwright.units.Measures.ohms;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.volts;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.wattwright.check.Source;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.InvalidInputException;

/** Equality, text and serialisation of discharge, isolation and pre-charge loads. */
class ShockValueTypesTest {
  @Nested
  class Discharges extends ValueTypeContract<BusDischarge> {
    @Override
    protected BusDischarge sample() {
      return new BusDischarge(microfarads(1000), volts(400), kiloohms(47));
    }

    @Override
    protected List<BusDischarge> different() {
      return List.of(
          new BusDischarge(microfarads(1001), volts(400), kiloohms(47)),
          new BusDischarge(microfarads(1000), volts(401), kiloohms(47)),
          new BusDischarge(microfarads(1000), volts(400), kiloohms(48)));
    }
  }

  @Nested
  class Rules extends ValueTypeContract<DischargeRule> {
    private final Source source = Source.requirement("workshop");

    @Override
    protected DischargeRule sample() {
      return new DischargeRule("rule", seconds(90), false, source);
    }

    @Override
    protected List<DischargeRule> different() {
      return List.of(
          new DischargeRule("other", seconds(90), false, source),
          new DischargeRule("rule", seconds(91), false, source),
          new DischargeRule("rule", seconds(90), true, source),
          new DischargeRule("rule", seconds(90), false, Source.AS_GIVEN));
    }
  }

  @Nested
  class Leaks extends ValueTypeContract<IsolationLeaks> {
    @Override
    protected IsolationLeaks sample() {
      return new IsolationLeaks(kiloohms(150), kiloohms(250));
    }

    @Override
    protected List<IsolationLeaks> different() {
      return List.of(
          new IsolationLeaks(kiloohms(250), kiloohms(150)),
          IsolationLeaks.even(kiloohms(150)),
          IsolationLeaks.even(kiloohms(250)));
    }
  }

  @Nested
  class Measurements extends ValueTypeContract<IsolationMeasurement> {
    @Override
    protected IsolationMeasurement sample() {
      return measurement(400, 250, 150, 170, 200);
    }

    @Override
    protected List<IsolationMeasurement> different() {
      return List.of(
          measurement(401, 250, 150, 170, 200),
          measurement(400, 251, 150, 170, 200),
          measurement(400, 250, 151, 170, 200),
          measurement(400, 250, 150, 171, 200),
          measurement(400, 250, 150, 170, 201));
    }

    private IsolationMeasurement measurement(
        double pack, double higher, double lower, double again, double kiloohm) {
      return new IsolationMeasurement(
          volts(pack), volts(higher), volts(lower), volts(again), kiloohms(kiloohm));
    }
  }

  @Nested
  class Rails extends ValueTypeContract<RailCapacitance> {
    @Override
    protected RailCapacitance sample() {
      return new RailCapacitance(microfarads(1));
    }

    @Override
    protected List<RailCapacitance> different() {
      return List.of(new RailCapacitance(microfarads(2)), new RailCapacitance(microfarads(0)));
    }
  }

  @Nested
  class Loads extends ValueTypeContract<PrechargeLoad> {
    @Override
    protected PrechargeLoad sample() {
      return PrechargeLoad.resistance("bleed", kiloohms(10));
    }

    @Override
    protected List<PrechargeLoad> different() {
      return List.of(
          PrechargeLoad.resistance("heater", kiloohms(10)),
          PrechargeLoad.resistance("bleed", kiloohms(11)),
          PrechargeLoad.current("bleed", amperes(1)),
          PrechargeLoad.current("bleed", amperes(2)));
    }

    @Test
    void saysWhatItTakes() {
      assertThat(sample()).hasToString("bleed (10000 Ω)");
      assertThat(PrechargeLoad.current("pump", amperes(0.5))).hasToString("pump (0.5 A)");
      assertThat(PrechargeLoad.power("pump", watts(100), volts(200))).hasToString("pump (0.5 A)");
    }

    @Test
    void rejectsWhatCannotBe() {
      assertThatThrownBy(() -> PrechargeLoad.resistance(" ", ohms(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("PrechargeLoad.name");
      assertThatThrownBy(() -> PrechargeLoad.resistance("R", ohms(0)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("PrechargeLoad.resistance");
      assertThatThrownBy(() -> PrechargeLoad.current("I", amperes(-1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("PrechargeLoad.current");
      assertThatThrownBy(() -> PrechargeLoad.power("P", watts(-1), volts(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("PrechargeLoad.power");
      assertThatThrownBy(() -> PrechargeLoad.power("P", watts(1), volts(0)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("PrechargeLoad.startsAt");
    }
  }
}
