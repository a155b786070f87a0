package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;
import org.wattwright.testing.Serialisation;

class InvalidInputExceptionTest {
  private static final InvalidInputException ERROR =
      InvalidInputException.of("Cell.capacity", "> 0 A·h", "-105 A·h");

  @Test
  void namesFieldValueAndBound() {
    assertThat(ERROR).hasMessage("Cell.capacity must be > 0 A·h, but was -105 A·h");
    assertThat(ERROR.field()).isEqualTo("Cell.capacity");
    assertThat(ERROR.bound()).isEqualTo("> 0 A·h");
    assertThat(ERROR.value()).isEqualTo("-105 A·h");
  }

  @Test
  void hintComesInBracketsAndKeepsTheRest() {
    InvalidInputException hinted = ERROR.withHint("sign");
    assertThat(hinted).hasMessage("Cell.capacity must be > 0 A·h, but was -105 A·h (sign)");
    assertThat(hinted.field()).isEqualTo(ERROR.field());
    assertThat(hinted.bound()).isEqualTo(ERROR.bound());
    assertThat(hinted.value()).isEqualTo(ERROR.value());
  }

  @Test
  void messageOfItsOwnKeepsTheParts() {
    InvalidInputException own = InvalidInputException.withMessage("a", "b", "c", "c is not b in a");
    assertThat(own).hasMessage("c is not b in a");
    assertThat(own.field() + own.bound() + own.value()).isEqualTo("abc");
  }

  @Test
  void survivesSerialisation() {
    InvalidInputException copy = Serialisation.copy(ERROR);
    assertThat(copy).hasMessage(ERROR.getMessage());
    assertThat(copy.field()).isEqualTo(ERROR.field());
  }

  @Test
  void nullIsRejectedByName() {
    assertThatNullPointerException()
        .isThrownBy(() -> InvalidInputException.of(null, "b", "c"))
        .withMessage("field");
    assertThatNullPointerException()
        .isThrownBy(() -> InvalidInputException.of("a", null, "c"))
        .withMessage("bound");
    assertThatNullPointerException()
        .isThrownBy(() -> InvalidInputException.of("a", "b", null))
        .withMessage("value");
  }
}
