package org.wattwright.conductor;

import static org.wattwright.units.Measures.amperes;
import static org.wattwright.units.Measures.celsius;
import static org.wattwright.units.Measures.joulesPerKelvin;
import static org.wattwright.units.Measures.kelvinsPerWatt;
import static org.wattwright.units.Measures.metres;
import static org.wattwright.units.Measures.millimetres;
import static org.wattwright.units.Measures.milliohms;
import static org.wattwright.units.Measures.ohmsPerKilometre;
import static org.wattwright.units.Measures.seconds;
import static org.wattwright.units.Measures.squareMillimetres;

import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.check.Given;
import org.wattwright.profile.Profile;
import org.wattwright.testing.ReferenceRow;
import org.wattwright.testing.ReferenceRows;
import org.wattwright.testing.Validation;
import org.wattwright.units.Kind;

/** Heat balance, air, convection, currents of tables, busbars, duty and transients. */
class HeatingReferenceTest {
  @RegisterExtension static final Validation VALIDATION = Validation.of("conductor");

  /** Conductor and outer diameter of typical PVC cables, as the rows of topic 5 state them. */
  private static final Map<Double, double[]> TYPICAL_MM =
      Map.of(
          4.0, new double[] {2.6, 4.8},
          16.0, new double[] {5.3, 8.1},
          35.0, new double[] {7.9, 11.7},
          50.0, new double[] {9.4, 13.9},
          70.0, new double[] {11.2, 16.0});

  static Stream<ReferenceRow> balances() {
    return ReferenceRows.read("/conductor/heat-balance.csv").stream()
        .filter(
            row ->
                row.quantity().matches(".*(current|temperature|loss per metre|thermal resist).*"))
        .filter(row -> !row.quantity().startsWith("heat loss"));
  }

  @ParameterizedTest
  @MethodSource("balances")
  void heatBalanceAgrees(ReferenceRow row) {
    if (row.quantity().startsWith("thermal resistivity")) {
      String material = row.given("material");
      InsulationMaterial insulation =
          material.startsWith("XLPE")
              ? InsulationMaterial.XLPE
              : material.startsWith("PVC") ? InsulationMaterial.PVC : InsulationMaterial.EPR;
      VALIDATION.transcribed(
          row, 1 / Kind.THERMAL_CONDUCTIVITY.siValueOf(insulation.thermalConductivity()));
      return;
    }
    Cable cable = row.has("shielded cable") ? shielded() : balanceCable(row);
    if (row.quantity().contains("thermal resistance")) {
      VALIDATION.computed(
          row, Kind.THERMAL_RESISTANCE.siValueOf(cable.thermalResistance(metres(1)).orElseThrow()));
      return;
    }
    SteadyHeating heating =
        SteadyHeating.of(cable, Installation.freeAir(celsius(row.givenNumber("Ta"))));
    Quantity<ElectricCurrent> current =
        row.has("I")
            ? amperes(row.givenNumber("I"))
            : heating.ampacityAt(celsius(row.givenNumber("Tc")));
    SteadyState state = heating.at(current).orElseThrow();
    switch (row.quantity()) {
      case "continuous current from the heat balance", "continuous current" ->
          VALIDATION.computed(row, Kind.CURRENT.siValueOf(current));
      case "surface temperature at that current", "surface temperature" ->
          VALIDATION.computed(row, toCelsius(state.surface()));
      case "conductor temperature at a given current" ->
          VALIDATION.computed(row, toCelsius(state.conductor()));
      default -> VALIDATION.computed(row, Kind.POWER.siValueOf(state.heatOver(metres(1))));
    }
  }

  private static Cable balanceCable(ReferenceRow row) {
    if (!row.has("S")) {
      return Conditions.cable(50, 0.386, row.givenNumber("d_c"), row.givenNumber("D"));
    }
    String size = row.conditions().toString().replaceAll(".*R20=([0-9.]+).*", "$1");
    return Conditions.cable(
        row.givenNumber("S"),
        Double.parseDouble(size),
        row.givenNumber("d_c"),
        row.givenNumber("D"));
  }

  private static Cable shielded() {
    return Conditions.cable(35, 0.554, 7.9, 14.4).toBuilder()
        .insulationDiameter(millimetres(11.0))
        .screenDiameter(millimetres(11.6))
        .build();
  }

