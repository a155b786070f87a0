package org.wattwright.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;
import org.wattwright.units.InvalidInputException;

class MissingFieldsTest {
  @Test
  void listsEverythingThatIsMissingAtOnce() {
    MissingFields fields =
        new MissingFields("Charger")
            .field("name", "x")
            .field("efficiency", null)
            .field("window", 3)
            .field("maximumPower", null);
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(fields::rejectIfAny)
        .withMessage("Charger is missing 2 of 4 required fields: efficiency, maximumPower")
        .satisfies(
            e -> {
              assertThat(e.field()).isEqualTo("Charger.efficiency");
              assertThat(e.bound()).isEqualTo("given");
              assertThat(e.value()).isEqualTo("missing");
            });
  }

  @Test
  void oneFieldIsNoPlural() {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> new MissingFields("Cell").field("capacity", null).rejectIfAny())
        .withMessage("Cell is missing 1 of 1 required field: capacity");
  }

  @Test
  void nothingHappensIfAllIsThere() {
    new MissingFields("Cell").field("capacity", 1).rejectIfAny();
    new MissingFields("Cell").rejectIfAny();
  }

  @Test
  void presentHandsOutWhatIsThere() {
    assertThat(MissingFields.present("x")).isEqualTo("x");
    assertThatIllegalStateException().isThrownBy(() -> MissingFields.present(null));
  }
}
