package org.wattwright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.text.DecimalFormatSymbols;
import java.text.Format;
import java.time.Clock;
import java.time.temporal.TemporalAccessor;
import java.util.Arrays;
import java.util.Calendar;
import java.util.Collections;
import java.util.Date;
import java.util.Formatter;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TimeZone;
import java.util.UUID;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import javax.measure.Quantity;
import tech.units.indriya.format.SimpleUnitFormat;

/**
 * The rules themselves, so that they can be tried on offenders as well as on the code of {@code
 * core}.
 */
final class CodeRules {
  private static final Set<String> ARITHMETIC =
      Set.of("add", "subtract", "multiply", "divide", "inverse", "asType");

  static final ArchRule NO_QUANTITY_ARITHMETIC =
      noClasses()
          .that(DescribedPredicate.not(resideInAPackage(CoreCode.ROOT + ".units..")))
          .should()
          .accessTargetWhere(
              calls(
                  "Quantity arithmetic",
                  t -> isA(t, Quantity.class) && ARITHMETIC.contains(t.getName())))
          .because("solvers compute on doubles in SI units")
          .allowEmptyShould(true);

  static final ArchRule NO_STANDARD_STREAMS =
      GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.allowEmptyShould(true);

  static final ArchRule NO_DEFAULT_LOCALE =
      noClasses()
          .should()
          .accessTargetWhere(calls("the default locale", CodeRules::usesDefaultLocale))
          .because("text must be the same on every machine")
          .allowEmptyShould(true);

  static final ArchRule NO_CLOCK =
      noClasses()
          .should()
          .accessTargetWhere(calls("the clock or the time zone", CodeRules::readsClock))
          .because("same input, same output")
          .allowEmptyShould(true);

  static final ArchRule NO_UNSEEDED_RANDOM =
      noClasses()
          .should()
          .accessTargetWhere(calls("an unseeded random source", CodeRules::isUnseededRandom))
          .because("the caller passes the seed")
          .allowEmptyShould(true);

  static final ArchRule NO_SHARED_UNIT_FORMAT =
      noClasses()
          .should()
          .accessTargetWhere(
              calls(
                  "labels of the shared unit format",
                  t ->
                      isA(t, SimpleUnitFormat.class)
                          && Set.of("label", "alias", "removeLabel", "removeAliases")
                              .contains(t.getName())))
          .because("it would change the output of the host application")
          .allowEmptyShould(true);

  static final ArchRule STATIC_FIELDS_ARE_FINAL =
      fields().that().areStatic().should().beFinal().allowEmptyShould(true);

  static final ArchRule NO_STATIC_CACHE =
      noFields()
          .that()
          .areStatic()
          .should()
          .haveRawType(assignableToAny(ConcurrentMap.class, ThreadLocal.class))
          .orShould()
          .haveRawType(resideInAPackage("java.util.concurrent.atomic.."))
          .because("no static state changes")
          .allowEmptyShould(true);

  static final ArchRule NO_SHARED_ARRAY =
      noFields()
          .that()
          .areStatic()
          .and()
          .areNotPrivate()
          .and()
          .doNotHaveModifier(JavaModifier.SYNTHETIC)
          .should()
          .haveRawType(DescribedPredicate.describe("an array", JavaClass::isArray))
          .because("anybody could change its elements")
          .allowEmptyShould(true);

  static final ArchRule PUBLIC_TYPES_ARE_IMMUTABLE =
      fields()
          .that()
          .areNotStatic()
          .and()
          .areDeclaredInClassesThat()
          .arePublic()
          .and()
          .areDeclaredInClassesThat()
          .resideOutsideOfPackage(CoreCode.ROOT + ".internal..")
          .and()
          .areDeclaredInClassesThat()
          .haveSimpleNameNotEndingWith("Builder")
          .should()
          .beFinal()
          .because("a builder is the only mutable public type")
          .allowEmptyShould(true);

  private CodeRules() {}

  private static boolean usesDefaultLocale(AccessTarget target) {
    if (isA(target, Locale.class)) {
      return target.getName().equals("getDefault");
    }
    if (!mayPrintByLocale(target) || !(target instanceof CodeUnitAccessTarget call)) {
      return false;
    }
    return call.getRawParameterTypes().stream().noneMatch(p -> p.isAssignableTo(Locale.class));
  }

  private static boolean mayPrintByLocale(AccessTarget target) {
    if (isA(target, String.class)) {
      return Set.of("format", "formatted", "toLowerCase", "toUpperCase").contains(target.getName());
    }

    boolean localised =
        isA(target, Formatter.class)
            || isA(target, Format.class)
            || isA(target, DecimalFormatSymbols.class);
    return localised && target.getName().matches("<init>|get(\\w+)?Instance");
  }

  private static boolean readsClock(AccessTarget target) {
    String name = target.getName();
    return (isA(target, System.class) && Set.of("currentTimeMillis", "nanoTime").contains(name))
        || (isA(target, TemporalAccessor.class) && name.equals("now"))
        || (isA(target, Clock.class) && name.matches("system.*|tick.*"))
        || (isA(target, Date.class) && name.equals("<init>") && hasNoParameters(target))
        || (isA(target, Calendar.class) && name.equals("getInstance"))
        || (isA(target, TimeZone.class) && name.equals("getDefault"))
        || name.equals("systemDefault");
  }

  private static boolean isUnseededRandom(AccessTarget target) {
    String name = target.getName();
    boolean generator =
        isA(target, Random.class)
            || isA(target, SplittableRandom.class)
            || isA(target, org.apache.commons.math3.random.RandomGenerator.class)
            || target.getOwner().getName().endsWith(".RandomDataGenerator");
    return (generator && name.equals("<init>") && hasNoParameters(target))
        || isA(target, ThreadLocalRandom.class)
        || (isA(target, RandomGenerator.class) && name.matches("getDefault|of"))
        || (isA(target, Math.class) && name.equals("random"))
        || (isA(target, StrictMath.class) && name.equals("random"))
        || (isA(target, UUID.class) && name.equals("randomUUID"))
        || (isA(target, Collections.class)
            && name.equals("shuffle")
            && ((CodeUnitAccessTarget) target).getRawParameterTypes().size() == 1);
  }

  private static boolean hasNoParameters(AccessTarget target) {
    return target instanceof CodeUnitAccessTarget call && call.getRawParameterTypes().isEmpty();
  }

  private static boolean isA(AccessTarget target, Class<?> type) {
    return target.getOwner().isAssignableTo(type);
  }

  private static DescribedPredicate<JavaAccess<?>> calls(
      String what, Predicate<AccessTarget> target) {
    return DescribedPredicate.describe(
        "is use of " + what, access -> target.test(access.getTarget()));
  }

  private static DescribedPredicate<JavaClass> assignableToAny(Class<?>... types) {
    return DescribedPredicate.describe(
        "assignable to one of " + Set.of(types),
        c -> Arrays.stream(types).anyMatch(c::isAssignableTo));
  }
}
