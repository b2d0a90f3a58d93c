package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.store.OnExisting;

/** Players that break down, answer illegally or do not answer at all. */
/* Only a test that hangs takes so long. */
@Timeout(value = 20, unit = TimeUnit.MINUTES)
@Tag("long")
class FaultsTest {
  private static final String STUDY =
      """
      { "study": "harbour-look", "card": "small.json", "seed": 5,
        "table": ["nearest", "nearest", "clumsy", "nearest"],
        "deals": 1100, "records": 30, "decision-seconds": 3600 }
      """;

  /** Breaks down with four jokers in the hand: now and then. */
  private static final Function<SeatView, TurnChoice> AT_TIMES =
      view -> {
        if (view.held(Tile.JOKER) == 4) {
          throw new IllegalStateException("out of ideas");
        }
        return null;
      };

  @TempDir Path folder;

  private String study;
  private String out;

  @BeforeEach
  void write() {
    Cards.small(folder);
    study = Cards.write(folder, "study.json", STUDY);
    out = folder.resolve("out").toString();
  }

  private String withFaultsBorne(int number) {
    return Cards.write(
        folder,
        "patient.json",
        STUDY.replace("\"records\"", "\"failed-deals-allowed\": " + number + ", \"records\""));
  }

  @Test
  void playerThatSpoilsEveryDeal_leavesNothingToCountAndIsToldSo() throws IOException {
    Path always = Path.of(out);
    assertThatThrownBy(
            () ->
                Clumsy.run(
                    withFaultsBorne(1100),
                    out,
                    view -> new TurnChoice.Exchange(9, 77),
                    OnExisting.FAIL))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("players failed in every deal that was to be counted")
        .hasMessageContaining(
            "the first: the player \"clumsy\" at seat 2 answered illegally in deal 0")
        .hasMessageContaining("see it again with: tallywall game --study");
    assertThat(always.resolve("win-rates.csv")).doesNotExist();
    assertThat(Files.readString(always.resolve("manifest.json"))).contains("\"stopped\"");
  }

  @Test
  void playerThatBreaksDown_stopsTheRunAndNamesTheCommandThatShowsIt() {
    assertThatThrownBy(
            () ->
                Clumsy.run(
                    study,
                    out,
                    view -> {
                      throw new IllegalStateException("out of ideas");
                    },
                    OnExisting.FAIL))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("the player \"clumsy\" at seat 2 broke down in deal 0")
        .hasMessageContaining("tallywall game --study " + out + "/study.json --deal 0")
        .hasMessageContaining("the study allows no failed deals (\"failed-deals-allowed\")")
        .hasMessageContaining("--on-existing resume")
        .hasMessageNotContaining("Exception");
    assertThat(Path.of(out, "study.json")).exists();
    assertThat(Path.of(out, "win-rates.csv")).doesNotExist();
  }

  @Test
  void playerThatAnswersIllegally_stopsTheRunAndSaysWhatWasWrong() {
    assertThatThrownBy(
            () ->
                Clumsy.run(
                    study,
                    out,
                    view -> TurnChoice.discard(view.held(Tile.JOKER) == 0 ? Tile.JOKER : -1),
                    OnExisting.FAIL))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("the player \"clumsy\" at seat 2 answered illegally in deal 0")
        .hasMessageContaining("to discard (rule 3.2)")
        .hasMessageContaining("--deal 0");
  }

  @Test
  void faultsBorne_dealsAreSetAsideCountedAndListed() throws IOException {
    Clumsy.Run run = Clumsy.run(withFaultsBorne(400), out, AT_TIMES, OnExisting.FAIL);

    assertThat(run.code()).isZero();
    Map<String, String> files = RunCommandTest.files(Path.of(out));
    List<String> faults = files.get("faults.csv").lines().toList();
    int aside = faults.size() - 1;
    assertThat(aside).isBetween(1, 400);
    assertThat(faults.get(0)).isEqualTo("deal,arm,seat,player,fault,words,command");
    String deal = faults.get(1).substring(0, faults.get(1).indexOf(','));
    assertThat(faults.get(1))
        .isEqualTo(
            deal + ",,2,clumsy,broke down,,tallywall game --study study.json --deal " + deal);
    assertThat(files.get("manifest.json"))
        .contains("\"faults\" : " + aside, "\"deals\" : " + (1100 - aside));
    assertThat(files.get("endings.csv")).isNotEmpty();
    assertThat(files.get("columns.md")).contains("faults.csv");
  }

