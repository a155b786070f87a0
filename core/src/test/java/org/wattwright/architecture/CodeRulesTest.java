package org.wattwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/**
 * House rules for the code of {@code core}; {@link CodeRulesOffendersTest} shows that each one
 * bites.
 */
@AnalyzeClasses(packages = CoreCode.ROOT, importOptions = ImportOption.DoNotIncludeTests.class)
class CodeRulesTest {
  @ArchTest static final ArchRule arithmetic = CodeRules.NO_QUANTITY_ARITHMETIC;
  @ArchTest static final ArchRule streams = CodeRules.NO_STANDARD_STREAMS;
  @ArchTest static final ArchRule locale = CodeRules.NO_DEFAULT_LOCALE;
  @ArchTest static final ArchRule clock = CodeRules.NO_CLOCK;
  @ArchTest static final ArchRule random = CodeRules.NO_UNSEEDED_RANDOM;
  @ArchTest static final ArchRule unitFormat = CodeRules.NO_SHARED_UNIT_FORMAT;
  @ArchTest static final ArchRule staticFields = CodeRules.STATIC_FIELDS_ARE_FINAL;
  @ArchTest static final ArchRule staticCaches = CodeRules.NO_STATIC_CACHE;
  @ArchTest static final ArchRule sharedArrays = CodeRules.NO_SHARED_ARRAY;
  @ArchTest static final ArchRule publicTypes = CodeRules.PUBLIC_TYPES_ARE_IMMUTABLE;

  @ArchTest
  static void theApiNamesTheKindOfEveryQuantity(JavaClasses core) {
    assertThat(ApiRules.wildcardQuantities(core))
        .as("Quantity<?>, Quantity<? extends …> or a raw Quantity in the API")
        .isEmpty();
  }

  @ArchTest
  static void publicDoublesAreListedAsDimensionless(JavaClasses core) {
    DimensionlessDoubles listed = DimensionlessDoubles.read();
    List<String> found = ApiRules.doubles(core);
    assertThat(listed.unlisted(found))
        .as("public doubles that %s does not list as dimensionless", DimensionlessDoubles.FILE)
        .isEmpty();
    assertThat(listed.stale(found))
        .as("lines of %s that match nothing any more", DimensionlessDoubles.FILE)
        .isEmpty();
  }
}
