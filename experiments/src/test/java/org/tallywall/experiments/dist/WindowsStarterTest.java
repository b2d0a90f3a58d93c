package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The starter for Windows cannot be run on the machines that test the program, so its lines are
 * looked at instead: every jump has its label, every end hands an exit code on, every name may hold
 * blanks. Whether Windows agrees is for somebody with Windows to say.
 */
class WindowsStarterTest {
  private static final Pattern JUMP = Pattern.compile("\\bgoto (\\w+)");
  private static final Set<String> KNOWN = Set.of("@echo", "setlocal", "set", "if", "exit", ">&2");
  private static final Pattern VARIABLE = Pattern.compile("%([A-Za-z_]+)%");

  private static List<String> lines() throws IOException {
    return Files.readAllLines(Path.of("src/main/dist/tallywall.cmd"));
  }

  /** The lines that do something. */
  private static List<String> code() throws IOException {
    return lines().stream().filter(line -> !line.isBlank() && !line.startsWith("rem ")).toList();
  }

  @Test
  void jumps_leadToLabels_andEveryLabelIsReached() throws IOException {
    Set<String> jumps = new TreeSet<>();
    Set<String> labels = new TreeSet<>();
    for (String line : code()) {
      for (Matcher jump = JUMP.matcher(line); jump.find(); ) {
        jumps.add(jump.group(1));
      }
      if (line.startsWith(":")) {
        assertThat(labels.add(line.substring(1))).as(line).isTrue();
      }
    }
    assertThat(jumps).isNotEmpty().isEqualTo(labels);
  }

  @Test
  void everyComplaint_goesToStandardError_andEndsWithTwo() throws IOException {
    List<String> code = code();
    for (int at = 0; at < code.size(); at++) {
      if (code.get(at).contains(" echo ")) {
        assertThat(code.get(at)).startsWith(">&2 echo tallywall: ");
        assertThat(code.get(at + 1)).isEqualTo("exit /b 2");
      }
    }
  }

  @Test
  void program_getsAllWords_andItsExitCodeIsHandedOn() throws IOException {
    List<String> code = code();
    int start = -1;
    for (int at = 0; at < code.size(); at++) {
      if (code.get(at).contains(" -jar ")) {
        assertThat(start).isEqualTo(-1);
        start = at;
      }
    }
    assertThat(code.get(start)).endsWith(" -jar \"%TALLYWALL_JAR%\" %*");
    assertThat(code.get(start + 1)).isEqualTo("exit /b %ERRORLEVEL%");
  }

  @Test
  void lines_fallThrough_onlyFromChecksToTheStart() throws IOException {
    List<String> code = code();
    List<String> entered = new ArrayList<>();
    for (int at = 1; at < code.size(); at++) {
      if (code.get(at).startsWith(":") && !code.get(at - 1).startsWith("exit /b ")) {
        entered.add(code.get(at));
      }
    }
    assertThat(entered).containsExactly(":probe", ":start");
    assertThat(code.get(code.size() - 1)).startsWith("exit /b ");
  }

  @Test
  void names_thatMayHoldBlanks_standInQuotes() throws IOException {
    Set<String> set = new TreeSet<>(Set.of("ERRORLEVEL", "JAVA_HOME", "TALLYWALL_JAVA_OPTS"));
    for (String line : code()) {
      assertThat(line.chars().filter(letter -> letter == '"').count() % 2).as(line).isZero();
      if (line.startsWith("set ")) {
        assertThat(line).matches("set \"[A-Z_]+=.*\"");
        set.add(line.substring(5, line.indexOf('=')));
      }
      for (Matcher used = VARIABLE.matcher(line); used.find(); ) {
        assertThat(set).as(line).contains(used.group(1));
        if (!Set.of("ERRORLEVEL", "TALLYWALL_JAVA_OPTS").contains(used.group(1))) {
          assertThat(line.substring(0, used.start()).chars().filter(l -> l == '"').count() % 2)
              .as(line)
              .isOne();
        }
      }
    }
  }

  /** What a shell knows and the command processor does not. */
  @Test
  void lines_holdNothingOfAShell() throws IOException {
    assertThat(lines().get(0)).isEqualTo("@echo off");
    for (String line : code()) {
      assertThat(line)
          .doesNotContain("$", "`", "'", "/dev/null", "[ ", "&& ", "|| ", "\\\n")
          .matches("[\\x20-\\x7e]+");
      String first = line.toLowerCase(Locale.ROOT).split("[ \"]", 2)[0];
      assertThat(first.isEmpty() || first.startsWith(":") || KNOWN.contains(first))
          .as(line)
          .isTrue();
    }
  }
}
