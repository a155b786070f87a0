package org.wattwright.layout;

import java.util.Optional;
import org.wattwright.check.Basis;
import org.wattwright.check.Figure;
import org.wattwright.check.Recorder;

/** A figure of a candidate that a requirement limits or a criterion ranks. */
interface Property {
  /** In words, such as {@code pack mass}. */
  String name();

  /** Reads the variant once; what follows is arithmetic on doubles. */
  Term on(Variant variant, Recorder recorder);

  /** The value of one candidate by way of its pack, apart from the terms; NaN if not known. */
  double replayed(Candidate candidate);

  /** A value for people. */
  Figure figure(double si);

  /** The weakest basis of the inputs. */
  Basis basis(Variant variant);

  /** The input that is missing. */
  default Optional<String> missing(Variant variant) {
    return Optional.empty();
  }

  /** A gate of a limit on this property; {@code most} is the largest number of modules. */
  default Gate gate(Variant variant, Bound bound, int most) {
    return new PlainGate(on(variant, Recorder.OFF), bound);
  }
}
