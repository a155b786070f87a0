package org.wattwright.drive;

import java.util.ArrayList;
import java.util.List;
import org.wattwright.check.Source;
import org.wattwright.internal.ResourceTable;

/** Drive cycles of the regulations, with straight lines between their points, on the level. */
public enum StandardCycle {
  /** Elementary urban cycle: 195 s, 1.015 km, up to 50 km/h. */
  ECE_15,
  /** Extra-urban cycle: 400 s, 6.955 km, up to 120 km/h. */
  EUDC,
  /** Four elementary urban cycles and one extra-urban: 1180 s, 11.01 km. */
  NEDC,
  /** WLTC of class 1: 1611 s, 11.43 km, up to 64.4 km/h. */
  WLTC_CLASS_1,
  /** WLTC of class 2: 1800 s, 22.65 km, up to 123.1 km/h. */
  WLTC_CLASS_2,
  /** WLTC of class 3a: 1800 s, 23.19 km, up to 131.3 km/h. */
  WLTC_CLASS_3A,
  /** WLTC of class 3b: 1800 s, 23.27 km, up to 131.3 km/h. */
  WLTC_CLASS_3B,
  /** Urban schedule of the US test: 1369 s, 11.99 km, up to 91.2 km/h. */
  UDDS,
  /** Highway schedule of the US test: 765 s, 16.51 km, up to 96.4 km/h. */
  HWFET,
  /** Fast schedule of the US test: 600 s, 12.89 km, up to 129.2 km/h. */
  US06;

  /**
   * The cycle; read from the library's own table at each call.
   *
   * @return speed against time, with its source
   */
  public DriveCycle cycle() {
    return switch (this) {
      case ECE_15 -> segments("ECE-15", "ece15.csv", r83("Annex 4a, Table 1"));
      case EUDC -> segments("EUDC", "eudc.csv", r83("Annex 4a, Table 2"));
      case NEDC -> nedc();
      case WLTC_CLASS_1 -> wltc("WLTC class 1", "wltc-class1.csv", "Tables A1/1 and A1/2");
      case WLTC_CLASS_2 -> wltc("WLTC class 2", "wltc-class2.csv", "Tables A1/3 to A1/6");
      case WLTC_CLASS_3A ->
          wltc("WLTC class 3a", "wltc-class3a.csv", "Tables A1/7, A1/8, A1/10 and A1/12");
      case WLTC_CLASS_3B ->
          wltc("WLTC class 3b", "wltc-class3b.csv", "Tables A1/7, A1/9, A1/11 and A1/12");
      case UDDS -> samples("UDDS", "udds.csv", Source.standard("40 CFR 86", "Appendix I (a)"));
      case HWFET -> samples("HWFET", "hwfet.csv", Source.standard("40 CFR 600", "Appendix I"));
      case US06 -> samples("US06", "us06.csv", Source.standard("40 CFR 86", "Appendix I"));
    };
  }

  private static Source r83(String detail) {
    return Source.standard("UN R83", detail);
  }

  private static DriveCycle wltc(String name, String file, String tables) {
    String detail = "Annex 1, " + tables + ", as proposed with Amendment 5";
    return samples(name, file, Source.standard("UN GTR No. 15", detail));
  }

  private static DriveCycle samples(String name, String file, Source source) {
    ResourceTable table = ResourceTable.read(StandardCycle.class, file);
    double[] speedsMs = table.numbers("speed_kmh");
    for (int i = 0; i < speedsMs.length; i++) {
      speedsMs[i] /= 3.6;
    }
    return DriveCycle.of(name, source, table.numbers("time_s"), speedsMs);
  }

  private static DriveCycle segments(String name, String file, Source source) {
    List<ResourceTable.Row> rows = ResourceTable.read(StandardCycle.class, file).rows();
    double[] timesS = new double[rows.size() + 1];
    double[] speedsMs = new double[timesS.length];
    speedsMs[0] = rows.get(0).number("start_kmh") / 3.6;
    for (int i = 0; i < rows.size(); i++) {
      timesS[i + 1] = rows.get(i).number("end_s");
      speedsMs[i + 1] = rows.get(i).number("end_kmh") / 3.6;
    }
    return DriveCycle.of(name, source, timesS, speedsMs);
  }

  private static DriveCycle nedc() {
    DriveCycle urban = ECE_15.cycle();
    List<DriveCycle> parts = new ArrayList<>(List.of(urban, urban, urban, urban));
    parts.add(EUDC.cycle());
    return DriveCycle.inSequence("NEDC", Source.standard("UN R83", "Annex 4a; UN R101"), parts);
  }
}
