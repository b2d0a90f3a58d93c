package org.tallywall.experiments.gauges.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Position;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.tile.Rack;
import org.tallywall.experiments.gauges.guess.SeenPositions;
import org.tallywall.strategies.guess.LikelyTiles;

class GuessTallyTest {
  private static final Path CARD = Path.of("../cards/saltmarsh-quay.json");

  private static GuessTally tally(boolean truthIsGuessed) {
    LikelyTiles guess = new LikelyTiles();
    GuessTally tally = new GuessTally(List.of(guess, guess), 40);
    Position position = new Position();
    new SeenPositions(CalibrationPage.card(CARD), "nearest", 5, 11)
        .play(
            0,
            25,
            (view, racks, random) -> {
              position.begin(view, random);
              guess.look(view);
              guess.deal(view, random.beside(Purpose.ROLLOUT, 1_000_001), position);
              List<Rack> truth = new ArrayList<>();
              for (int seat = 0; seat < racks.size(); seat++) {
                int size = racks.get(seat).total();
                boolean guessed = truthIsGuessed || view.wallLeft() < size;
                truth.add(guessed ? position.rack(seat).copy() : wall(position, size));
              }
              tally.visit(view, truth, random);
            },
            tally::endGame);
    return tally;
  }

  private static Rack wall(Position position, int size) {
    Rack rack = new Rack();
    for (int at = 0; at < size; at++) {
      rack.add(position.wall(at));
    }
    return rack;
  }

  /**
   * Nothing to be found: what is "true" is one more guess, so every tenth is right. Of 40 tenths or
   * so, those with chances by the thousand are to be within three in 100; their standard error is
   * below 0.6, so that a fresh seed would fail this less than once in 100,000.
   */
  @Test
  void guessesOfAGuess_areTrueAsOftenAsTheySay() {
    GuessTally tally = tally(true);
    assertThat(tally.positions()).isGreaterThan(150);
    int looked = 0;
    for (GuessTally.Fact fact : GuessTally.Fact.values()) {
      for (Bins.Row row : tally.bins(0, fact).rows()) {
        if (row.count() > 2000) {
          looked++;
          assertThat(Math.abs(NetResult.off(row))).as("%s %s", fact, row).isLessThan(3);
        }
      }
      assertThat(tally.score(1, fact).logarithmicMore().value()).isZero();
    }
    assertThat(looked).isGreaterThan(5);
  }

  /** Something to be found: tiles of the wall are further from a hand than racks are guessed. */
  @Test
  void guessesOfTheWall_areToldToBeWrong() {
    Bins.Row row = tally(false).bins(0, GuessTally.Fact.AWAY).rows().get(2);
    assertThat(row.from()).isEqualTo(0.2);
    assertThat(row.said()).isGreaterThan(row.limits().high() + 0.02);
  }
}
