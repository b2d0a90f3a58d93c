package org.tallywall.experiments.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Data walks through the house once, from left to right: no package uses one that comes later. */
@Tag("one-jdk")
class PackageOrderTest {
  private static final String ROOT = "org.tallywall.";

  /** The package of each design. */
  private static final String DESIGNS = ROOT + "experiments.design.(*)";

  /** The packages of each module in their order; a package may use those before it. */
  static final Map<String, List<String>> ORDER =
      Map.of(
          "core",
              List.of("text", "tile", "card", "hand", "random", "rules", "play", "sheet", "record"),
          "strategies",
              List.of(
                  "hand", "read", "guess", "playout", "setting", "habit", "reason", "player",
                  "catalog", "jar"),
          "reports",
              List.of(
                  "table",
                  "schema",
                  "csv",
                  "text",
                  "markup",
                  "figure",
                  "svg",
                  "png",
                  "document",
                  "console",
                  "markdown",
                  "html",
                  "results",
                  "words",
                  "tables",
                  "charts",
                  "papers"),
          "experiments",
              List.of(
                  "error",
                  "words",
                  "rack",
                  "study",
                  "tally",
                  "run",
                  "deals",
                  "decisions",
                  "stats",
                  "stop",
                  "story",
                  "answer",
                  "design",
                  "design.table",
                  "design.arms",
                  "design.sweep",
                  "design.roundrobin",
                  "design.branch",
                  "studies",
                  "guide",
                  "invent",
                  "store",
                  "chances",
                  "chances.words",
                  "club",
                  "ask",
                  "review",
                  "school",
                  "reading",
                  "page",
                  "manners",
                  "paper",
                  "night",
                  "cli"));

  /** Designs that are made of others, which they may use. */
  private static final Map<String, String> MADE_OF = Map.of("design.sweep", "design.arms");

  /** Which modules a module may use besides itself. */
  private static final Map<String, List<String>> MODULES =
      Map.of(
          "core", List.of(),
          "strategies", List.of("core"),
          "reports", List.of(),
          "experiments", List.of("core", "strategies", "reports"));

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/test-classes/"))
          .importPackages("org.tallywall");

  static Stream<String> packages() {
    return ORDER.entrySet().stream()
        .flatMap(module -> module.getValue().stream().map(name -> module.getKey() + "." + name));
  }

  @Test
  void everyPackage_hasAPlaceInTheOrder() {
    Set<String> found = new TreeSet<>();
    CLASSES.forEach(type -> found.add(type.getPackageName()));
    Set<String> listed = new TreeSet<>();
    packages().forEach(name -> listed.add(ROOT + name));
    assertThat(listed).containsAll(found);
  }

  @ParameterizedTest
  @MethodSource("packages")
  void aPackage_usesNoneThatComesLater(String name) {
    String module = name.substring(0, name.indexOf('.'));
    classes()
        .that()
        .resideInAPackage(ROOT + name)
        .should()
        .onlyDependOnClassesThat(mayBeUsedBy(module, name.substring(module.length() + 1)))
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  /**
   * Whoever needs to know which design it is asks the design; so a new one is its package alone.
   */
  @Test
  void aDesign_isKnownByNameToTheListOfDesignsAlone() {
    noClasses()
        .that()
        .resideOutsideOfPackage(DESIGNS)
        .and()
        .doNotHaveFullyQualifiedName(ROOT + "experiments.studies.Designs")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(DESIGNS)
        .check(CLASSES);
  }

  static Stream<String> designs() {
    return ORDER.get("experiments").stream().filter(name -> name.startsWith("design."));
  }

  @ParameterizedTest
  @MethodSource("designs")
  void aDesign_usesNoOtherThatItIsNotMadeOf(String design) {
    String[] others =
        designs()
            .filter(name -> !name.equals(design) && !name.equals(MADE_OF.get(design)))
            .map(name -> ROOT + "experiments." + name)
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideInAPackage(ROOT + "experiments." + design)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(others)
        .check(CLASSES);
  }

  private static DescribedPredicate<JavaClass> mayBeUsedBy(String module, String own) {
    List<String> order = ORDER.get(module);
    List<String> allowed = order.subList(0, order.indexOf(own) + 1);
    return DescribedPredicate.describe(
        "are outside the project, or in "
            + allowed
            + " of "
            + module
            + ", or in "
            + MODULES.get(module),
        type -> {
          if (!type.getPackageName().startsWith(ROOT)) {
            return true;
          }
          String[] parts = type.getPackageName().substring(ROOT.length()).split("\\.", 2);
          return parts[0].equals(module)
              ? allowed.contains(parts[1])
              : MODULES.get(module).contains(parts[0]);
        });
  }
}
