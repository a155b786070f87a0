/**
 * Engineering calculations for workshops that convert classic vehicles to electric drive.
 *
 * <p>Start with {@code org.wattwright.units.Measures} for quantities; each package page says what
 * it holds and shows an example.
 */
module org.wattwright.core {
  requires transitive java.measure;
  requires tech.units.indriya;
  requires commons.math3;
  requires static org.jspecify;

  exports org.wattwright.units;
  exports org.wattwright.check;
  exports org.wattwright.profile;
  exports org.wattwright.battery;
  exports org.wattwright.charging;
  exports org.wattwright.thermal;
  exports org.wattwright.conductor;
  exports org.wattwright.conversion;
  exports org.wattwright.vehicle;
  exports org.wattwright.voltage;
  exports org.wattwright.layout;
  exports org.wattwright.protection;
  exports org.wattwright.drive;
  exports org.wattwright.installation;
}
