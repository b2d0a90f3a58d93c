package org.tallywall.experiments.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Two reviews of one position with different seeds agree as often as they promise. A review that
 * says of a choice that it costs points must not be spoken against by another that says the same
 * choice is best, and the ranges of each pair of numbers must overlap.
 *
 * <p>Each review misses anywhere among its verdicts in at most 5 of 100; so two contradict each
 * other in at most 10 of 100. Of n positions more than the 1e-5 tail of that would be a fault.
 * {@code -Dreview.positions=200} looks at as many, and {@code -Dreview.games} plays more in each.
 */
@Tag("long")
class ReviewsAgreeTest {
  private static final int POSITIONS = Integer.getInteger("review.positions", 24);
  private static final int GAMES = Integer.getInteger("review.games", 1_500);

  private static Seated seated(String id) {
    PlayerSpec spec = new PlayerSpec(Catalog.standard().find(id), Map.of());
    return new Seated(id, id, spec::make);
  }

  @Test
  void twoReviewsOfAPosition_contradictEachOtherHardlyEver() {
    TableSetup setup =
        new TableSetup(
            new ConcreteHands(CardFile.read(Path.of("cards/saltmarsh-quay.json")).orThrow()),
            TableRules.STANDARD);
    Seated watchful = seated("watchful");
    List<PositionSheet> sheets = MidGames.of(setup, watchful, POSITIONS);
    int apart = 0;
    int points = 0;
    int choices = 0;
    for (PositionSheet sheet : sheets) {
      List<Considered> list =
          new Shortlist(sheet, watchful, List.of(seated("reckoner")), player -> player)
              .choices(List.of());
      Review one = review(sheet, list, watchful, 1);
      Review two = review(sheet, list, watchful, 2);
      apart += contradict(one, two) ? 1 : 0;
      for (Considered choice : list) {
        points += overlap(AmongTables.of(one, choice), AmongTables.of(two, choice)) ? 0 : 1;
        choices++;
      }
    }
    System.out.println(
        "positions "
            + sheets.size()
            + ", contradictions "
            + apart
            + ", choices "
            + choices
            + ", points apart "
            + points);
    assertThat(sheets).hasSizeGreaterThan(POSITIONS / 2);
    assertThat(apart).isLessThanOrEqualTo(most(sheets.size()));
    assertThat(points).isLessThanOrEqualTo(most(choices));
  }

  private static int most(int trials) {
    return new BinomialDistribution(null, trials, 0.1).inverseCumulativeProbability(1 - 1e-5);
  }

  private static Review review(
      PositionSheet sheet, List<Considered> list, Seated player, long seed) {
    return TinyTable.review(
        new ReviewQuestion(
            sheet, list, List.of(player, player, player, player), Guesses.USUAL, seed),
        GAMES);
  }

  private static boolean contradict(Review one, Review two) {
    return clearlyBehind(one, two.best()) || clearlyBehind(two, one.best());
  }

  /** Whether a review says that another's only best choice costs points. */
  private static boolean clearlyBehind(Review review, ChoiceResult best) {
    return best.verdict() == Verdict.BEST
        && AmongTables.of(review, best.choice()).verdict() == Verdict.BEHIND;
  }

  private static boolean overlap(ChoiceResult one, ChoiceResult two) {
    return one.points().low() <= two.points().high() && two.points().low() <= one.points().high();
  }
}