  @Test
  void faultsBorne_everyOtherDeal_isCountedAsWithoutThem() throws IOException {
    Clumsy.run(withFaultsBorne(400), out, AT_TIMES, OnExisting.FAIL);
    String sound = folder.resolve("sound").toString();
    Clumsy.run(study, sound, view -> null, OnExisting.FAIL);

    Map<String, String> faulty = RunCommandTest.files(Path.of(out));
    List<String> aside = faulty.get("faults.csv").lines().skip(1).toList();
    List<String> kept = faulty.get("records.jsonl.gz").lines().toList();
    List<String> all =
        RunCommandTest.files(Path.of(sound)).get("records.jsonl.gz").lines().toList();
    long asideOfFirst =
        aside.stream().filter(row -> Long.parseLong(row.split(",")[0]) < 30).count();
    assertThat(kept).hasSize((int) (30 - asideOfFirst));
    assertThat(all).containsAll(kept);
  }

  /**
   * The first blocks are kept; with more borne the same run goes on, and ends as if never ended.
   */
  @Test
  void moreFaultsThanBorne_whatWasPlayedIsKeptAndGoesOn() throws IOException {
    assertThatThrownBy(() -> Clumsy.run(withFaultsBorne(1), out, AT_TIMES, OnExisting.FAIL))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("the study allows 1 failed deal")
        .hasMessageContaining("and this is one more");
    assertThat(Files.readString(Path.of(out, "manifest.json"))).contains("\"stopped\"");

    Clumsy.Run resumed = Clumsy.run(withFaultsBorne(400), out, AT_TIMES, OnExisting.RESUME);

    assertThat(resumed.code()).isZero();
    String whole = folder.resolve("whole").toString();
    Clumsy.run(withFaultsBorne(400), whole, AT_TIMES, OnExisting.FAIL);
    assertThat(withoutManifest(out)).isEqualTo(withoutManifest(whole));
  }

  @Test
  void playerThatDoesNotAnswer_stopsTheRunAndItsBlockIsNotWritten() throws IOException {
    String strict = Cards.write(folder, "strict.json", STUDY.replace("3600", "1"));
    CountDownLatch end = new CountDownLatch(1);
    AtomicBoolean stands = new AtomicBoolean(true);
    AtomicLong now = new AtomicLong();
    // The clock stands until the only table's player is stuck; then time passes with every look.
    LongSupplier clock = () -> stands.get() ? now.get() : now.addAndGet(600_000_000_000L);
    Throwable stopped;
    try {
      stopped =
          catchThrowable(
              () ->
                  Clumsy.run(
                      strict, out, view -> stuck(view, end, stands), OnExisting.FAIL, 1, clock));
    } finally {
      end.countDown();
    }
    assertThat(stopped)
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("the player \"clumsy\" at seat 2 took longer than 1 second")
        .hasMessageContaining("tallywall game --study " + out + "/study.json --deal ")
        .hasMessageContaining("\"decision-seconds\" in the study allows more")
        .hasMessageContaining("Everything played so far is kept");
    Matcher deal = Pattern.compile("in deal (\\d+);").matcher(stopped.getMessage());
    assertThat(deal.find()).isTrue();
    long block = Long.parseLong(deal.group(1)) / 500;
    assertThat(block).isPositive();
    assertThat(Path.of(out, "blocks/000000" + block + ".block")).doesNotExist();
    assertThat(Path.of(out, "blocks/0000000.block")).exists();

    Clumsy.Run resumed = Clumsy.run(study, out, view -> null, OnExisting.RESUME);

    assertThat(resumed.code()).isZero();
    String whole = folder.resolve("whole").toString();
    Clumsy.run(study, whole, view -> null, OnExisting.FAIL);
    assertThat(withoutManifest(out)).isEqualTo(withoutManifest(whole));
  }

  /** Waits for the end of the test with a hand that comes up once, in the second block. */
  private static TurnChoice stuck(SeatView view, CountDownLatch end, AtomicBoolean stands) {
    if (view.held(Tile.JOKER) == 6 && view.held(0) + view.held(9) == 1) {
      try {
        stands.set(false);
        end.await();
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
      }
    }
    return null;
  }

  private static Map<String, String> withoutManifest(String out) throws IOException {
    Map<String, String> files = RunCommandTest.files(Path.of(out));
    files.remove("manifest.json");
    return files;
  }
}
