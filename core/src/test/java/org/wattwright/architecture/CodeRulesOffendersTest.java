package org.wattwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.format.SimpleUnitFormat;
import tech.units.indriya.unit.Units;

/**
 * A rule that cannot fail protects nothing: each one must report its offender and pass the
 * innocent.
 */
public class CodeRulesOffendersTest {

  static Stream<Arguments> offenders() {
    return Stream.of(
        arguments(CodeRules.NO_QUANTITY_ARITHMETIC, Adds.class),
        arguments(CodeRules.NO_QUANTITY_ARITHMETIC, AddsByReference.class),
        arguments(CodeRules.NO_STANDARD_STREAMS, Prints.class),
        arguments(CodeRules.NO_DEFAULT_LOCALE, FormatsByDefault.class),
        arguments(CodeRules.NO_DEFAULT_LOCALE, LowersByDefault.class),
        arguments(CodeRules.NO_DEFAULT_LOCALE, DecimalsByDefault.class),
        arguments(CodeRules.NO_CLOCK, ReadsClock.class),
        arguments(CodeRules.NO_CLOCK, ReadsDate.class),
        arguments(CodeRules.NO_UNSEEDED_RANDOM, Rolls.class),
        arguments(CodeRules.NO_UNSEEDED_RANDOM, Shuffles.class),
        arguments(CodeRules.NO_SHARED_UNIT_FORMAT, Labels.class),
        arguments(CodeRules.STATIC_FIELDS_ARE_FINAL, Static.class),
        arguments(CodeRules.NO_STATIC_CACHE, Caches.class),
        arguments(CodeRules.NO_SHARED_ARRAY, Shares.class),
        arguments(CodeRules.PUBLIC_TYPES_ARE_IMMUTABLE, Mutable.class));
  }

  @ParameterizedTest
  @MethodSource("offenders")
  void offenderIsReported(ArchRule rule, Class<?> offender) {
    assertThat(violations(rule, offender)).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("offenders")
  void innocentPasses(ArchRule rule, Class<?> ignored) {
    assertThat(violations(rule, Innocent.class)).isEmpty();
  }

  @Test
  void apiRulesFindWildcardsAndDoubles() {
    var classes = new ClassFileImporter().importClasses(Api.class, CodeRulesOffendersTest.class);
    assertThat(ApiRules.wildcardQuantities(classes))
        .extracting(key -> key.substring(key.lastIndexOf('.') + 1))
        .containsExactly("inList", "raw", "wildcard");
    assertThat(ApiRules.doubles(classes))
        .extracting(key -> key.substring(key.lastIndexOf('.') + 1))
        .containsExactly("boxed", "factor", "rows", "setFactor");
  }

  @Test
  void unlistedAndStaleDoublesAreReported() {
    var listed = DimensionlessDoubles.parse(List.of("# why", "a.B.*: ratios", "a.C.gone: ratio"));
    assertThat(listed.unlisted(List.of("a.B.x", "a.D.y"))).containsExactly("a.D.y");
    assertThat(listed.stale(List.of("a.B.x", "a.D.y"))).containsExactly("a.C.gone");
  }

  @Test
  void aListedDoubleNeedsAReason() {
    assertThatThrownBy(() -> DimensionlessDoubles.parse(List.of("a.B.x:")))
        .hasMessageContaining("no reason given: a.B.x:");
  }

  private static List<String> violations(ArchRule rule, Class<?> type) {
    return rule.evaluate(new ClassFileImporter().importClasses(type))
        .getFailureReport()
        .getDetails();
  }

  static final class Adds {
    Quantity<Length> twice(Quantity<Length> length) {
      return length.add(length);
    }
  }

  static final class AddsByReference {
    BinaryOperator<Quantity<Length>> sum() {
      return Quantity::add;
    }
  }

  static final class Prints {
    void hello() {
      System.out.println("hello");
    }
  }

  static final class FormatsByDefault {
    String text(double value) {
      return String.format("%f", value);
    }
  }

  static final class LowersByDefault {
    String text(String value) {
      return value.toLowerCase();
    }
  }

  static final class DecimalsByDefault {
    Object text() {
      return new java.text.DecimalFormat("0.0");
    }
  }

  static final class ReadsClock {
    long now() {
      return System.nanoTime();
    }
  }

  static final class ReadsDate {
    Object today() {
      return java.time.LocalDate.now();
    }
  }

  static final class Rolls {
    double roll() {
      return new Random().nextDouble();
    }
  }

  static final class Shuffles {
    void shuffle(List<String> cards) {
      java.util.Collections.shuffle(cards);
    }
  }

  static final class Labels {
    void label() {
      SimpleUnitFormat.getInstance().label(Units.METRE, "metre");
    }
  }

  static final class Static {
    static int count;
  }

  static final class Caches {
    static final ConcurrentHashMap<String, String> CACHE = new ConcurrentHashMap<>();
  }

  static final class Shares {
    static final double[] TABLE = {1};
  }

  public static final class Mutable {
    int count;
  }

  public static final class Innocent {
    private static final double[] TABLE = {1};
    private final Random random = new Random(TABLE.length);

    String text(double value) {
      return String.format(Locale.ROOT, "%f", value * random.nextDouble());
    }
  }

  /** Members in pairs: one to be found, one to be left alone. */
  public interface Api {
    Quantity<?> wildcard();

    List<Quantity<? extends Length>> inList();

    @SuppressWarnings("rawtypes")
    void raw(Quantity quantity);

    <Q extends Quantity<Q>> Quantity<Q> named(Quantity<Length> length, Quantity<Q> other);

    double factor();

    void setFactor(double factor);

    List<Double> boxed();

    double[][] rows();

    int count();
  }
}
