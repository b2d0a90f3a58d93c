package org.tallywall.experiments.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Where results are made there is no chance without a key, no clock, no locale, no loose order. */
@Tag("one-jdk")
class RepeatableResultsTest {
  private static final String[] RESULTS = {
    "org.tallywall.core..",
    "org.tallywall.strategies..",
    "org.tallywall.experiments.tally..",
    "org.tallywall.experiments.stats.."
  };

  private static final Set<String> LOOKED_UP_ONLY =
      Set.of(
          "ReachCache",
          "CardMaker",
          "LineIds",
          "CsvCardReader",
          "LocatedJson",
          "Catalog",
          "SettingReader");

  /** What goes by the locale of the machine unless it is handed one. */
  private static final Set<String> BY_LOCALE =
      Set.of(
          "java.lang.String.format",
          "java.lang.String.toLowerCase",
          "java.lang.String.toUpperCase",
          "java.io.PrintStream.format",
          "java.io.PrintStream.printf",
          "java.io.PrintWriter.format",
          "java.io.PrintWriter.printf",
          "java.io.Console.format",
          "java.io.Console.printf",
          "java.util.Formatter.<init>",
          "java.util.Scanner.<init>",
          "java.util.Locale.getDefault",
          "java.time.format.DateTimeFormatter.ofPattern",
          "java.time.format.DateTimeFormatter.ofLocalizedDate",
          "java.time.format.DateTimeFormatter.ofLocalizedDateTime",
          "java.time.format.DateTimeFormatter.ofLocalizedTime");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/test-classes/"))
          .importPackages("org.tallywall");

  @Test
  void results_useNoRandomNumbersWithoutAKey() {
    noClasses()
        .that()
        .resideInAnyPackage(RESULTS)
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(Random.class, ThreadLocalRandom.class)
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callMethodWhere(named("shuffle", Collections.class))
        .check(CLASSES);
  }

  @Test
  void results_lookAtNoClock() {
    noClasses()
        .that()
        .resideInAnyPackage(RESULTS)
        .should()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .dependOnClassesThat()
        .resideInAPackage("java.time..")
        .check(CLASSES);
  }

  /**
   * Whatever is said anywhere is said in no language of the machine: messages stand in results,
   * records and pages, too.
   */
  @Test
  void classes_dependOnNoLocale() {
    noClasses()
        .should()
        .accessTargetWhere(
            DescribedPredicate.describe(
                "go by the locale of the machine", RepeatableResultsTest::goesByLocale))
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(java.text.Format.class)
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(java.text.Collator.class)
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(java.text.BreakIterator.class)
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(java.util.ResourceBundle.class)
        .check(CLASSES);
  }

  /**
   * {@code formatted} has no form that takes a locale, and writes {@code %d} with the digits of the
   * machine's; {@code %s} writes every number as Java does everywhere.
   */
  @Test
  void sources_formatNumbersInNoLanguage() throws IOException {
    Pattern number = Pattern.compile("%[-#+0,(]*[0-9]*([.][0-9]+)?[bBhHcCdoxXeEfgGaAtT]");
    Pattern literal = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"");
    List<String> found = new ArrayList<>();
    for (String module : List.of("core", "strategies", "reports", "experiments")) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src/main/java"))) {
        for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
          String text = Files.readString(file);
          Matcher quoted = literal.matcher(text);
          while (quoted.find()) {
            String before = text.substring(Math.max(0, quoted.start() - 120), quoted.start());
            if (number.matcher(quoted.group()).find() && !before.contains("Locale.ROOT")) {
              found.add(file.getFileName() + ": " + quoted.group());
            }
          }
        }
      }
    }
    assertThat(found).isEmpty();
  }

  private static boolean goesByLocale(JavaAccess<?> access) {
    String target = access.getTargetOwner().getName() + "." + access.getName();
    boolean saysWhich =
        access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget called
            && called.getRawParameterTypes().stream()
                .anyMatch(type -> type.isEquivalentTo(java.util.Locale.class));
    return BY_LOCALE.contains(target) && !saysWhich;
  }

  /**
   * Maps and sets without an order are only looked up in, never gone through: each class that makes
   * one was read for that and stands in the list.
   */
  @Test
  void results_areNotReadFromMapsWithoutAnOrder() {
    noClasses()
        .that()
        .resideInAnyPackage(RESULTS)
        .and(notAmong(LOOKED_UP_ONLY))
        .should()
        .callConstructor(HashMap.class)
        .orShould()
        .callConstructor(HashSet.class)
        .orShould()
        .callMethod(java.util.stream.Collectors.class, "toSet")
        .orShould()
        .callMethod(Set.class, "copyOf", java.util.Collection.class)
        .check(CLASSES);
  }

  @Test
  void classes_keepNoChangeableStatics() {
    fields()
        .that()
        .areStatic()
        .and()
        .doNotHaveModifier(JavaModifier.SYNTHETIC)
        .should()
        .beFinal()
        .check(CLASSES);
  }

  private static DescribedPredicate<JavaMethodCall> named(String name, Class<?> owner) {
    return DescribedPredicate.describe(
        "are " + owner.getSimpleName() + "." + name,
        call -> call.getName().equals(name) && call.getTargetOwner().isEquivalentTo(owner));
  }

  private static DescribedPredicate<JavaClass> notAmong(Set<String> names) {
    return DescribedPredicate.describe(
        "are not among " + names, type -> !names.contains(type.getSimpleName()));
  }
}
