package org.wattwright.vehicle;

import java.util.List;
import org.wattwright.check.Check;
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
  List<Check> check(RuleSubject subject, Source source);
}
