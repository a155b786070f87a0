package org.wattwright.conversion;

import static org.wattwright.units.Measures.format;

import java.util.List;
import java.util.Optional;
import org.wattwright.battery.CellProperty;
import org.wattwright.battery.Pack;
import org.wattwright.check.OpenItem;
import org.wattwright.check.Party;
import org.wattwright.units.Kind;
import org.wattwright.units.Measures;
import org.wattwright.voltage.VoltageEnvelope;
import org.wattwright.voltage.WindowReview;

/**
 * The sections of the calculation sheet of a conversion, one by one, so that a program can put its
 * own between them or add drawings.
 *
 * <pre>{@code
 * SheetSections sections = SheetSections.of(conversion);
 * Section windows = sections.windows().with(new Drawing(svg, "Voltage windows", "…"));
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class SheetSections {
  private static final List<String> CAUTIONS =
      List.of(
          "High voltage kills. A pack above 60 V DC (voltage class B of ISO 6469-3) is dangerous to"
              + " touch, cannot be switched off inside, and keeps its energy when the vehicle is"
              + " wrecked. Only people who are trained and authorised for it work on one.",
          "A wrong mass, brake, cable or fuse figure hurts people too. Check the inputs against the"
              + " parts in front of you: a result is no better than the basis printed beside it.",
          "This sheet supports local codes, approval rules and the judgement of a licensed"
              + " engineer. It replaces none of them, and nothing is built or driven on its"
              + " strength alone.",
          "NOT CHECKED means that an input is missing and nothing is claimed. CAUTION means close"
              + " to a limit, or resting on an estimate.");

  private final Conversion conversion;

  private SheetSections(Conversion conversion) {
    this.conversion = conversion;
  }

  /**
   * The sections of a conversion.
   *
   * @param conversion the conversion
   * @return its sections
   */
  public static SheetSections of(Conversion conversion) {
    return new SheetSections(conversion);
  }

  /**
   * The cautions that open every calculation sheet.
   *
   * @return the section
   */
  public static Section cautions() {
    return Section.of("Cautions").with(new Cautions(CAUTIONS));
  }

  /**
   * The pack: arrangement, capacity, energy, mass.
   *
   * @return the section
   */
  public Section pack() {
    Pack pack = conversion.pack();
    DataTable table = DataTable.of("", "What", ">Value", "Basis");
    for (int i = 0; i < pack.strings().size(); i++) {
      table = table.row(i == 0 ? "strings in parallel" : "", pack.strings().get(i).toString(), "");
    }
    table =
        table
            .row(
                "capacity",
                format(pack.capacity(), Kind.CHARGE),
                pack.basis(CellProperty.CAPACITY).toString())
            .row(
                "energy at rest voltage, full to empty, 25 °C",
                format(pack.nominalEnergy(Measures.celsius(25)), Kind.ENERGY),
                pack.basis(CellProperty.CAPACITY).and(pack.basis(CellProperty.VOLTAGE)).toString())
            .row(
                "voltage limits of the cells",
                format(pack.minimumVoltage(), Kind.VOLTAGE)
                    + " … "
                    + format(pack.maximumVoltage(), Kind.VOLTAGE),
                pack.basis(CellProperty.VOLTAGE).toString())
            .row(
                "mass of the modules",
                format(pack.mass(), Kind.MASS),
                pack.basis(CellProperty.MASS).toString())
            .row(
                "volume of the modules",
                pack.volume().map(volume -> format(volume, Kind.VOLUME)).orElse("not known"),
                pack.basis(CellProperty.MASS).toString());
    return Section.of("Pack").with(table);
  }

  /**
   * The voltages of the pack under the conditions, with their working.
   *
   * @return the section
   */
  public Section windows() {
    WindowReview review = conversion.windows();
    return Section.of("Voltage windows")
        .with(
            new Paragraph("Conditions: " + conversion.conditions() + "."),
            voltages(review.envelope()),
            new Paragraph(usable(review)))
        .withParts(Section.of("Working of the voltages").with(new Working(review.worksheet())));
  }

  private static DataTable voltages(VoltageEnvelope envelope) {
    return DataTable.of("", "Voltage of the pack", ">Value")
        .row("end of charge", format(envelope.endOfCharge(), Kind.VOLTAGE))
        .row("full, under charge or regeneration", format(envelope.fullUnderCharge(), Kind.VOLTAGE))
        .row("full, at rest", format(envelope.fullAtRest(), Kind.VOLTAGE))
        .row("nominal", format(envelope.nominal(), Kind.VOLTAGE))
        .row("empty, at rest", format(envelope.emptyAtRest(), Kind.VOLTAGE))
        .row(
            "empty, cold, at " + format(envelope.peakCurrent(), Kind.CURRENT),
            format(envelope.emptyUnderLoad(), Kind.VOLTAGE));
  }

  private static String usable(WindowReview review) {
    return review
        .usableStateOfCharge()
        .map(band -> "All devices work from " + band.emptiest() + " to " + band.fullest() + ".")
        .orElse("There is no state of charge at which all devices work.");
  }

  /**
   * The masses before and after by load case, the checks of axles, tyres, springs and brakes, the
   * parts removed and added, and the working.
   *
   * @return the section; it says so if no masses were given
   */
  public Section masses() {
    return conversion.masses().map(MassSection::of).orElseGet(MassSection::missing);
  }

  /**
   * The circuits with cable, fuse, contactor, faults and what deals with each current, the parts
   * and the working.
   *
   * @return the section; it says so if no circuits were given
   */
  public Section circuits() {
    return conversion
        .circuits()
        .map(all -> CircuitSection.of(all).withParts(CircuitSection.working(all)))
        .orElseGet(CircuitSection::missing);
  }

  /**
   * The isolation budget and the checks of discharge, bonding and faults through the chassis.
   *
   * @return the section; empty if no circuits were given
   */
  public Optional<Section> isolation() {
    return conversion.circuits().map(ShockSection::of);
  }

  /**
   * Performance with traction and half-shafts; range with its losses; what a limit costs.
   *
   * @return three sections; one that says so if no motion was given
   */
  public List<Section> motion() {
    return conversion
        .motion()
        .map(
            motion ->
                List.of(
                    MotionSection.performance(motion),
                    MotionSection.range(motion),
                    MotionSection.limit(motion)))
        .orElseGet(MotionSection::missing);
  }

  /**
   * The charges of the plan: current, time, energies, what limits when, and the working.
   *
   * @return the section; it says so if no plan was given
   */
  public Section charging() {
    return conversion
        .charging()
        .map(review -> ChargeSection.of(review).withParts(ChargeSection.working(review)))
        .orElseGet(ChargeSection::missing);
  }

  /**
   * The low-voltage loads, what they add up to, and the checks of converter and battery.
   *
   * @return the section; it says so if nothing was told of them
   */
  public Section lowVoltage() {
    return conversion.lowVoltage().map(LowVoltageSection::of).orElseGet(LowVoltageSection::missing);
  }

  /**
   * The review: how many of each verdict by area, with the check nearest to its limit, then all
   * that is not a pass, worst first.
   *
   * @return the section
   */
  public Section checks() {
    return ReviewSection.summary(conversion.review());
  }

  /**
   * All checks that are a pass, by area; meant as an appendix.
   *
   * @return the section
   */
  public Section passedChecks() {
    return ReviewSection.passed(conversion.review());
  }

  /**
   * What is still to be answered, and by whom.
   *
   * @return the section
   */
  public Section openItems() {
    List<OpenItem> items = conversion.openItems();
    Section section = Section.of("Open items");
    if (items.isEmpty()) {
      return section.with(new Paragraph("No check waits for an answer."));
    }
    for (Party party : Party.values()) {
      List<OpenItem> own = items.stream().filter(item -> item.answeredBy() == party).toList();
      section = own.isEmpty() ? section : section.with(questions(party, own));
    }
    return section;
  }

  private static DataTable questions(Party party, List<OpenItem> items) {
    DataTable table =
        DataTable.of("To be answered by the " + party, "What", "Why", "Safety", "Checks that wait");
    for (OpenItem item : items) {
      table =
          table.row(
              item.input(),
              item.reason().toString(),
              item.safety() ? "yes" : "",
              String.join(", ", item.checks()));
    }
    return table;
  }
}
