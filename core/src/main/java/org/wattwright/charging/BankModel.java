package org.wattwright.charging;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.wattwright.units.Kind;

/**
 * Chargers in parallel on one charging point and one pack.
 *
 * <p>Single-phase chargers stand on the phases in turn. Where the chargers of one phase would draw
 * more than the point allows, all of them are held back by the same factor; a three-phase charger
 * by that of its tightest phase. What is drawn in the taper is shared in proportion to what each
 * could give.
 */
final class BankModel implements SourceModel {
  static final double ROUNDING = 1e-12;

  private final List<Charger> chargers;

  /** Output power of each charger in its full-performance band. */
  private final double[] availableW;

  private final double[] inputA;
  private final ChargeLimit powerLimit;

  private BankModel(
      List<Charger> chargers, double[] availableW, double[] inputA, ChargeLimit powerLimit) {
    this.chargers = chargers;
    this.availableW = availableW;
    this.inputA = inputA;
    this.powerLimit = powerLimit;
  }

  static BankModel of(List<Charger> chargers, ChargingPoint point, Quantity<Temperature> ambient) {
    AcLimits limits = point.limits();
    double allowedA = limits.leastA();
    double[] inputA = sharedA(chargers, point.supply(), allowedA);
    double[] availableW = new double[chargers.size()];
    ChargeLimit tightest = ChargeLimit.CHARGER_POWER;
    for (int k = 0; k < availableW.length; k++) {
      Charger charger = chargers.get(k);
      double byInputW = charger.outputW(charger.inputPowerW(point.supply(), inputA[k]));
      double byOutputW = charger.ratedW() * charger.deratingAt(ambient);
      availableW[k] = Math.min(byInputW, byOutputW);
      if (byInputW < byOutputW) {
        boolean heldBack = inputA[k] < charger.maximumInputA() || allowedA <= inputA[k];
        boolean byPower =
            charger.inputPowerW(point.supply(), inputA[k])
                < charger.uncappedInputW(point.supply(), inputA[k]);
        ChargeLimit own =
            heldBack && !byPower ? ChargeLimit.of(limits.governing()) : ChargeLimit.CHARGER_INPUT;
        tightest = own.compareTo(tightest) < 0 ? own : tightest;
      }
    }
    return new BankModel(chargers, availableW, inputA, tightest);
  }

  /** Current of each charger in each of its phases. */
  private static double[] sharedA(List<Charger> chargers, Supply supply, double allowedA) {
    double[] phaseA = new double[supply.phases()];
    int[] first = new int[chargers.size()];
    int next = 0;
    for (int k = 0; k < first.length; k++) {
      first[k] = next % phaseA.length;
      int used = chargers.get(k).phasesOn(supply);
      for (int phase = 0; phase < used; phase++) {
        phaseA[(first[k] + phase) % phaseA.length] += chargers.get(k).maximumInputA();
      }
      next += used;
    }
    double[] inputA = new double[first.length];
    for (int k = 0; k < first.length; k++) {
      double factor = 1;
      for (int phase = 0; phase < chargers.get(k).phasesOn(supply); phase++) {
        factor = Math.min(factor, allowedA / phaseA[(first[k] + phase) % phaseA.length]);
      }
      inputA[k] = factor * chargers.get(k).maximumInputA();
    }
    return inputA;
  }

  /** Current of one charger in each phase it draws from, at full power. */
  double inputA(int k) {
    return inputA[k];
  }

  double availableW(int k) {
    return availableW[k];
  }

  private double outputW(int k, double voltageV) {
    // Rounding must not switch a charger off at the very voltage it holds.
    double heldV = Math.min(voltageV, highestV(chargers.get(k)));
    double shownV = voltageV <= heldV * (1 + ROUNDING) ? heldV : voltageV;
    double derating = chargers.get(k).window().deratingAt(Kind.VOLTAGE.ofSi(shownV));
    return Math.min(availableW[k], chargers.get(k).ratedW() * derating);
  }

  @Override
  public double powerW(double voltageV) {
    double powerW = 0;
    for (int k = 0; k < availableW.length; k++) {
      powerW += outputW(k, voltageV);
    }
    return powerW;
  }

  @Override
  public ChargeLimit powerLimit() {
    return powerLimit;
  }

  @Override
  public double currentA() {
    return chargers.stream().mapToDouble(Charger::maximumOutputA).sum();
  }

  @Override
  public double lowestV() {
    return chargers.stream()
        .mapToDouble(charger -> Kind.VOLTAGE.siValueOf(charger.window().operating().lowest()))
        .min()
        .orElseThrow();
  }

  @Override
  public double highestV() {
    return chargers.stream().mapToDouble(BankModel::highestV).min().orElseThrow();
  }

  private static double highestV(Charger charger) {
    return Kind.VOLTAGE.siValueOf(charger.window().operating().highest());
  }

  @Override
  public double wallW(double outputW, double voltageV) {
    double availableNowW = powerW(voltageV);
    double wallW = 0;
    for (int k = 0; k < availableW.length && outputW > 0; k++) {
      double shareW = outputW * outputW(k, voltageV) / availableNowW;
      wallW += chargers.get(k).inputW(shareW);
    }
    return wallW;
  }
}
