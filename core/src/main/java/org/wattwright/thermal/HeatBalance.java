package org.wattwright.thermal;

import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import org.wattwright.units.Kind;
import org.wattwright.units.Measure;
import org.wattwright.units.Measures;

/**
 * Where the heat of a pack came from and where it went, over a whole course.
 *
 * <p>resistive + reversible = stored + to the surroundings + to the stream. Immutable and
 * thread-safe.
 *
 * @param resistive loss in the resistances, connections included, ≥ 0
 * @param reversible entropic part, negative where it cools; 0 if not known
 * @param reversibleKnown whether every cell's entropic coefficient is known
 * @param stored in the pack, C·(T_end − T_start)
 * @param toSurroundings given to the surroundings; negative if they warmed the pack
 * @param toStream given to air or coolant; negative if it warmed the pack
 */
public record HeatBalance(
    Quantity<Energy> resistive,
    Quantity<Energy> reversible,
    boolean reversibleKnown,
    Quantity<Energy> stored,
    Quantity<Energy> toSurroundings,
    Quantity<Energy> toStream)
    implements Serializable {

  /**
   * Takes any quantity implementation.
   *
   * @param resistive loss in the resistances
   * @param reversible entropic part
   * @param reversibleKnown whether it is known
   * @param stored in the pack
   * @param toSurroundings given to the surroundings
   * @param toStream given to air or coolant
   */
  public HeatBalance {
    resistive = Measure.from(resistive, Kind.ENERGY);
    reversible = Measure.from(reversible, Kind.ENERGY);
    stored = Measure.from(stored, Kind.ENERGY);
    toSurroundings = Measure.from(toSurroundings, Kind.ENERGY);
    toStream = Measure.from(toStream, Kind.ENERGY);
  }

  static HeatBalance of(PackHeatModel model, CoursePieces pieces, boolean reversibleKnown) {
    double lossJ = 0;
    double reversibleJ = 0;
    double airJ = 0;
    double streamJ = 0;
    for (int i = 0; i < pieces.size(); i++) {
      double lengthS = pieces.lengthS(i);
      double integralKs = integralKs(model, pieces, i);
      lossJ += pieces.lossW(i) * lengthS;
      reversibleJ += pieces.reversibleW(i) * lengthS;
      airJ += model.airWPerK() * (integralKs - model.airK() * lengthS);
      streamJ += model.streamWPerK() * (integralKs - model.streamK() * lengthS);
    }
    return new HeatBalance(
        Kind.ENERGY.ofSi(lossJ),
        Kind.ENERGY.ofSi(reversibleJ),
        reversibleKnown,
        Kind.ENERGY.ofSi(storedJ(model, pieces)),
        Kind.ENERGY.ofSi(airJ),
        Kind.ENERGY.ofSi(streamJ));
  }

  /** ∫T·dt over a piece. */
  private static double integralKs(PackHeatModel model, CoursePieces pieces, int i) {
    double startK = pieces.startK(i);
    double lengthS = pieces.lengthS(i);
    double rateKPerS = model.rateKPerS(pieces.lossW(i) + pieces.reversibleW(i), startK);
    double riseKs = Relaxation.riseIntegralKs(rateKPerS, model.decayPerS(), lengthS);
    return startK * lengthS + riseKs;
  }

  private static double storedJ(PackHeatModel model, CoursePieces pieces) {
    return model.capacityJPerK() * (pieces.endK(pieces.size() - 1) - pieces.startK(0));
  }

  /**
   * All heat that arose in the pack: resistive and reversible.
   *
   * @return the sum
   */
  public Quantity<Energy> generated() {
    return Kind.ENERGY.ofSi(Kind.ENERGY.siValueOf(resistive) + Kind.ENERGY.siValueOf(reversible));
  }

  /**
   * The parts.
   *
   * @return for example {@code 0.5 kW·h: 0.4 kW·h stored, 0.06 kW·h to surroundings, 0.04 kW·h to
   *     stream (reversible part not known)}
   */
  @Override
  public String toString() {
    String remark = reversibleKnown ? "" : " (reversible part not known)";
    return text(generated())
        + ": "
        + text(stored)
        + " stored, "
        + text(toSurroundings)
        + " to surroundings, "
        + text(toStream)
        + " to stream"
        + remark;
  }

  private static String text(Quantity<Energy> energy) {
    return Measures.format(energy, Kind.ENERGY);
  }
}
