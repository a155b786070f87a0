package org.wattwright.conversion;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wattwright.battery.Pack;
import org.wattwright.check.Check;
import org.wattwright.check.Checks;
import org.wattwright.check.OpenItem;
import org.wattwright.check.OpenItems;
import org.wattwright.check.Outcome;
import org.wattwright.internal.MissingFields;
import org.wattwright.internal.Require;
import org.wattwright.units.InvalidInputException;
import org.wattwright.vehicle.AxleLimits;
import org.wattwright.vehicle.LoadCase;
import org.wattwright.vehicle.MassLedger;
import org.wattwright.voltage.Device;
import org.wattwright.voltage.OperatingConditions;
import org.wattwright.voltage.WindowReview;

/**
 * One vehicle with everything in it: pack, devices, conditions, masses, circuits.
 *
 * <p>{@link #review()} runs every check once, worst first; {@link #openItems()} says who must still
 * answer what.
 *
 * <pre>{@code
 * Conversion van = Conversion.of("bakery van")
 *     .pack(pack)
 *     .device(inverter).device(charger)
 *     .conditions(conditions)
 *     .masses(ledger).loadCases(LoadCase.KERB, laden).axleLimits(limits).chassis(chassis)
 *     .build();
 * van.review().forEach(System.out::println);
 * }</pre>
 *
 * <p>The library supports, never replaces, local codes, type-approval rules and licensed practice.
 * Immutable and thread-safe.
 */
public final class Conversion {
  private final String title;
  private final String customer;
  private final String vehicle;
  private final Pack pack;
  private final List<Device> devices;
  private final OperatingConditions conditions;
  private final List<Check> requirements;
  private final WindowReview windows;
  private final @Nullable VehicleReview masses;
  private final boolean kerbOnly;
  private final @Nullable Circuits circuits;
  private final @Nullable Motion motion;
  private final @Nullable ChargeReview charging;
  private final @Nullable LowVoltage lowVoltage;

  private Conversion(Builder builder) {
    title = builder.title;
    customer = builder.customer;
    vehicle = builder.vehicle;
    pack = MissingFields.present(builder.pack);
    devices = List.copyOf(builder.devices);
    conditions = MissingFields.present(builder.conditions);
    requirements = List.copyOf(builder.requirements);
    windows = WindowReview.of(pack, devices, conditions);
    masses = builder.vehicleReview();
    kerbOnly = builder.loadCases.isEmpty();
    circuits = builder.circuits;
    lowVoltage = builder.lowVoltage;
    motion = builder.motion;
    charging = builder.chargePlan == null ? null : ChargeReview.of(pack, builder.chargePlan);
  }

  /**
   * Starts a conversion.
   *
   * @param title as reports print it
   * @return a builder
   * @throws InvalidInputException if the title is blank
   */
  public static Builder of(String title) {
    return new Builder(Require.text("Conversion.title", title));
  }

  /** Collects a conversion. */
  public static final class Builder {
    private final String title;
    private String customer = "";
    private String vehicle = "";
    private @Nullable Pack pack;
    private final List<Device> devices = new ArrayList<>();
    private @Nullable OperatingConditions conditions;
    private final List<Check> requirements = new ArrayList<>();
    private @Nullable MassLedger masses;
    private List<LoadCase> loadCases = List.of();
    private AxleLimits axleLimits = AxleLimits.builder().build();
    private Chassis chassis = Chassis.unknown();
    private @Nullable Circuits circuits;
    private @Nullable Motion motion;
    private @Nullable ChargePlan chargePlan;
    private @Nullable LowVoltage lowVoltage;

    Builder(String title) {
      this.title = title;
    }

    /**
     * Who asks for the conversion.
     *
     * @param value a name or remark
     * @return this builder
     */
    public Builder customer(String value) {
      customer = Require.text("Conversion.customer", value);
      return this;
    }

    /**
     * What is converted.
     *
     * @param value a description
     * @return this builder
     */
    public Builder vehicle(String value) {
      vehicle = Require.text("Conversion.vehicle", value);
      return this;
    }

    /**
     * The traction pack. Required.
     *
     * @param value the pack
     * @return this builder
     */
    public Builder pack(Pack value) {
      pack = Objects.requireNonNull(value, "pack");
      return this;
    }

    /**
     * Adds a device on the traction bus. At least one is required.
     *
     * @param value the device
     * @return this builder
     */
    public Builder device(Device value) {
      devices.add(Objects.requireNonNull(value, "device"));
      return this;
    }

    /**
     * The conditions between which everything must work. Required.
     *
     * @param value the conditions
     * @return this builder
     */
    public Builder conditions(OperatingConditions value) {
      conditions = Objects.requireNonNull(value, "conditions");
      return this;
    }

