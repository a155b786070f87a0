package org.wattwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What every value type of the library keeps: equality by content, order that agrees with it, text
 * that parses back and knows no locale, serialisation, deep immutability.
 *
 * <pre>{@code
 * class StateOfChargeContractTest extends ValueTypeContract<StateOfCharge> {
 *   protected StateOfCharge sample() { return StateOfCharge.ofPercent(20); }
 *   protected List<StateOfCharge> rising() { … }
 *   protected Optional<Function<String, StateOfCharge>> parser() { return Optional.of(StateOfCharge::parse); }
 * }
 * }</pre>
 *
 * @param <T> the value type
 */
public abstract class ValueTypeContract<T> {
  /** A value; each call builds it anew. */
  protected abstract T sample();

  /** Values that differ from the sample and from each other. */
  protected abstract List<T> different();

  /** Values in rising order, if the type has one; may be empty. */
  protected List<T> rising() {
    return List.of();
  }

  /** How a text is read, if the type can. */
  protected Optional<Function<String, T>> parser() {
    return Optional.empty();
  }

  /** Whether the type serialises. */
  protected boolean serialises() {
    return true;
  }

  /** Samples made from arrays or lists that were changed after the making. */
  protected Stream<T> madeFromInputsChangedLater() {
    return Stream.empty();
  }

  /** Collections, maps and arrays that a value hands out. */
  protected Stream<Object> partsHandedOut(T value) {
    return Stream.empty();
  }

  @Test
  void equalIfContentIsEqual() {
    T one = sample();
    T other = sample();
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
    assertThat(one.toString()).isEqualTo(other.toString());
  }

  @Test
  void unequalIfContentDiffers() {
    List<T> all = Stream.concat(Stream.of(sample()), different().stream()).toList();
    assertThat(all).hasSizeGreaterThan(1).doesNotHaveDuplicates();
    assertThat(sample().equals(null)).isFalse();
    assertThat(sample().equals(new Object())).isFalse();
  }

  @Test
  void hashCodesTellValuesApart() {
    List<Integer> hashes = different().stream().map(Object::hashCode).toList();
    assertThat(hashes).doesNotHaveDuplicates();
  }

  @Test
  @SuppressWarnings("unchecked")
  void orderAgreesWithEquality() {
    List<T> rising = rising();
    for (int i = 0; i < rising.size(); i++) {
      for (int j = 0; j < rising.size(); j++) {
        int sign = Integer.signum(((Comparable<T>) rising.get(i)).compareTo(rising.get(j)));
        assertThat(sign)
            .as("%s, %s", rising.get(i), rising.get(j))
            .isEqualTo(Integer.compare(i, j));
        assertThat(rising.get(i).equals(rising.get(j))).isEqualTo(sign == 0);
      }
    }
  }

  @Test
  void parsesWhatItPrintsUnderEveryLocale() {
    assumeThat(parser()).isPresent();
    for (T value : allValues()) {
      String text = value.toString();
      for (Locale locale : Locales.ALL) {
        Locales.with(
            locale,
            () -> {
              assertThat(value.toString()).isEqualTo(text);
              assertThat(parser().orElseThrow().apply(text)).isEqualTo(value);
            });
      }
    }
  }

  @Test
  void survivesSerialisation() {
    assumeThat(serialises()).isTrue();
    for (T value : allValues()) {
      T copy = Serialisation.copy(value);
      assertThat(copy).isEqualTo(value).hasSameHashCodeAs(value).hasToString(value.toString());
    }
  }

  @Test
  void typeIsFinalWithFinalFields() {
    Class<?> type = sample().getClass();
    assertThat(Modifier.isFinal(type.getModifiers())).as("%s is final", type).isTrue();
    for (Field field : type.getDeclaredFields()) {
      if (field.isSynthetic() || field.getName().startsWith("$")) {
        continue; // put there by a coverage tool
      }
      assertThat(Modifier.isFinal(field.getModifiers())).as("%s is final", field).isTrue();
    }
  }

  @Test
  void laterChangesOfInputsDoNotReachTheValue() {
    assertThat(madeFromInputsChangedLater())
        .allSatisfy(made -> assertThat(made).isEqualTo(sample()));
  }

  @Test
  void partsHandedOutCannotChangeTheValue() {
    T value = sample();
    partsHandedOut(value).forEach(ValueTypeContract::tryToChange);
    assertThat(value).isEqualTo(sample()).hasToString(sample().toString());
  }

  private List<T> allValues() {
    return Stream.of(List.of(sample()), different(), rising()).flatMap(List::stream).toList();
  }

  private static void tryToChange(Object part) {
    if (part instanceof Collection<?> collection) {
      assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(collection::clear);
    } else if (part instanceof Map<?, ?> map) {
      assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(map::clear);
    } else if (part instanceof double[] numbers) {
      Arrays.fill(numbers, Double.NaN);
    } else if (part instanceof Object[] objects) {
      Arrays.fill(objects, null);
    } else {
      throw new IllegalArgumentException("no way known to change a " + part.getClass());
    }
  }
}
