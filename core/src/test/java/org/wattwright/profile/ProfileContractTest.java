package org.wattwright.profile;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.watts;
import static org.wattwright.units.WorkshopUnits.AMPERE;
import static org.wattwright.units.WorkshopUnits.SECOND;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Nested;
import org.wattwright.testing.ValueTypeContract;
import org.wattwright.units.Kind;

class ProfileContractTest {
  @Nested
  class OfProfile extends ValueTypeContract<Profile<?>> {
    @Override
    protected Profile<?> sample() {
      return ramp(amperes(200));
    }

    @Override
    protected List<Profile<?>> different() {
      return List.of(
          ramp(amperes(201)),
          ramp(amperes(200)).repeated(2),
          Profile.constant(Kind.POWER, watts(200), seconds(10)),
          Profile.constant(Kind.TEMPERATURE, celsius(20), seconds(10)));
    }

    @Override
    protected Stream<Profile<?>> madeFromInputsChangedLater() {
      List<Sample<ElectricCurrent>> samples =
          new ArrayList<>(
              List.of(Sample.of(seconds(0), amperes(0)), Sample.of(seconds(10), amperes(200))));
      Profile<ElectricCurrent> ofSamples = Profile.ofSamples(Kind.CURRENT, samples);
      samples.set(1, Sample.of(seconds(99), amperes(99)));
      double[] times = {0, 10};
      double[] values = {0, 200};
      Profile<ElectricCurrent> ofPoints = Profile.ofPoints(SECOND, times, AMPERE, values);
      times[1] = 99;
      values[1] = 99;
      return Stream.of(ofSamples, ofPoints);
    }

    @Override
    protected Stream<Object> partsHandedOut(Profile<?> value) {
      return Stream.of(value.segments(), value.durationsIn(SECOND));
    }
  }

  @Nested
  class OfSample extends ValueTypeContract<Sample<ElectricCurrent>> {
    @Override
    protected Sample<ElectricCurrent> sample() {
      return Sample.of(seconds(1), amperes(2));
    }

    @Override
    protected List<Sample<ElectricCurrent>> different() {
      return List.of(Sample.of(seconds(1), amperes(3)), Sample.of(seconds(2), amperes(2)));
    }
  }

  @Nested
  class OfSegment extends ValueTypeContract<Segment<ElectricCurrent>> {
    @Override
    protected Segment<ElectricCurrent> sample() {
      return ramp(amperes(5)).segments().get(0);
    }

    @Override
    protected List<Segment<ElectricCurrent>> different() {
      return List.of(
          ramp(amperes(6)).segments().get(0), ramp(amperes(5)).repeated(2).segments().get(1));
    }
  }

  @Nested
  class OfWindow extends ValueTypeContract<Window<ElectricCurrent>> {
    @Override
    protected Window<ElectricCurrent> sample() {
      return ramp(amperes(5)).highestMean(seconds(2));
    }

    @Override
    protected List<Window<ElectricCurrent>> different() {
      return List.of(
          ramp(amperes(5)).highestMean(seconds(3)), ramp(amperes(6)).highestMean(seconds(2)));
    }
  }

  @Nested
  class OfSpell extends ValueTypeContract<Spell> {
    @Override
    protected Spell sample() {
      return spell(seconds(1), false);
    }

    @Override
    protected List<Spell> different() {
      return List.of(spell(seconds(2), false), spell(seconds(1), true));
    }

    private static Spell spell(Quantity<Time> length, boolean endless) {
      return new Spell(seconds(0), length, endless);
    }
  }

  private static Profile<ElectricCurrent> ramp(Quantity<ElectricCurrent> to) {
    return Profile.segments(Kind.CURRENT).rampTo(to, seconds(10)).build();
  }
}