    /**
     * Adds a check of a requirement that the conversion does not know itself, such as energy or
     * mass asked for.
     *
     * @param value the check
     * @return this builder
     */
    public Builder requirement(Check value) {
      requirements.add(Objects.requireNonNull(value, "requirement"));
      return this;
    }

    /**
     * What leaves the weighed vehicle and what goes in. Without it the review says with one check,
     * {@code vehicle.masses}, that axles, tyres and brakes are NOT_CHECKED.
     *
     * @param value the ledger
     * @return this builder
     */
    public Builder masses(MassLedger value) {
      masses = Objects.requireNonNull(value, "masses");
      return this;
    }

    /**
     * The load cases to look at; the kerb mass alone unless told.
     *
     * @param values no name twice
     * @return this builder
     */
    public Builder loadCases(LoadCase... values) {
      loadCases = List.of(values);
      return this;
    }

    /**
     * Plates, gross mass and tyres.
     *
     * @param value the limits
     * @return this builder
     */
    public Builder axleLimits(AxleLimits value) {
      axleLimits = Objects.requireNonNull(value, "axleLimits");
      return this;
    }

    /**
     * Brakes, springs, tyre pressures, and what is asked of them.
     *
     * @param value as far as known
     * @return this builder
     */
    public Builder chassis(Chassis value) {
      chassis = Objects.requireNonNull(value, "chassis");
      return this;
    }

    /**
     * Cables, fuses, contactors, pre-charge, isolation. Without them nothing is checked and nothing
     * is claimed about any circuit.
     *
     * @param value the circuits with their parts
     * @return this builder
     */
    public Builder circuits(Circuits value) {
      circuits = Objects.requireNonNull(value, "circuits");
      return this;
    }

    /**
     * How the vehicle goes. Without it the review says with one check, {@code drive.motion}, that
     * performance and range are NOT_CHECKED.
     *
     * @param value worked out with the pack of the conversion
     * @return this builder
     */
    public Builder motion(Motion value) {
      motion = Objects.requireNonNull(value, "motion");
      return this;
    }

    /**
     * From what the vehicle is charged. Without it the review says with one check, {@code
     * charging.plan}, that charging is NOT_CHECKED.
     *
     * @param value the plan; each of its charges is run once, when the conversion is built
     * @return this builder
     */
    public Builder charging(ChargePlan value) {
      chargePlan = Objects.requireNonNull(value, "charging");
      return this;
    }

    /**
     * The low-voltage side. Without it the review says with one check, {@code
     * charging.low-voltage}, that it is NOT_CHECKED.
     *
     * @param value loads, battery, converter, targets
     * @return this builder
     */
    public Builder lowVoltage(LowVoltage value) {
      lowVoltage = Objects.requireNonNull(value, "lowVoltage");
      return this;
    }

    private @Nullable VehicleReview vehicleReview() {
      return masses == null
          ? null
          : VehicleReview.of(
              masses,
              loadCases.isEmpty() ? List.of(LoadCase.KERB) : loadCases,
              axleLimits,
              chassis);
    }

    /**
     * The conversion.
     *
     * @return an immutable conversion
     * @throws InvalidInputException if pack, conditions or devices are missing, one error lists
     *     all; if two load cases have one name; or if the motion is that of another pack
     */
    public Conversion build() {
      new MissingFields("Conversion")
          .field("pack", pack)
          .field("device", devices.isEmpty() ? null : devices)
          .field("conditions", conditions)
          .rejectIfAny();
      if (motion != null && !motion.vehicle().pack().equals(pack)) {
        throw InvalidInputException.of(
            "Conversion.motion", "that of the pack", motion.vehicle().pack().toString());
      }
      return new Conversion(this);
    }
  }

  /**
   * Title as reports print it.
   *
   * @return the title
   */
  public String title() {
    return title;
  }

  /**
   * Who asks for the conversion.
   *
   * @return empty if not stated
   */
  public Optional<String> customer() {
    return customer.isEmpty() ? Optional.empty() : Optional.of(customer);
  }

  /**
   * What is converted.
   *
   * @return empty if not stated
   */
  public Optional<String> vehicle() {
    return vehicle.isEmpty() ? Optional.empty() : Optional.of(vehicle);
  }

  /**
   * The traction pack.
   *
   * @return the pack
   */
  public Pack pack() {
    return pack;
  }

  /**
   * The devices on the traction bus.
   *
   * @return an immutable list
   */
  public List<Device> devices() {
    return devices;
  }

  /**
   * The conditions between which everything must work.
   *
   * @return the conditions
   */
  public OperatingConditions conditions() {
    return conditions;
  }

  /**
   * The pack against the windows of its devices.
   *
   * @return the review of the voltages
   */
  public WindowReview windows() {
    return windows;
  }

  /**
   * The masses against axles, tyres, brakes and springs.
   *
   * @return empty if no masses were given; the calculation sheet then says so
   */
  public Optional<VehicleReview> masses() {
    return Optional.ofNullable(masses);
  }