  static Stream<ReferenceRow> airAndConvection() {
    return ReferenceRows.read("/conductor/air-and-convection.csv").stream()
        .filter(row -> !row.quantity().contains("laminar form"))
        .filter(row -> !row.source().startsWith("Incropera and DeWitt, Table A.4"))
        .filter(
            row ->
                row.quantity().matches(".*(of air|horizontal cylinder|^radiation per metre$).*"));
  }

  /**
   * Two books: at 300 K to 400 K the air of Incropera and DeWitt (from memory) conducts 2.5 %
   * better than that of the table carried here. Both are kept; a heat loss moves by less than 3 %.
   */
  @org.junit.jupiter.api.Test
  void airOfTheOtherBookAgreesWithinFourPerCent() {
    ReferenceRows.read("/conductor/air-and-convection.csv").stream()
        .filter(row -> row.source().startsWith("Incropera and DeWitt, Table A.4"))
        .filter(row -> !row.quantity().startsWith("volumetric"))
        .forEach(
            row ->
                org.assertj.core.api.Assertions.assertThat(airValue(row) / row.number())
                    .as(row.toString())
                    .isBetween(0.96, 1.04));
  }

  @ParameterizedTest
  @MethodSource("airAndConvection")
  void airAndConvectionAgree(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.contains("Nusselt")) {
      VALIDATION.computed(
          row, Convection.cylinderNusselt(row.givenNumber("Ra"), row.givenNumber("Pr")));
    } else if (quantity.startsWith("convection coefficient")) {
      VALIDATION.computed(
          row,
          Kind.HEAT_TRANSFER_COEFFICIENT.siValueOf(
              Convection.cylinderCoefficient(
                  millimetres(row.givenNumber("D")),
                  celsius(row.givenNumber("Ts")),
                  celsius(row.givenNumber("Ta")))));
    } else if (quantity.startsWith("radiation")) {
      VALIDATION.computed(row, radiation(row));
    } else {
      air(row);
    }
  }

  private static double radiation(ReferenceRow row) {
    SurfaceLoss.Surroundings surroundings =
        SurfaceLoss.Surroundings.at(row.givenNumber("Tsurr") + 273.15);
    return new CylinderLoss(surroundings, row.givenNumber("eps"), row.givenNumber("D") / 1000)
        .radiationWPerM(row.givenNumber("Ts") + 273.15);
  }

  private static double airValue(ReferenceRow row) {
    double filmK = Kind.TEMPERATURE.siValueOf(row.given("T", Kind.TEMPERATURE));
    return switch (row.quantity()) {
      case "thermal conductivity of air" -> AirProperties.conductivityWPerMK(filmK);
      case "kinematic viscosity of air" -> AirProperties.kinematicViscosityM2PerS(filmK);
      case "Prandtl number of air" -> AirProperties.prandtl(filmK);
      default -> 1 / filmK;
    };
  }

  private static void air(ReferenceRow row) {
    if (row.source().contains("A-15")) {
      VALIDATION.transcribed(row, airValue(row));
    } else {
      VALIDATION.computed(row, airValue(row));
    }
  }

  static Stream<ReferenceRow> pipes() {
    return ReferenceRows.read("/conductor/air-and-convection.csv").stream()
        .filter(row -> row.id().matches("C-04[56789]|C-05[345678]"))
        .filter(row -> row.id().matches("C-04[5789]|C-058"));
  }

  /** Worked examples whose air is given: the parts of the balance that do not need our table. */
  @ParameterizedTest
  @MethodSource("pipes")
  void workedExamplesAgree(ReferenceRow row) {
    switch (row.id()) {
      case "C-045" -> VALIDATION.computed(row, examplePipe(0.08, 1, 343, 293) * 6);
      case "C-047" -> VALIDATION.computed(row, examplePipe(0.1, 0.8, 423, 293));
      case "C-048" ->
          VALIDATION.computed(row, 9.8 * 2.79e-3 * 130 * 1e-3 / (21.7984e-6 * 31.244e-6));
      case "C-049" -> VALIDATION.computed(row, Convection.cylinderNusselt(5218900, 0.698));
      default -> VALIDATION.computed(row, row.givenNumber("lambda") / row.givenNumber("h") * 1000);
    }
  }

  private static double examplePipe(
      double diameterM, double emissivity, double surfaceK, double aroundK) {
    return new CylinderLoss(SurfaceLoss.Surroundings.at(aroundK), emissivity, diameterM)
        .radiationWPerM(surfaceK);
  }

  static Stream<ReferenceRow> ratings() {
    return ReferenceRows.read("/conductor/rating-tables.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("ratings")
  void ratingTablesAgree(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.startsWith("power loss")) {
      double ohmPerM = row.givenNumber("R20") / 1000;
      ConductorSize size =
          ConductorSize.of(
              "row",
              ConductorMaterial.COPPER,
              squareMillimetres(row.givenNumber("S")),
              Given.dataSheet(ohmsPerKilometre(ohmPerM * 1000), "row"));
      double hotOhmPerM = Kind.RESISTANCE_PER_LENGTH.siValueOf(size.resistanceAt(celsius(70)));
      double currentA = row.givenNumber("I");
      VALIDATION.computed(row, currentA * currentA * hotOhmPerM);
      return;
    }
    if (quantity.startsWith("highest air")
        || quantity.contains("engine") && !quantity.contains("outside")) {
      return; // Rules of the tables' own installations, which the library does not carry.
    }
    double conductorC =
        row.has("conductor") ? row.givenNumber("conductor") : row.givenNumber("insulation");
    Quantity<ElectricCurrent> printed =
        table(quantity).printed(tableSize(row), celsius(conductorC)).orElseThrow();
    if (quantity.startsWith("continuous current, single core")
        && TYPICAL_MM.containsKey(row.givenNumber("S"))) {
      VALIDATION.computed(row, balanceAmpere(row));
    } else {
      VALIDATION.transcribed(row, Kind.CURRENT.siValueOf(printed));
    }
  }

  private static AmpacityTable table(String quantity) {
    return switch (quantity) {
      case "continuous current, single core in free air" -> AmpacityTable.VDE_FREE_AIR;
      case "continuous current, multi-core on a surface" -> AmpacityTable.VDE_MULTICORE_ON_SURFACE;
      case "continuous current, three single cores touching in free air (method F)" ->
          AmpacityTable.IEC_THREE_TOUCHING;
      case "allowable current, stranded copper, outside engine space" -> AmpacityTable.BOAT_CABLE;
      case "ampacity, up to three conductors in raceway or cable" -> AmpacityTable.NEC_RACEWAY;
      default -> AmpacityTable.NEC_FREE_AIR;
    };
  }

  private static ConductorSize tableSize(ReferenceRow row) {
    return row.has("S") ? Conditions.size(row) : renamed(row);
  }

  private static ConductorSize renamed(ReferenceRow row) {
    ConductorSize size = Conditions.gauge(row);
    return ConductorSize.of(size.name(), Conditions.metal(row), size.area(), size.resistance());
  }

  private static double balanceAmpere(ReferenceRow row) {
    double areaMm2 = row.givenNumber("S");
    double[] diametersMm = TYPICAL_MM.get(areaMm2);
    ConductorSize size = ConductorSize.metric(squareMillimetres(areaMm2), StrandClass.FLEXIBLE);
    Cable cable =
        Cable.of("typical", size, InsulationMaterial.PVC)
            .conductorDiameter(millimetres(diametersMm[0]))
            .outerDiameter(millimetres(diametersMm[1]))
            .build();
    return Kind.CURRENT.siValueOf(
        SteadyHeating.of(cable, Installation.freeAir(celsius(30))).ampacityAt(celsius(70)));
  }

  static Stream<ReferenceRow> factors() {
    return ReferenceRows.read("/conductor/correction-factors.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("factors")
  void correctionFactorsAgree(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.startsWith("ambient")) {
      VALIDATION.computed(
          row, ambient(row.givenNumber("conductor"), upper(row), row.givenNumber("reference")));
    } else if (quantity.startsWith("grouping")) {
      Arrangement arrangement =
          quantity.contains("bundled")
              ? Arrangement.BUNDLED
              : quantity.contains("touching")
                  ? Arrangement.TOUCHING_LAYER
                  : Arrangement.SPACED_LAYER;
      VALIDATION.transcribed(row, arrangement.currentFactor((int) row.givenNumber("circuits")));
    } else if (quantity.startsWith("adjustment")) {
      int conductors = (int) row.givenNumber("conductors");
      double relative =
          Arrangement.CONDUIT.currentFactor(conductors) / Arrangement.CONDUIT.currentFactor(3);
      VALIDATION.transcribed(row, relative * 100);
    } else if (row.has("I1")) {
      double reference = 30;
      double conductorC = row.givenNumber("conductor");
      VALIDATION.computed(
          row, row.givenNumber("I1") * ambient(conductorC, row.givenNumber("Ta2"), reference));
    } else {
      VALIDATION.computed(row, 129 * 0.87 * Arrangement.BUNDLED.currentFactor(3));
    }
  }

  /** Range tables are worked out at the top of the range. */
  private static double upper(ReferenceRow row) {
    String air = row.given("air").replaceAll("^[0-9]+-", "");
    return Double.parseDouble(air.replaceAll("[^0-9.].*", ""));
  }

  private static double ambient(double conductorC, double airC, double referenceC) {
    return AmpacityTable.ambientFactor(celsius(conductorC), celsius(airC), celsius(referenceC));
  }

  static Stream<ReferenceRow> busbars() {
    return ReferenceRows.read("/conductor/busbars.csv").stream()
        .filter(
            row ->
                row.quantity()
                    .matches(
                        "continuous .C current.*, one bar|.*ampacity of a flat bar.*|mass.*|DC resistance.*"));
  }

  @ParameterizedTest
  @MethodSource("busbars")
  void busbarsAgree(ReferenceRow row) {
    boolean inches = row.given("bar").contains("in");
    ConductorMaterial metal = inches ? ConductorMaterial.copperOf(0.99) : ConductorMaterial.COPPER;
    double[] sidesMm = sides(row.given("bar"));
    Busbar bar =
        Busbar.of(
            metal,
            millimetres(Math.max(sidesMm[0], sidesMm[1])),
            millimetres(Math.min(sidesMm[0], sidesMm[1])));
    if (row.has("surface") && row.given("surface").equals("painted")) {
      bar = bar.painted();
    }
    if (row.quantity().startsWith("mass")) {
      double kgPerM = Kind.MASS.siValueOf(bar.mass(metres(1)));
      VALIDATION.computed(row, inches ? kgPerM * 0.3048 / 0.45359237 : kgPerM);
    } else if (row.quantity().startsWith("DC resistance")) {
      VALIDATION.computed(
          row, Kind.RESISTANCE.siValueOf(bar.resistance(metres(0.3048), celsius(20))) * 1e6);
    } else {
      double airC = row.has("air") ? row.givenNumber("air") : 40;
      double barC = row.has("rise") ? airC + row.givenNumber("rise") : 65;
      SteadyHeating heating = SteadyHeating.of(bar, Installation.freeAir(celsius(airC)));
      VALIDATION.computed(row, Kind.CURRENT.siValueOf(heating.ampacityAt(celsius(barC))));
    }
  }

  static Stream<ReferenceRow> busbarCorrections() {
    return ReferenceRows.read("/conductor/busbars.csv").quantity("correction factor k2");
  }

  /** The balance of a bare 40 x 5 mm bar against the chart of the standard. */
  @ParameterizedTest
  @MethodSource("busbarCorrections")
  void busbarCorrectionsAgree(ReferenceRow row) {
    double atA = barAmpere(row.givenNumber("bar"), row.givenNumber("air"));
    VALIDATION.computed(row, atA / barAmpere(65, 35));
  }

  private static double barAmpere(double barC, double airC) {
    Busbar bar = Busbar.of(ConductorMaterial.COPPER, millimetres(40), millimetres(5));
    return Kind.CURRENT.siValueOf(
        SteadyHeating.of(bar, Installation.freeAir(celsius(airC))).ampacityAt(celsius(barC)));
  }

  /** Such as {@code 40x5 mm} or {@code 1/8 x 1 in}. */
  private static double[] sides(String text) {
    boolean inches = text.contains("in");
    String[] parts = text.replaceAll("(mm|in)", "").split("x");
    double[] sides = new double[2];
    for (int i = 0; i < 2; i++) {
      String[] fraction = parts[i].strip().split("/");
      double value = Double.parseDouble(fraction[0]);
      value = fraction.length == 2 ? value / Double.parseDouble(fraction[1]) : value;
      sides[i] = inches ? value * 25.4 : value;
    }
    return sides;
  }

  static Stream<ReferenceRow> duties() {
    return ReferenceRows.read("/conductor/duty-and-time-constant.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("duties")
  void dutyAgrees(ReferenceRow row) {
    String quantity = row.quantity();
    if (quantity.matches("current at \\d+ % duty") && row.has("I100")) {
      double share = Double.parseDouble(quantity.replaceAll("[^0-9]", "")) / 100;
      VALIDATION.computed(
          row,
          Kind.CURRENT.siValueOf(DutyRating.onCurrent(amperes(row.givenNumber("I100")), share)));
    } else if (quantity.startsWith("RMS")) {
      VALIDATION.computed(row, Kind.CURRENT.siValueOf(profile(row).rms()));
    } else if (quantity.startsWith("short-time")) {
      double preloadA = row.has("preload") ? row.givenNumber("preload") : 0;
      VALIDATION.computed(
          row,
          Kind.CURRENT.siValueOf(
              DutyRating.shortTimeCurrent(
                  amperes(row.givenNumber("Iz")),
                  amperes(preloadA),
                  seconds(row.givenNumber("t")),
                  seconds(row.givenNumber("tau")))));
    } else if (quantity.startsWith("allowed on-current")) {
      VALIDATION.computed(
          row,
          Kind.CURRENT.siValueOf(
              DutyRating.periodicOnCurrent(
                  amperes(1),
                  seconds(row.givenNumber("on")),
                  seconds(row.givenNumber("period")),
                  seconds(row.givenNumber("tau")))));
    } else if (quantity.startsWith("heat capacity")) {
      double joulePerM3K = ConductorMaterial.COPPER.thermal().heatCapacityJPerM3K();
      VALIDATION.computed(row, row.givenNumber("S") * 1e-6 * joulePerM3K);
    } else if (quantity.startsWith("thermal time constant")) {
      FirstOrderHeating part =
          FirstOrderHeating.of(
              milliohms(1),
              ConductorMaterial.COPPER,
              kelvinsPerWatt(row.givenNumber("Rth")),
              joulesPerKelvin(row.givenNumber("C")));
      VALIDATION.computed(row, Kind.TIME.siValueOf(part.timeConstant(amperes(0)).orElseThrow()));
    }
  }

  private static Profile<ElectricCurrent> profile(ReferenceRow row) {
    double[] numbers =
        row.conditions().keySet().stream()
            .flatMap(text -> Stream.of(text.split("[^0-9.]+")))
            .filter(text -> !text.isEmpty())
            .mapToDouble(Double::parseDouble)
            .toArray();
    return Profile.segments(Kind.CURRENT)
        .hold(amperes(numbers[0]), seconds(numbers[1]))
        .hold(amperes(numbers[2]), seconds(numbers[3]))
        .build();
  }

  static Stream<ReferenceRow> transients() {
    return ReferenceRows.read("/conductor/transient.csv").stream()
        .filter(row -> !row.id().matches("T-002|T-014|T-019|T-02."));
  }

  @ParameterizedTest
  @MethodSource("transients")
  void transientAgrees(ReferenceRow row) {
    if (row.has("Rth")) {
      firstOrder(row);
    } else if (row.id().equals("T-001")) {
      FaultDuty duty = FaultDuty.of(amperes(1000), seconds(5));
      VALIDATION.computed(
          row,
          toCelsius(
              ShortCircuit.of(ConductorMaterial.COPPER)
                  .finalTemperature(squareMillimetres(25), duty, celsius(30))
                  .orElseThrow()));
    } else {
      rod(row);
    }
  }

  private static void firstOrder(ReferenceRow row) {
    FirstOrderHeating part =
        FirstOrderHeating.of(
                milliohms(row.givenNumber("R20")),
                ConductorMaterial.COPPER,
                kelvinsPerWatt(row.givenNumber("Rth")),
                joulesPerKelvin(row.has("C") ? row.givenNumber("C") : 1))
            .inAir(celsius(row.has("Ta") ? row.givenNumber("Ta") : 30));
    if (row.quantity().startsWith("current above")) {
      VALIDATION.computed(row, Kind.CURRENT.siValueOf(part.runawayCurrent()));
      return;
    }
    Quantity<ElectricCurrent> current = amperes(row.givenNumber("I"));
    Quantity<Temperature> start = celsius(row.givenNumber("start"));
    if (row.quantity().startsWith("final")) {
      VALIDATION.computed(row, toCelsius(part.finalTemperature(current).orElseThrow()));
    } else if (row.quantity().startsWith("effective")) {
      VALIDATION.computed(row, Kind.TIME.siValueOf(part.timeConstant(current).orElseThrow()));
    } else if (row.quantity().startsWith("time to reach")) {
      VALIDATION.computed(
          row,
          Kind.TIME.siValueOf(
              part.timeToReach(start, current, celsius(row.givenNumber("limit"))).orElseThrow()));
    } else {
      VALIDATION.computed(
          row, toCelsius(part.temperatureAfter(start, current, seconds(row.givenNumber("t")))));
    }
  }

  /** A bare copper rod of 8 mm, 100 % IACS, emissivity 0.4, 220 A from 25 °C. */
  private static void rod(ReferenceRow row) {
    double areaM2 = Math.PI / 4 * 0.008 * 0.008;
    SurfaceLoss loss = new CylinderLoss(SurfaceLoss.Surroundings.at(298.15), 0.4, 0.008);
    HeatedConductor rod =
        new HeatedConductor(
            ConductorMaterial.COPPER.resistivityOhmM() / areaM2,
            ConductorMaterial.COPPER.coefficientPerK(),
            0,
            new SteadyKernel(loss),
            areaM2 * 3.45e6);
    if (row.quantity().startsWith("final")) {
      VALIDATION.computed(row, rod.conductorK(220) - 273.15);
      return;
    }
    double[] duration = {row.givenNumber("t")};
    double endK =
        new TransientKernel(rod).run(298.15, duration, new double[] {220}, new double[0]).endK;
    VALIDATION.computed(row, endK - 273.15);
  }

  static Stream<ReferenceRow> drops() {
    return ReferenceRows.read("/conductor/voltage-drop.csv").stream()
        .filter(
            row ->
                row.has("class")
                    || row.quantity().contains("DC run")
                    || row.quantity().contains("tinned"));
  }

  @ParameterizedTest
  @MethodSource("drops")
  void voltageDropsAgree(ReferenceRow row) {
    boolean tinned = row.quantity().contains("tinned");
    boolean stranded = row.has("class") && row.given("class").equals("2");
    if (row.quantity().startsWith("smallest size")) {
      VALIDATION.computed(row, smallestForDrop(row));
      return;
    }
    ConductorSize size =
        ConductorSize.metric(
            squareMillimetres(row.givenNumber("S")),
            stranded ? StrandClass.STRANDED : StrandClass.FLEXIBLE,
            tinned ? WireSurface.TINNED : WireSurface.PLAIN,
            ConductorMaterial.COPPER);
    Cable cable = Cable.of("row", size, InsulationMaterial.XLPE).build();
    Quantity<Temperature> hot = celsius(row.givenNumber("conductor"));
    if (tinned) {
      ConductorRun run =
          ConductorRun.of(cable, metres(row.givenNumber("length"))).withReturnLength(metres(0));
      VALIDATION.computed(
          row, Kind.VOLTAGE.siValueOf(run.dropAt(amperes(row.givenNumber("I")), hot)));
    } else if (stranded) {
      ConductorRun run = ConductorRun.of(cable, metres(1));
      VALIDATION.computed(row, Kind.VOLTAGE.siValueOf(run.dropAt(amperes(1), hot)) * 1000);
    } else {
      dcRun(row, cable, hot);
    }
  }

  private static void dcRun(ReferenceRow row, Cable cable, Quantity<Temperature> hot) {
    Joint contacts =
        Joint.of(
            "contacts",
            Given.dataSheet(milliohms(row.givenNumber("contacts") / 1000), "reference row"));
    ConductorRun run =
        ConductorRun.of(cable, metres(row.givenNumber("one-way")))
            .withJoints(java.util.List.of(contacts));
    Quantity<ElectricCurrent> current = amperes(row.givenNumber("I"));
    switch (row.unit()) {
      case "mohm" ->
          VALIDATION.computed(row, Kind.RESISTANCE.siValueOf(run.loopResistanceAt(hot)) * 1000);
      case "V" -> VALIDATION.computed(row, Kind.VOLTAGE.siValueOf(run.dropAt(current, hot)));
      default -> VALIDATION.computed(row, Kind.POWER.siValueOf(run.lossAt(current, hot)));
    }
  }

  private static double smallestForDrop(ReferenceRow row) {
    for (ConductorSize size :
        ConductorSize.metricSizes(
            StrandClass.FLEXIBLE, WireSurface.PLAIN, ConductorMaterial.COPPER)) {
      Cable cable = Cable.of("row", size, InsulationMaterial.XLPE).build();
      ConductorRun run = ConductorRun.of(cable, metres(row.givenNumber("one-way")));
      double dropV =
          Kind.VOLTAGE.siValueOf(
              run.dropAt(amperes(row.givenNumber("I")), celsius(row.givenNumber("conductor"))));
      if (dropV <= row.givenNumber("limit")) {
        return size.areaM2() * 1e6;
      }
    }
    return Double.NaN;
  }

  private static double toCelsius(Quantity<Temperature> temperature) {
    return Kind.TEMPERATURE.siValueOf(temperature) - 273.15;
  }
}
