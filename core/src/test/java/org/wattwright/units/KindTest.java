package org.wattwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InvalidObjectException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wattwright.testing.Serialisation;

class KindTest {
  static Stream<Kind<?>> kinds() {
    return Kind.values().stream();
  }

  @Test
  void listsEveryConstantInAlphabeticalOrder() {
    List<Object> constants = Arrays.stream(Kind.class.getFields()).map(KindTest::valueOf).toList();
    assertThat(Kind.values()).containsExactlyInAnyOrderElementsOf(castAll(constants));
    assertThat(Kind.values()).extracting(Kind::name).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void constantIsNamedLikeTheKind() {
    for (Field field : Kind.class.getFields()) {
      assertThat(field.getName())
          .isEqualTo(
              valueOf(field).toString().toUpperCase(java.util.Locale.ROOT).replace(' ', '_'));
      assertThat(Modifier.isFinal(field.getModifiers())).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void siUnitIsCoherentAndCustomaryUnitIsOwn(Kind<Q> kind) {
    assertThat(kind.siUnit().toSi(3.7)).isEqualTo(3.7);
    assertThat(kind.siUnit().fromSi(3.7)).isEqualTo(3.7);
    assertThat(kind.units()).contains(kind.siUnit(), kind.customaryUnit());
    assertThat(kind.units()).extracting(NamedUnit::symbol).doesNotHaveDuplicates();
    assertThat(kind.units()).allSatisfy(unit -> assertThat(unit.kind()).isSameAs(kind));
    assertThat(Kind.values()).filteredOn(k -> k.name().equals(kind.name())).hasSize(1);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void staysASingletonThroughSerialisation(Kind<?> kind) {
    assertThat(Serialisation.copy(kind)).isSameAs(kind);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void wrapsAndReadsSiValues(Kind<Q> kind) {
    Quantity<Q> wrapped = kind.ofSi(288);
    assertThat(kind.siValueOf(wrapped))
        .isEqualTo(288, org.assertj.core.api.Assertions.within(6e-14));
    assertThat(wrapped.toString())
        .endsWith(kind == Kind.DIMENSIONLESS ? "288" : kind.customaryUnit().symbol());
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(() -> kind.ofSi(Double.NaN))
        .withMessageContaining(kind.name());
  }

  @Test
  void unitsThatDifferByAPrefixStandSmallestFirst() {
    for (Kind<?> kind : Kind.values()) {
      Map<String, List<NamedUnit<?>>> families =
          kind.units().stream()
              .<NamedUnit<?>>map(unit -> unit)
              .filter(unit -> !unit.family().isEmpty())
              .collect(Collectors.groupingBy(NamedUnit::family));
      families.forEach(
          (name, units) -> assertThat(units).extracting(unit -> unit.toSi(1)).isSorted());
    }
  }

  @Test
  void nameThatDoesNotExistIsRejectedWhenReadBack() throws Exception {
    byte[] bytes = Serialisation.bytes(Kind.VOLTAGE);
    String stream = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
    byte[] forged =
        stream.replace("voltage", "woltage").getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
    assertThatThrownBy(
            () ->
                new java.io.ObjectInputStream(new java.io.ByteArrayInputStream(forged))
                    .readObject())
        .isInstanceOf(InvalidObjectException.class)
        .hasMessageContaining("woltage");
  }

  private static Object valueOf(Field field) {
    try {
      return field.get(null);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static List<Kind<?>> castAll(List<Object> kinds) {
    return (List) kinds;
  }
}