  /**
   * The circuits with their parts and what protects people.
   *
   * @return empty if none were given; the calculation sheet then says so
   */
  public Optional<Circuits> circuits() {
    return Optional.ofNullable(circuits);
  }

  /**
   * Performance and range.
   *
   * @return empty if not given; the calculation sheet then says so
   */
  public Optional<Motion> motion() {
    return Optional.ofNullable(motion);
  }

  /**
   * The charges of the plan.
   *
   * @return empty if no plan was given; the calculation sheet then says so
   */
  public Optional<ChargeReview> charging() {
    return Optional.ofNullable(charging);
  }

  /**
   * The low-voltage side.
   *
   * @return empty if nothing was told of it; the calculation sheet then says so
   */
  public Optional<LowVoltage> lowVoltage() {
    return Optional.ofNullable(lowVoltage);
  }

  /**
   * Every check, once, worst first.
   *
   * @return an immutable list
   */
  public List<Check> review() {
    List<Check> checks = new ArrayList<>(windows.checks());
    checks.addAll(massChecks());
    circuits().ifPresent(all -> checks.addAll(all.checks()));
    checks.addAll(
        charging().map(ChargeReview::checks).orElseGet(() -> List.of(ChargeReview.missing())));
    checks.addAll(
        lowVoltage().map(LowVoltage::checks).orElseGet(() -> List.of(LowVoltage.missing())));
    checks.addAll(motion().map(Motion::checks).orElseGet(() -> List.of(MotionRuns.missing())));
    checks.addAll(requirements);
    return Checks.bySeverity(checks);
  }

  /**
   * The requirements that came in as checks.
   *
   * @return in the order given
   */
  List<Check> requirements() {
    return requirements;
  }

  private List<Check> massChecks() {
    if (masses == null) {
      return List.of(VehicleChecks.missingMasses());
    }
    List<Check> checks = new ArrayList<>(masses.checks());
    if (kerbOnly) {
      checks.add(VehicleChecks.missingLoadCases());
    }
    return checks;
  }

  /**
   * The worst verdict of the review.
   *
   * @return of all checks together
   */
  public Outcome outcome() {
    return Outcome.worstOf(review());
  }

  /**
   * What is missing or estimated, by who must answer.
   *
   * @return an immutable list
   */
  public List<OpenItem> openItems() {
    return OpenItems.of(review());
  }

  /**
   * This conversion and another one side by side, such as two packs in one vehicle.
   *
   * @param other the second variant
   * @return figures with differences, and the checks that changed
   */
  public Comparison compare(Conversion other) {
    return Comparison.of(this, other);
  }

  /**
   * The fingerprint of the inputs: title, customer and vehicle; pack with its cells, tables,
   * strings and links; devices; conditions; requirements; the vehicle as weighed, parts removed and
   * added, load cases, axle limits, chassis; circuits with their parts, the list of circuits,
   * isolation, further checks; the charge plan; the low-voltage side; the vehicle in motion, laden
   * and in winter, cycles, what is asked.
   *
   * <p>Each by its own fields, numbers in SI to twelve significant digits, so that 0.1 m and 100 mm
   * are one input. The order of devices, requirements, parts, load cases, circuits and further
   * checks plays no part; that of strings and of the bays along a string does. A part of a
   * catalogue that was not chosen is not in it, nor is the code of a function that the caller gave,
   * nor the version of the library.
   *
   * @return the same for the same inputs, on every Java machine
   */
  public Fingerprint fingerprint() {
    return ConversionInputs.fingerprint(this);
  }

  /**
   * The calculation sheet: cautions first, then pack, voltage windows, masses and axles, circuits,
   * isolation, charging, low voltage, performance, range, power limit, checks and open items;
   * behind them the workings and the checks that pass.
   *
   * @return the sheet; {@link MarkdownSheet} prints it
   */
  public CalculationSheet toSheet() {
    SheetSections sections = SheetSections.of(this);
    String subtitle =
        String.join(" – ", List.of(customer, vehicle).stream().filter(t -> !t.isEmpty()).toList());
    List<Section> all =
        new ArrayList<>(
            List.of(
                SheetSections.cautions(),
                sections.pack(),
                sections.windows(),
                sections.masses(),
                sections.circuits()));
    sections.isolation().ifPresent(all::add);
    all.add(sections.charging());
    all.add(sections.lowVoltage());
    all.addAll(sections.motion());
    all.add(sections.checks());
    all.add(sections.openItems());
    return new CalculationSheet(title, subtitle, all)
        .withWorkingBehind()
        .withAppendix(sections.passedChecks())
        .withInputs(fingerprint());
  }

  /**
   * Title, verdict and pack.
   *
   * @return for example {@code bakery van: CAUTION, 1 string of 30 modules, …}
   */
  @Override
  public String toString() {
    return title + ": " + outcome() + ", " + pack;
  }
}
