package org.wattwright.layout;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.BatteryModule;
import org.wattwright.battery.CellProperty;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;

/** A property that is a sum over modules and enclosures: mass, volume, price, count. */
final class SumProperty implements Property {
  private final Words words;
  private final Parts parts;
  private final DoubleFunction<Figure> figures;
  private final List<CellProperty> restsOn;

  /** Name, symbol of the worksheet, and what is missing where a part is not known. */
  record Words(String name, String symbol, String missing) {}

  /** Values in SI, NaN if not known: of one module, of one enclosure, of a candidate's pack. */
  record Parts(
      ToDoubleFunction<BatteryModule> ofModule,
      ToDoubleFunction<Enclosure> ofEnclosure,
      ToDoubleFunction<Candidate> replayed) {}

  SumProperty(
      Words words, Parts parts, DoubleFunction<Figure> figures, List<CellProperty> restsOn) {
    this.words = words;
    this.parts = parts;
    this.figures = figures;
    this.restsOn = restsOn;
  }

  @Override
  public String name() {
    return words.name();
  }

  @Override
  public Term on(Variant variant, Recorder recorder) {
    double moduleSi = parts.ofModule().applyAsDouble(variant.module());
    @Nullable Enclosure enclosure = variant.enclosure();
    double enclosureSi = enclosure == null ? 0 : parts.ofEnclosure().applyAsDouble(enclosure);
    return (series, parallel, to) -> {
      int count = series * parallel;
      int boxes = variant.enclosuresFor(count);
      double sum = count * moduleSi + boxes * enclosureSi;
      if (to.isOn() && Double.isFinite(sum)) {
        record(variant, count, sum, to);
      }
      return sum;
    };
  }

  private void record(Variant variant, int count, double sum, Recorder recorder) {
    String symbol = words.symbol();
    double moduleSi = parts.ofModule().applyAsDouble(variant.module());
    @Nullable Enclosure enclosure = variant.enclosure();
    double enclosureSi = enclosure == null ? 0 : parts.ofEnclosure().applyAsDouble(enclosure);
    if (enclosure == null || enclosureSi == 0) {
      recorder
          .step(symbol, words.name())
          .formula("n·" + symbol + "_module")
          .with("n", Figure.count(count))
          .with(symbol + "_module", figure(moduleSi))
          .basis(basis(variant))
          .gives(figure(sum));
      return;
    }
    recorder
        .step(symbol, words.name() + ", enclosures included")
        .formula("n·" + symbol + "_module + k·" + symbol + "_enclosure")
        .with("n", Figure.count(count))
        .with(symbol + "_module", figure(moduleSi))
        .with("k", Figure.count(enclosure.countFor(count)))
        .with(symbol + "_enclosure", figure(enclosureSi))
        .basis(basis(variant))
        .gives(figure(sum));
  }

  @Override
  public double replayed(Candidate candidate) {
    return parts.replayed().applyAsDouble(candidate);
  }

  @Override
  public Figure figure(double si) {
    return figures.apply(si);
  }

  @Override
  public Basis basis(Variant variant) {
    Basis weakest = restsOn.isEmpty() ? Basis.DATA_SHEET : Basis.MEASURED;
    for (CellProperty property : restsOn) {
      weakest = weakest.and(variant.module().basis(property));
    }
    return weakest;
  }

  @Override
  public Optional<String> missing(Variant variant) {
    if (Double.isNaN(parts.ofModule().applyAsDouble(variant.module()))) {
      return Optional.of(words.missing() + " of " + variant.module().name());
    }
    @Nullable Enclosure enclosure = variant.enclosure();
    return enclosure != null && Double.isNaN(parts.ofEnclosure().applyAsDouble(enclosure))
        ? Optional.of(words.missing() + " of " + enclosure.name())
        : Optional.empty();
  }
}
