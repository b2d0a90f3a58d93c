package org.tallywall.experiments.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** What a review plays, and when it ends. */
class ReviewerTest {
  private static final Path SCENES = Path.of("scenes/heron-reach");
  private static final TableSetup SETUP =
      new TableSetup(
          new ConcreteHands(CardFile.read(SCENES.resolve("card.json")).orThrow()),
          TableRules.STANDARD);

  private static Seated seated(String id) {
    PlayerSpec spec = new PlayerSpec(Catalog.standard().find(id), Map.of());
    return new Seated(id, id, spec::make);
  }

  private static ReviewQuestion question(String scene, long seed) {
    PositionSheet sheet = PositionSheet.read(SCENES.resolve(scene + ".txt"), SETUP);
    List<Considered> choices =
        new Shortlist(sheet, seated("watchful"), List.of(seated("nearest")), player -> player)
            .choices(List.of());
    return new ReviewQuestion(
        sheet,
        choices.subList(0, Math.min(3, choices.size())),
        TinyTable.four("nearest", seated("nearest").maker()),
        Guesses.USUAL,
        seed);
  }

  /** Blocks of threads come and go; the same games are played and added up in the same order. */
  @Test
  void review_isTheSameWithAnyNumberOfThreads() {
    for (String scene : List.of("hold-her-tile", "call-to-be-one-away", "stop-when-twelve-stand")) {
      Review alone = TinyTable.review(question(scene, 5), 200, 1);
      assertThat(TinyTable.review(question(scene, 5), 200, 2)).isEqualTo(alone);
      assertThat(TinyTable.review(question(scene, 5), 200, 5)).isEqualTo(alone);
      assertThat(TinyTable.review(question(scene, 6), 200, 1)).isNotEqualTo(alone);
    }
  }

  @Test
  void review_playsNoMoreGamesThanItIsGiven() {
    Review review = TinyTable.review(question("hold-her-tile", 1), 200);
    assertThat(review.games()).isEqualTo(198);
    assertThat(review.worlds()).isEqualTo(66);
    assertThat(review.ended()).isEqualTo(Review.Ended.GAMES);
    assertThat(review.choices()).allMatch(one -> one.games() == 66);
  }

  /** A second goes by at every look at this clock. */
  @Test
  void review_endsWithTheRoundInWhichItsTimeIsUp() {
    AtomicLong clock = new AtomicLong();
    RunLimits run = new RunLimits(1, 60_000, () -> clock.addAndGet(1_000_000_000L));
    List<Long> seen = new ArrayList<>();
    ReviewLimits limits = new ReviewLimits(ReviewLimits.ANY_GAMES, 2_000_000_000L, run);
    Review review =
        new Reviewer(question("hold-her-tile", 1), limits)
            .review(known -> seen.add(known.get().worlds()));
    assertThat(review.ended()).isEqualTo(Review.Ended.TIME);
    assertThat(seen).isNotEmpty().allMatch(worlds -> worlds % 64 == 0);
    assertThat(review.worlds()).isEqualTo(seen.get(seen.size() - 1));
  }

  @Test
  void review_thatIsStopped_saysWhatIsKnown() {
    RunLimits run = new RunLimits(2, 60_000, () -> 0);
    Reviewer reviewer =
        new Reviewer(
            question("hold-her-tile", 1),
            new ReviewLimits(ReviewLimits.ANY_GAMES, ReviewLimits.ANY_TIME, run));
    Review review = reviewer.review(known -> reviewer.stop());
    assertThat(review.ended()).isEqualTo(Review.Ended.STOPPED);
    assertThat(review.worlds()).isEqualTo(128);
  }

  /** The winning tile is on the rack: mahjong ends every game at once, alike. */
  @Test
  void certainWin_isSaidToBeCertainOnlyAsFarAsGamesTell() {
    Review review = TinyTable.review(question("win-by-redeeming", 1), 3_000);
    ChoiceResult win =
        review.choices().stream()
            .filter(one -> one.choice().text().equals("exchange 7d seat 3 then mahjong"))
            .findFirst()
            .orElseThrow();
    assertThat(win.wins().value()).isEqualTo(1);
    assertThat(win.wins().high()).isEqualTo(1);
    assertThat(win.wins().low()).isBetween(0.97, 0.9999);
    assertThat(win.points().value()).isEqualTo(180);
  }
}
