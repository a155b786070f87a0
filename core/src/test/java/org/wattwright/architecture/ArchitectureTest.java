package org.wattwright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;

/** The package map: a package imports only from lines above its own, and from nowhere else. */
@AnalyzeClasses(packages = CoreCode.ROOT, importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  /** From the ground up. */
  private static final List<String> MAP =
      List.of(
          "units",
          "internal",
          "check",
          "profile",
          "battery",
          "thermal",
          "conductor",
          "vehicle",
          "voltage",
          "protection",
          "charging",
          "drive",
          "layout",
          "installation",
          "conversion");

  @ArchTest static final ArchRule units = importsOnlyFromAbove("units");
  @ArchTest static final ArchRule internal = importsOnlyFromAbove("internal");
  @ArchTest static final ArchRule check = importsOnlyFromAbove("check");
  @ArchTest static final ArchRule profile = importsOnlyFromAbove("profile");
  @ArchTest static final ArchRule battery = importsOnlyFromAbove("battery");
  @ArchTest static final ArchRule thermal = importsOnlyFromAbove("thermal");
  @ArchTest static final ArchRule conductor = importsOnlyFromAbove("conductor");
  @ArchTest static final ArchRule vehicle = importsOnlyFromAbove("vehicle");
  @ArchTest static final ArchRule voltage = importsOnlyFromAbove("voltage");
  @ArchTest static final ArchRule protection = importsOnlyFromAbove("protection");
  @ArchTest static final ArchRule charging = importsOnlyFromAbove("charging");
  @ArchTest static final ArchRule drive = importsOnlyFromAbove("drive");
  @ArchTest static final ArchRule layout = importsOnlyFromAbove("layout");
  @ArchTest static final ArchRule installation = importsOnlyFromAbove("installation");

  @ArchTest
  static final ArchRule packagesAreFreeOfCycles =
      slices().matching(CoreCode.ROOT + ".(*)..").should().beFreeOfCycles().allowEmptyShould(true);

  @ArchTest
  static final ArchRule coreUsesOnlyTheLibrariesItDeclares =
      classes()
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  CoreCode.ROOT + "..",
                  "java.lang..",
                  "java.util..",
                  "java.math..",
                  "java.text..",
                  "java.time..",
                  "java.io..",
                  "java.nio.charset..",
                  // SHA-256 for the fingerprint of inputs.
                  "java.security..",
                  "javax.measure..",
                  "tech.units.indriya..",
                  "org.apache.commons.math3..",
                  "org.jspecify.."))
          .because("core has three dependencies and does neither I/O nor graphics");

  @ArchTest
  static final ArchRule coreDoesNotLog =
      noClasses()
          .should()
          .dependOnClassesThat(resideInAnyPackage("java.util.logging..", "java.util.prefs.."))
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.lang\\.System\\$Logger.*");

  @ArchTest
  static void everyPackageIsInTheMap(JavaClasses core) {
    assertThat(packagesOf(core)).isSubsetOf(MAP);
  }

  @ArchTest
  static void everyPackageIsNullMarked(JavaClasses core) {
    Set<String> marked =
        core.stream()
            .filter(c -> c.getSimpleName().equals("package-info"))
            .filter(c -> c.isAnnotatedWith(NullMarked.class))
            .map(JavaClass::getPackageName)
            .collect(toCollection(TreeSet::new));
    assertThat(marked)
        .containsAll(
            core.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith(CoreCode.ROOT))
                .toList());
  }

  @ArchTest
  static void theModuleExportsEveryPackageButInternal(JavaClasses core) {
    Set<String> expected = packagesOf(core);
    expected.remove("internal");
    Set<String> exported =
        moduleDescriptor().exports().stream()
            .map(e -> e.source().substring(CoreCode.ROOT.length() + 1))
            .collect(toCollection(TreeSet::new));
    assertThat(exported).isEqualTo(expected);
  }

  @ArchTest
  static void theApiMentionsNoTypeThatUsersDoNotSee(JavaClasses core) {
    assertThat(CoreCode.api(core))
        .filteredOn(
            member ->
                member.types().stream()
                    .anyMatch(
                        type ->
                            resideInAnyPackage(
                                    CoreCode.ROOT + ".internal..",
                                    "org.apache.commons.math3..",
                                    "tech.units.indriya..")
                                .test(type)))
        .extracting(CoreCode.ApiMember::key)
        .isEmpty();
  }

  private static ArchRule importsOnlyFromAbove(String name) {
    String[] below =
        MAP.subList(MAP.indexOf(name) + 1, MAP.size()).stream()
            .map(ArchitectureTest::subtree)
            .toArray(String[]::new);
    return noClasses()
        .that(resideInAPackage(subtree(name)))
        .should()
        .dependOnClassesThat(resideInAnyPackage(below).and(not(resideInAPackage(subtree(name)))))
        .because("a package imports only from packages above it in " + MAP)
        .allowEmptyShould(true);
  }

  private static String subtree(String name) {
    return CoreCode.ROOT + "." + name + "..";
  }

  private static Set<String> packagesOf(JavaClasses core) {
    return core.stream()
        .map(JavaClass::getPackageName)
        .filter(name -> name.startsWith(CoreCode.ROOT + "."))
        .map(name -> name.substring(CoreCode.ROOT.length() + 1))
        .collect(toCollection(TreeSet::new));
  }

  private static ModuleDescriptor moduleDescriptor() {
    return ModuleFinder.of(CoreCode.mainClasses())
        .find("org.wattwright.core")
        .orElseThrow()
        .descriptor();
  }
}
