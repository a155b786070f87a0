package org.wattwright.vehicle;

import java.util.List;
import org.wattwright.check.Check;
import org.wattwright.check.Recorder;
import org.wattwright.check.Source;

/**
 * One limit of a national rule, as data.
 *
 * <p>The usual forms are records of this package: {@link KerbMassRule}, {@link AxleShareRule},
 * {@link AxleShareShiftRule}, {@link AxleLoadRiseRule}. Others may be added by whoever needs them.
 */
public interface VehicleRule {
  /**
   * Looks at a conversion.
   *
   * @param subject the conversion
   * @param source the rule set it stands in
   * @return its checks, at least one; NOT_CHECKED where an input is missing
   */
  default List<Check> check(RuleSubject subject, Source source) {
    return check(subject, source, Recorder.OFF);
  }

  /**
   * Looks at a conversion, with the working.
   *
   * @param subject the conversion
   * @param source the rule set it stands in
   * @param recorder takes down how the compared figure comes about; asked whether it is on
   * @return as {@link #check(RuleSubject, Source)}
   */
  List<Check> check(RuleSubject subject, Source source, Recorder recorder);
}
