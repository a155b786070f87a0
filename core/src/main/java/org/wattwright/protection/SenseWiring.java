package org.wattwright.protection;

import static org.wattwright.units.WorkshopUnits.VOLT;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.wattwright.check.Check;
import org.wattwright.check.CheckBuilder;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;

/**
 * The voltage taps of one cell-measuring unit, and what lies between neighbouring taps.
 *
 * <p>A sense wire is thin and starts at a cell that can feed any fault: each tap needs its own fuse
 * where it leaves the cell. If a fuse, a disconnect or a long link between two neighbouring taps
 * opens, the unit's inputs see the voltage of the whole pack, backwards: nothing of the kind may
 * lie there unless the unit bears it. Common practice. Immutable and thread-safe.
 *
 * <pre>{@code
 * SenseWiring.of("unit 1", 13, volts(403)).fusedTaps(13)
 *     .interruptedBy("link from bay 1 to bay 2").withstands(volts(80)).checks()
 * }</pre>
 */
public final class SenseWiring implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source PRACTICE =
      Source.commonPractice("fuse each tap; one measuring unit to one unbroken row of cells");

  private final String unit;
  private final int taps;
  private final double packV;
  private final @Nullable Integer fusedTaps;
  private final List<String> interruptions;
  private final @Nullable Double withstandV;

  private SenseWiring(
      String unit,
      int taps,
      double packV,
      @Nullable Integer fusedTaps,
      List<String> interruptions,
      @Nullable Double withstandV) {
    this.unit = unit;
    this.taps = taps;
    this.packV = packV;
    this.fusedTaps = fusedTaps;
    this.interruptions = List.copyOf(interruptions);
    this.withstandV = withstandV;
  }

  /**
   * The taps of one unit.
   *
   * @param unit its name
   * @param taps number of taps, 2 to 1000
   * @param packVoltage highest voltage of the whole pack, &gt; 0 V
   * @return the wiring, nothing between the taps
   * @throws InvalidInputException if an argument is outside its range
   */
  public static SenseWiring of(String unit, int taps, Quantity<ElectricPotential> packVoltage) {
    return new SenseWiring(
        Require.text("SenseWiring.unit", unit),
        Require.count("SenseWiring.taps", taps, 2, 1000),
        Require.quantity("SenseWiring.packVoltage", packVoltage, VOLT).positive(),
        null,
        List.of(),
        null);
  }

  /**
   * How many taps have a fuse or a fusible resistor where they leave the cell.
   *
   * @param count 0 to the number of taps
   * @return new wiring
   * @throws InvalidInputException if outside its range
   */
  public SenseWiring fusedTaps(int count) {
    int fused = Require.count("SenseWiring.fusedTaps", count, 0, taps);
    return new SenseWiring(unit, taps, packV, fused, interruptions, withstandV);
  }

  /**
   * A fuse, disconnect or long link between two neighbouring taps of this unit.
   *
   * @param what what lies there
   * @return new wiring
   * @throws InvalidInputException if blank
   */
  public SenseWiring interruptedBy(String what) {
    List<String> all = new ArrayList<>(interruptions);
    all.add(Require.text("SenseWiring.interruption", what));
    return new SenseWiring(unit, taps, packV, fusedTaps, all, withstandV);
  }

  /**
   * Voltage that the unit bears between two neighbouring taps, of either sign.
   *
   * @param value &gt; 0 V
   * @return new wiring
   * @throws InvalidInputException if not positive
   */
  public SenseWiring withstands(Quantity<ElectricPotential> value) {
    double volts = Require.quantity("SenseWiring.withstand", value, VOLT).positive();
    return new SenseWiring(unit, taps, packV, fusedTaps, interruptions, volts);
  }

  /**
   * The verdicts.
   *
   * @return codes {@code protection.sense-tap-fuse} and, for each interruption, {@code
   *     protection.sense-tap-interruption}
   */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    CheckBuilder fuses =
        Check.named("protection.sense-tap-fuse", "fused taps of " + unit).source(PRACTICE).safety();
    checks.add(
        fusedTaps == null
            ? fuses.notChecked("SenseWiring.fusedTaps of " + unit)
            : fuses.atLeast(Figure.count(fusedTaps), Figure.count(taps)));
    for (String interruption : interruptions) {
      checks.add(interruption(interruption));
    }
    return checks;
  }

  private Check interruption(String what) {
    CheckBuilder check =
        Check.named(
                "protection.sense-tap-interruption", what + " between neighbouring taps of " + unit)
            .source(PRACTICE)
            .safety()
            .note("opened there, the unit's inputs see the whole pack");
    return withstandV == null
        ? check.notChecked("SenseWiring.withstand of " + unit)
        : check.atLeast(Figure.ofSi(withstandV, VOLT), Figure.ofSi(packV, VOLT));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof SenseWiring that
        && unit.equals(that.unit)
        && taps == that.taps
        && packV == that.packV
        && Objects.equals(fusedTaps, that.fusedTaps)
        && interruptions.equals(that.interruptions)
        && Objects.equals(withstandV, that.withstandV);
  }

  @Override
  public int hashCode() {
    return Objects.hash(unit, taps, packV, fusedTaps, interruptions);
  }

  /**
   * Unit, taps and interruptions.
   *
   * @return for example {@code unit 1: 13 taps, 13 fused, 1 interruption}
   */
  @Override
  public String toString() {
    String fused = fusedTaps == null ? "" : ", " + fusedTaps + " fused";
    String broken = interruptions.isEmpty() ? "" : ", interrupted by " + interruptions;
    return unit + ": " + taps + " taps" + fused + broken;
  }
}
