package org.wattwright.examples.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A job folder: {@code job.csv}, {@code cells.csv}, {@code ocv.csv}, {@code resistance.csv}, {@code
 * charge-current.csv}, {@code modules.csv}, {@code devices.csv}; and, all or none of them, {@code
 * vehicle.csv}, {@code masses.csv}, {@code bays.csv}, {@code bay-room.csv}, {@code bay-links.csv},
 * {@code seats.csv}; and, all or none of them, the files about the circuits, those about mountings,
 * and {@code drive.csv}, {@code motor.csv}, {@code current-limits.csv}; and {@code controls.csv},
 * {@code rules.csv}, {@code charging-points.csv}, each or not; and {@code low-voltage.csv} with
 * {@code low-voltage-loads.csv}. Other files are left alone.
 */
public final class JobFolder {
  private static final List<String> FILES =
      List.of(
          "job.csv",
          "cells.csv",
          "ocv.csv",
          "resistance.csv",
          "charge-current.csv",
          "modules.csv",
          "devices.csv");

  /** Keys that describe the job and ask for nothing. */
  private static final Set<String> DESCRIPTIONS = Set.of("title", "customer", "vehicle", "notes");

  private JobFolder() {}

  /**
   * Reads a whole folder.
   *
   * @param folder the job folder
   * @return the job
   * @throws JobFileException if the folder or a file is missing, or anything in it is wrong
   */
  public static JobInput read(Path folder) {
    rejectIncomplete(folder);
    KeyValues values = KeyValues.read(folder.resolve("job.csv"));
    String title = values.field("title").text();
    String customer = values.field("customer").text();
    String vehicle = values.field("vehicle").text();
    String notes = values.optional("notes").map(Field::text).orElse("");
    Requirement requirement = RequirementFile.requirement(values);
    values.rejectUnknown();
    Map<String, CellInput> cells = CellFiles.read(folder);
    List<ModuleInput> modules = PartFiles.modules(folder, cells);
    List<DeviceInput> devices = PartFiles.devices(folder);
    return new JobInput(
        title,
        customer,
        vehicle,
        notes,
        requirement,
        modules,
        devices,
        weighed(folder, modules, devices),
        circuits(folder),
        controls(folder),
        mountings(folder),
        drive(folder),
        ChargingFile.read(folder),
        LowVoltageFiles.read(folder),
        stated(values));
  }

  /** A job may be about the pack alone; a half-stated vehicle is a mistake. */
  private static Optional<VehicleInput> weighed(
      Path folder, List<ModuleInput> modules, List<DeviceInput> devices) {
    List<String> missing = missing(folder, VehicleFiles.FILES);
    if (missing.size() == VehicleFiles.FILES.size()) {
      return Optional.empty();
    }
    if (!missing.isEmpty()) {
      throw JobFileException.of(
          "job folder "
              + folder
              + " has files about the vehicle but lacks "
              + String.join(", ", missing));
    }
    return Optional.of(VehicleFiles.read(folder, modules, devices));
  }

  /** A job may leave the circuits out; half-stated ones are a mistake. */
  private static Optional<CircuitsInput> circuits(Path folder) {
    List<String> missing = missing(folder, ProtectionFiles.FILES);
    if (missing.size() == ProtectionFiles.FILES.size()) {
      return Optional.empty();
    }
    if (!missing.isEmpty()) {
      throw JobFileException.of(
          "job folder "
              + folder
              + " has files about circuits but lacks "
              + String.join(", ", missing));
    }
    return Optional.of(ProtectionFiles.read(folder));
  }

  /** A job may leave brake vacuum, settings and controls out. */
  private static Optional<ControlsInput> controls(Path folder) {
    return Files.exists(folder.resolve(ControlsFile.FILE))
        ? Optional.of(ControlsFile.read(folder))
        : Optional.empty();
  }

  /** A job may leave the mountings out; half-stated ones are a mistake. */
  private static List<MountingInput> mountings(Path folder) {
    List<String> missing = missing(folder, MountingFiles.FILES);
    if (missing.size() == MountingFiles.FILES.size()) {
      return List.of();
    }
    if (!missing.isEmpty()) {
      throw JobFileException.of(
          "job folder "
              + folder
              + " has files about mountings but lacks "
              + String.join(", ", missing));
    }
    return MountingFiles.read(folder);
  }

  /** A job may leave the drive out; a half-stated one is a mistake. */
  private static Optional<DriveInput> drive(Path folder) {
    List<String> missing = missing(folder, DriveFiles.FILES);
    if (missing.size() == DriveFiles.FILES.size()) {
      return Optional.empty();
    }
    if (!missing.isEmpty()) {
      throw JobFileException.of(
          "job folder "
              + folder
              + " has files about the drive but lacks "
              + String.join(", ", missing));
    }
    return Optional.of(DriveFiles.read(folder));
  }

  private static List<String> missing(Path folder, List<String> files) {
    return files.stream().filter(file -> !Files.exists(folder.resolve(file))).toList();
  }

  private static List<Statement> stated(KeyValues values) {
    return values.statements().stream()
        .filter(statement -> !DESCRIPTIONS.contains(statement.what()))
        .toList();
  }

  private static void rejectIncomplete(Path folder) {
    if (!Files.exists(folder)) {
      throw JobFileException.of("job folder " + folder + " does not exist");
    }
    if (!Files.isDirectory(folder)) {
      throw JobFileException.of(folder + " is not a folder");
    }
    List<String> missing = missing(folder, FILES);
    if (!missing.isEmpty()) {
      String what = isEmpty(folder) ? " is empty; expected " : " lacks ";
      throw JobFileException.of("job folder " + folder + what + String.join(", ", missing));
    }
  }

  private static boolean isEmpty(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    } catch (IOException e) {
      throw JobFileException.of("job folder " + folder + " cannot be read: " + e.getMessage());
    }
  }
}
