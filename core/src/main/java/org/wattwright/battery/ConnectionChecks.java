package org.wattwright.battery;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Figure;
import org.wattwright.check.Source;
import org.wattwright.units.Kind;

/** Checks of strings that are connected in parallel with no load. */
final class ConnectionChecks {
  private final Pack pack;
  private final List<PackState> states;

  ConnectionChecks(Pack pack, List<PackState> states) {
    this.pack = pack.atBandEnd(BandEnd.LOW);
    this.states = states;
  }

  List<Check> all() {
    StringSharing sharing = pack.stringCurrents(states, Kind.CURRENT.ofSi(0));
    List<Check> checks = new ArrayList<>();
    for (int k = 0; k < states.size(); k++) {
      checks.add(check(k, Kind.CURRENT.siValueOf(sharing.currents().get(k))));
    }
    return List.copyOf(checks);
  }

  private Check check(int k, double currentA) {
    SeriesString string = pack.strings().get(k);
    Direction direction = currentA >= 0 ? Direction.DISCHARGE : Direction.CHARGE;
    StringModel.CurrentBound bound =
        pack.models()
            .get(k)
            .bound(
                StringModel.State.of(states.get(k)), new Load(direction, Double.POSITIVE_INFINITY));
    return Check.named(
            "battery.equalising-current",
            "current of " + string.name() + " when all strings are connected, no load")
        .safety()
        .basis(
            pack.basis(CellProperty.RESISTANCE)
                .and(pack.basis(CellProperty.VOLTAGE))
                .and(string.basis(CellProperty.CURRENT)))
        .source(Source.dataSheet("cells of " + string.name()))
        .note(direction + ", limited by " + bound.limit())
        .atMost(
            Figure.of(Kind.CURRENT.ofSi(Math.abs(currentA)), Kind.CURRENT),
            Figure.of(Kind.CURRENT.ofSi(bound.currentA()), Kind.CURRENT));
  }
}
