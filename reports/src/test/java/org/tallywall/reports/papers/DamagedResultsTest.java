package org.tallywall.reports.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.results.WrongResultsException;

/**
 * Folders of runs of every design, damaged in one to three places: papers are made of them, or a
 * sentence says what is wrong and where. {@code -Dmutants=100000} looks further than every build.
 */
@Tag("long")
class DamagedResultsTest {
  private static final int MUTANTS = Integer.getInteger("mutants", 300);
  private static final int AT_LENGTH = 1_500;
  private static final long SEED = Long.getLong("mutants.seed", 1);
  private static final int LONGEST_MESSAGE = 1_500;
  private static final int FRAMES = 8;

  @TempDir private Path folder;

  @Test
  void folder_damagedAnyhow_givesPapersOrASentence() throws IOException {
    assertPapersOrASentence(MUTANTS, SEED);
  }

  @Test
  void manyFolders_damagedAnyhow_givePapersOrASentence() throws IOException {
    assertPapersOrASentence(AT_LENGTH, SEED + 1);
  }

  private void assertPapersOrASentence(int mutants, long seed) throws IOException {
    Random random = new Random(seed);
    Map<String, String> troubles = new LinkedHashMap<>();
    int papers = 0;
    for (int mutant = 0; mutant < mutants; mutant++) {
      String design = RealResults.DESIGNS.get(mutant % RealResults.DESIGNS.size());
      Map<String, String> files = RealResults.files(design);
      String what = design + ": " + damage(files, random);
      try {
        AllPapers.of(RealResults.write(folder.resolve(design), files));
        papers++;
      } catch (WrongResultsException said) {
        boolean place = said.getMessage().contains(folder.toString());
        if (!place || said.getMessage().length() > LONGEST_MESSAGE) {
          troubles.putIfAbsent("message " + said.getMessage(), what);
        }
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
        StackTraceElement[] trace = fault.getStackTrace();
        List<StackTraceElement> top = List.of(trace).subList(0, Math.min(FRAMES, trace.length));
        troubles.putIfAbsent(fault + " at " + top, what);
      }
    }
    assertThat(troubles).as(papers + " of " + mutants + " gave papers").isEmpty();
    assertThat(papers).as("mutants that do no harm").isBetween(mutants / 50, mutants * 49 / 50);
  }

  private static String damage(Map<String, String> files, Random random) {
    List<String> names = List.copyOf(files.keySet());
    Damage damage = new Damage(random);
    List<String> what = new ArrayList<>();
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      String name = names.get(random.nextInt(names.size()));
      String before = files.get(name);
      String after = before == null ? null : damage.of(name, before);
      files.put(name, after);
      what.add(name + " " + change(before, after));
    }
    return String.join("; ", what);
  }

  private static String change(String before, String after) {
    if (before == null || after == null) {
      return "is missing";
    }
    List<String> lines = before.lines().toList();
    List<String> now = after.lines().toList();
    for (int at = 0; at < Math.min(lines.size(), now.size()); at++) {
      if (!lines.get(at).equals(now.get(at))) {
        return "line " + (at + 1) + ": " + lines.get(at) + " -> " + now.get(at);
      }
    }
    return "has " + now.size() + " lines of " + lines.size();
  }
}
