package org.tallywall.experiments.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.play.Player;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.catalog.Catalog;

/**
 * Every player's score in the scenes, with 20 seeds and under all six exchanges of suits. A scene
 * that a player does not pass though it is named is listed here, so that a change in either
 * direction shows.
 */
@Tag("one-jdk")
class SceneScoresTest {
  private static final Path FOLDER = Path.of("scenes");
  private static final Scenes HERON =
      Scenes.of(
          CardFile.read(FOLDER.resolve("heron-reach/card.json")).orThrow(),
          FOLDER.resolve("heron-reach"));

  private static final Scenes FURTHER =
      Scenes.of(
          CardFile.read(FOLDER.resolve("heron-reach/card.json")).orThrow(),
          FOLDER.resolve("heron-reach-further"));

  private static final Scenes QUAY =
      Scenes.of(
          CardFile.read(Path.of("cards/saltmarsh-quay.json")).orThrow(),
          FOLDER.resolve("saltmarsh-quay"));

  private static final Map<Scenes, Map<String, List<SceneMark>>> MARKS = new IdentityHashMap<>();

  private static Supplier<Player> player(String id) {
    return Catalog.standard().type(id).orElseThrow().maker();
  }

  /** Marks depend on scenes and player alone; several tests look at the same. */
  private static List<SceneMark> marks(Scenes scenes, String id) {
    return MARKS
        .computeIfAbsent(scenes, key -> new HashMap<>())
        .computeIfAbsent(id, key -> scenes.mark(player(id)));
  }

  private static List<String> failed(Scenes scenes, String id) {
    List<String> failed = new ArrayList<>();
    for (SceneMark mark : marks(scenes, id)) {
      if (!mark.passed()) {
        failed.add(mark.scene());
        assertThat(mark.slip()).isNotEmpty();
      } else {
        assertThat(mark.ruledOut()).isFalse();
      }
    }
    return failed;
  }

  @ParameterizedTest
  @CsvSource({
    "newcomer, hold-her-tile stop-when-twelve-stand",
    "nearest, redeem-with-the-stranger",
    "reckoner,",
    "bold,",
    "cautious,",
    "sharp,",
    "watchful,"
  })
  void heronReach_failsAreThoseKnown(String id, String known) {
    assertThat(failed(HERON, id)).isEqualTo(known == null ? List.of() : List.of(known.split(" ")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"reckoner", "watchful"})
  void saltmarshQuay_thoseNamedPassAll(String id) {
    assertThat(failedThoughNamed(QUAY, id)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"reckoner", "watchful"})
  void heronReachFurther_thoseNamedPassAll(String id) {
    assertThat(failedThoughNamed(FURTHER, id)).isEmpty();
  }

  private static List<String> failedThoughNamed(Scenes scenes, String id) {
    List<String> named =
        scenes.sheets().stream()
            .filter(sheet -> sheet.players().contains(id))
            .map(PositionSheet::scene)
            .toList();
    assertThat(named).isNotEmpty();
    return failed(scenes, id).stream().filter(named::contains).toList();
  }

  @Test
  @Tag("long")
  void scores_riseWithThePlayer() {
    long newcomer = passed(QUAY, "newcomer");
    long reckoner = passed(QUAY, "reckoner");
    assertThat(newcomer).isLessThan(passed(QUAY, "nearest")).isLessThan(reckoner);
    assertThat(reckoner).isLessThan(passed(QUAY, "watchful"));
  }

  private static long passed(Scenes scenes, String id) {
    return marks(scenes, id).stream().filter(SceneMark::passed).count();
  }

  @Test
  void score_isTheNumberOfScenesPassed() {
    assertThat(HERON.score(player("nearest"))).isEqualTo(9);
    assertThat(HERON.score(player("watchful"))).isEqualTo(10);
  }

  @Test
  void everyScene_isComplete() {
    assertThat(HERON.sheets()).hasSize(10);
    assertThat(FURTHER.sheets()).hasSizeGreaterThanOrEqualTo(40);
    assertThat(QUAY.sheets()).hasSizeGreaterThanOrEqualTo(80);
    List<PositionSheet> all = new ArrayList<>(HERON.sheets());
    all.addAll(FURTHER.sheets());
    all.addAll(QUAY.sheets());
    for (PositionSheet sheet : all) {
      assertThat(sheet.scene()).isNotEmpty();
      assertThat(sheet.players()).isSubsetOf("newcomer", "reckoner", "watchful").isNotEmpty();
      assertThat(sheet.expect()).isNotEmpty();
      assertThat(sheet.never()).isNotEmpty();
      assertThat(sheet.because()).isNotEmpty();
      assertThat(sheet.discardsLeftOut()).as(sheet.scene()).isZero();
    }
  }
}
