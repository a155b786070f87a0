package org.wattwright.layout;

import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;

/** A quantity of the caller's own, asked candidate by candidate. */
final class OwnProperty implements Property {
  private final OwnValue<?> own;
  private final SearchSpec spec;

  OwnProperty(OwnValue<?> own, SearchSpec spec) {
    this.own = own;
    this.spec = spec;
  }

  @Override
  public String name() {
    return own.name();
  }

  @Override
  public Term on(Variant variant, Recorder recorder) {
    return (series, parallel, to) -> {
      double si = own.siOf(new Candidate(spec, variant, series, parallel));
      if (to.isOn()) {
        to.step(name(), "as worked out by the caller").gives(figure(si));
      }
      return si;
    };
  }

  @Override
  public double replayed(Candidate candidate) {
    return own.siOf(candidate);
  }

  @Override
  public Figure figure(double si) {
    return own.figure(si);
  }

  @Override
  public Basis basis(Variant variant) {
    return Basis.DATA_SHEET;
  }
}
