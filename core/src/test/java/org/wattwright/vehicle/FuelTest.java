package org.wattwright.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wattwright.units.Measures.litres;

import org.junit.jupiter.api.Test;
import org.wattwright.units.InvalidInputException;
import org.wattwright.units.Kind;

class FuelTest {
  private static final Position TANK = Vans.at(2.4, 0, 0.5);

  private static double kg(MassItem item) {
    return Kind.MASS.siValueOf(item.mass());
  }

  /** By hand: 20 L at 747.5 kg/m³ is 14.95 kg, give or take 20 L at 27.5 kg/m³, 0.55 kg. */
  @Test
  void petrolWeighsWhatTheMiddleOfItsBandSays() {
    MassItem petrol = Fuel.PETROL.inTank(litres(20), TANK);
    assertThat(kg(petrol)).isCloseTo(14.95, within(1e-12));
    assertThat(Kind.MASS.siValueOf(petrol.massTolerance())).isCloseTo(0.55, within(1e-12));
    assertThat(petrol.name()).isEqualTo("20 L of petrol");
    assertThat(petrol.position()).isEqualTo(TANK);
  }

  /** By hand: 0.9 · 40 L at 832.5 kg/m³ is 29.97 kg. */
  @Test
  void runningOrderIsATankNineTenthsFull() {
    assertThat(kg(Fuel.DIESEL.inRunningOrder(litres(40), TANK))).isCloseTo(29.97, within(1e-12));
  }

  @Test
  void anEmptyTankWeighsNothing() {
    assertThat(kg(Fuel.PETROL.inTank(litres(0), TANK))).isZero();
  }

  @Test
  void aNegativeVolumeIsAnError() {
    assertThatThrownBy(() -> Fuel.PETROL.inTank(litres(-3), TANK))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContainingAll("Fuel.volume", "-3 L");
    assertThatThrownBy(() -> Fuel.PETROL.inRunningOrder(litres(-3), TANK))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContainingAll("Fuel.capacity", "-3 L");
  }
}
