package org.tallywall.experiments.design.arms;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.deals.Course;
import org.tallywall.experiments.deals.StanceListener;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;
import org.tallywall.strategies.habit.Stance;

/**
 * Which games a step of the defense is compared over, on courses made by hand: a letter is an
 * event, and a large one a discard.
 */
class HabitsTest {
  private static final String CARD =
      """
      { "card": "Hawser test card", "families": [ { "family": "Pairs", "lines": [
        { "tiles": "FFFF 2222x 3333x 55y", "value": 30 } ] } ] }
      """;

  /**
   * The first two: before the games go apart, and at the discard by which they do. Then: the arm
   * discards where the baseline does something else; after the games have gone apart; in games that
   * never differ; where the baseline's game has ended.
   */
  @ParameterizedTest
  @CsvSource({
    "aBcDe, aBcDf, 1, 1",
    "aBcDe, aBcEe, 3, 1",
    "aBcDe, aBcxe, 3, 0",
    "aBcDe, aBdDe, 3, 0",
    "aBcDe, aCcDe, 3, 0",
    "aBcDe, aBcDe, 3, 1",
    "aBcDe, aBc, 3, 0"
  })
  void step_isComparedOnlyWhereTheGamesWereOneUpToItsDiscard(
      String arm, String baseline, int event, int compared) {
    FiringTally step = compare(game(arm, 50, event), game(baseline, 20, -1), Stance.HOLD_BACK);

    assertThat(step.seatGames()).isEqualTo(1);
    assertThat(step.games()).isEqualTo(1);
    assertThat(step.wall()).isEqualTo(99 - event);
    assertThat(step.compared()).isEqualTo(compared);
    assertThat(step.reached()).isEqualTo(compared);
    assertThat(step.effect(0).difference().value().longValueExact()).isEqualTo(30L * compared);
    assertThat(step.effect(0).games().value().longValueExact()).isEqualTo(compared);
  }

  @ParameterizedTest
  @CsvSource({"aBcDe, aBcEe, 1", "aBcDe, aBdDe, 1", "aBcDe, aBc, 1", "aBcDe, aBcDe, 0"})
  void playedDifferently_isComparedOverAllGamesThatDiffer(String arm, String baseline, int games) {
    StudyTally tally = tally(game(arm, 50, 3), game(baseline, 20, -1));

    assertThat(tally.firing(0).games()).isEqualTo(games);
    assertThat(tally.firing(0).compared()).isEqualTo(games);
    assertThat(tally.firing(0).effect(0).difference().value().longValueExact())
        .isEqualTo(30L * games);
  }

  private static FiringTally compare(ArmGame arm, ArmGame baseline, Stance step) {
    return tally(arm, baseline).firing(Habits.names().indexOf(step.text()));
  }

  private static StudyTally tally(ArmGame arm, ArmGame baseline) {
    TableSetup setup =
        new TableSetup(
            new ConcreteHands(CardFile.json("card", CARD).orThrow()), TableRules.STANDARD);
    int habits = Habits.names().size();
    StudyTally tally = new StudyTally(new TallyPlan(2, 1, habits, 1, 0), setup);
    new Habits(1).compare(0, new ArmGame[] {arm}, new ArmGame[] {baseline}, tally);
    return tally;
  }

  /** A game of one event a letter; the wall has 99 tiles at first, one less after each. */
  private static ArmGame game(String events, long points, int holdsBackAt) {
    int length = events.length();
    long[] prints = new long[length];
    int[] walls = new int[length];
    boolean[] discards = new boolean[length];
    for (int at = 0; at < length; at++) {
      prints[at] = events.substring(0, at + 1).hashCode();
      walls[at] = 99 - at;
      discards[at] = Character.isUpperCase(events.charAt(at));
    }
    int[] steps = new int[Stance.values().length];
    Arrays.fill(steps, StanceListener.NEVER);
    steps[Stance.HOLD_BACK.ordinal()] = holdsBackAt;
    return new ArmGame(new long[] {points}, new Course(prints, walls, discards), steps);
  }
}
