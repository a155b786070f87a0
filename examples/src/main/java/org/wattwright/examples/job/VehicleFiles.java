package org.wattwright.examples.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.wattwright.check.Given;
import org.wattwright.units.Kind;
import org.wattwright.vehicle.Axle;
import org.wattwright.vehicle.Tyre;

/** Reads {@code vehicle.csv}, and with it the other files about the vehicle. */
final class VehicleFiles {
  /** All of them, or none. */
  static final List<String> FILES =
      List.of(
          "vehicle.csv", "masses.csv", "bays.csv", "bay-room.csv", "bay-links.csv", "seats.csv");

  private final KeyValues values;

  private VehicleFiles(KeyValues values) {
    this.values = values;
  }

  static VehicleInput read(Path folder, List<ModuleInput> modules, List<DeviceInput> devices) {
    KeyValues values = KeyValues.read(folder.resolve("vehicle.csv"));
    VehicleFiles files = new VehicleFiles(values);
    VehicleInput input =
        new VehicleInput(
            values.statement("wheelbase").origin(),
            files.scales(),
            files.plates(),
            files.brakes(),
            files.axle(Axle.FRONT),
            files.axle(Axle.REAR),
            files.road(),
            values.optional("least bump travel left").map(f -> f.nonNegative(Kind.LENGTH)),
            files.given("least steering axle share", Field::share),
            files.frontShare(),
            files.shape(),
            MassFiles.parts(folder, devices),
            BayFiles.read(folder, modules),
            MassFiles.seats(folder),
            RuleFile.read(folder),
            values.statements());
    values.rejectUnknown();
    return input;
  }

  /** The wanted share and its band are stated together or not at all. */
  private Optional<VehicleInput.FrontShare> frontShare() {
    return values
        .optional("wanted front axle share")
        .map(
            wanted ->
                new VehicleInput.FrontShare(
                    wanted.share(), values.field("band of front axle share").share()));
  }

  private VehicleInput.Scales scales() {
    return new VehicleInput.Scales(
        values.field("wheelbase").positive(Kind.LENGTH),
        values.field("front left wheel").nonNegative(Kind.MASS),
        values.field("front right wheel").nonNegative(Kind.MASS),
        values.field("rear left wheel").nonNegative(Kind.MASS),
        values.field("rear right wheel").nonNegative(Kind.MASS),
        values.field("scale tolerance").nonNegative(Kind.MASS),
        lift());
  }

  /** The raised weighing is stated whole or not at all. */
  private Optional<VehicleInput.Lift> lift() {
    Optional<Field> reading = values.optional("front axle with rear raised");
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new VehicleInput.Lift(
            values.statement("front axle with rear raised").origin(),
            reading.get().positive(Kind.MASS),
            values.field("rise of rear wheels").positive(Kind.LENGTH),
            values.field("front loaded radius").positive(Kind.LENGTH),
            values.field("rear loaded radius").positive(Kind.LENGTH),
            values.field("length tolerance").nonNegative(Kind.LENGTH)));
  }

  private VehicleInput.Plates plates() {
    return new VehicleInput.Plates(
        values.optional("front axle plate").map(f -> f.positive(Kind.MASS)),
        values.optional("rear axle plate").map(f -> f.positive(Kind.MASS)),
        values.optional("gross mass").map(f -> f.positive(Kind.MASS)));
  }

  private VehicleInput.Brakes brakes() {
    return new VehicleInput.Brakes(
        given("rear share of brake force", Field::share),
        values.optional("parking brake axle").map(f -> f.choice(Axle.class)),
        given("parking brake force", f -> f.positive(Kind.FORCE)));
  }

  private VehicleInput.AxleParts axle(Axle axle) {
    return new VehicleInput.AxleParts(
        values.optional(axle + " track").map(f -> f.positive(Kind.LENGTH)),
        given(axle + " roll stiffness", f -> f.nonNegative(Kind.ROLL_STIFFNESS)),
        given(axle + " wheel rate", f -> f.positive(Kind.SPRING_RATE)),
        values.optional(axle + " bump travel").map(f -> f.nonNegative(Kind.LENGTH)),
        tyre(axle + " tyre"),
        given(axle + " tyre pressure", f -> f.positive(Kind.PRESSURE)),
        given(axle + " brake heat capacity", f -> f.positive(Kind.HEAT_CAPACITY)),
        given(axle + " tyre side force at one degree", f -> f.positive(Kind.FORCE)));
  }

  /** The descent is stated whole or not at all. */
  private VehicleInput.Road road() {
    return new VehicleInput.Road(
        values
            .optional("descent drop")
            .map(
                drop ->
                    new VehicleInput.Descent(
                        drop.positive(Kind.LENGTH),
                        values.field("descent distance").positive(Kind.LENGTH),
                        values.field("descent speed").positive(Kind.SPEED),
                        values.statement("descent drop").origin())),
        values.optional("brake lining limit").map(f -> f.quantity(Kind.TEMPERATURE)),
        values.optional("top speed").map(f -> f.positive(Kind.SPEED)),
        values.optional("estimates may be off by").map(Field::share));
  }

  private Optional<Tyre> tyre(String key) {
    return values
        .optional(key)
        .map(f -> values.statement(key).origin().locate(() -> Tyre.parse(f.text())));
  }

  private Optional<VehicleInput.Shape> shape() {
    Optional<Field> front = values.optional("front overhang");
    if (front.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new VehicleInput.Shape(
            front.get().positive(Kind.LENGTH),
            values.field("rear overhang").positive(Kind.LENGTH),
            values.field("overall height").positive(Kind.LENGTH)));
  }

  private <T> Optional<Given<T>> given(String key, Function<Field, T> reader) {
    return values.optional(key).map(f -> values.statement(key).given(reader.apply(f)));
  }
}
