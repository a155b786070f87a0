package org.wattwright.drive;

import static org.wattwright.units.Measures.newtonMetres;
import static org.wattwright.units.Measures.revolutionsPerMinute;
import static org.wattwright.units.Measures.watts;

import java.util.List;
import java.util.stream.Stream;
import org.wattwright.testing.ValueTypeContract;

class MotorLossContractTest extends ValueTypeContract<MotorLoss> {
  private static MotorLoss map(double[][] efficiencies) {
    return MotorLoss.map(
        List.of(revolutionsPerMinute(1000), revolutionsPerMinute(4000)),
        List.of(newtonMetres(20), newtonMetres(100)),
        efficiencies);
  }

  private static double[][] efficiencies() {
    return new double[][] {{0.8, 0.85}, {0.9, 0.92}};
  }

  @Override
  protected MotorLoss sample() {
    return map(efficiencies());
  }

  @Override
  protected List<MotorLoss> different() {
    return List.of(
        map(new double[][] {{0.8, 0.85}, {0.9, 0.93}}),
        MotorLoss.constantEfficiency(0.9),
        MotorLoss.law().standing(watts(100)),
        MotorLoss.law().copper(watts(900), newtonMetres(100)),
        MotorLoss.law().iron(watts(900), revolutionsPerMinute(4000)),
        MotorLoss.law().windage(watts(900), revolutionsPerMinute(4000)));
  }

  @Override
  protected Stream<MotorLoss> madeFromInputsChangedLater() {
    double[][] later = efficiencies();
    MotorLoss made = map(later);
    later[0][0] = 0.1;
    return Stream.of(made);
  }
}
