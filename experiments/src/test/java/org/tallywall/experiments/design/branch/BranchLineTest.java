package org.tallywall.experiments.design.branch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.catalog.Catalog;

/** Decisions at which a player aims at one line, counted again in the games themselves. */
@Tag("one-jdk")
class BranchLineTest {
  private static final int DEALS = 12;
  private static final int[] WALLS = {90, 60, 30};
  private static final String CARD =
      """
      { "card": "Fairlead test card", "families": [ { "family": "Ladders", "lines": [
        { "id": "A", "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 },
        { "id": "B", "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] } ] }
      """;
  private static final String STUDY =
      """
      { "study": "s", "card": "card.json", "seed": 8, "deals": 12, "primary": "points",
        "branch": { "at": "discard", "when": { "wall": [90, 60, 30] }, LINE
                    "options": ["own-need", "safest"], "player": "watchful" } }
      """;

  @TempDir private Path folder;

  /** Plays as another does and notes its first discard that fits. */
  private static final class Noting extends ForwardingPlayer {
    private final Player inner;
    private final int line;
    private int wall = -1;

    Noting(Player inner, int line) {
      super(inner);
      this.inner = inner;
      this.line = line;
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      TurnChoice choice = super.turn(view, random);
      boolean fits = choice instanceof TurnChoice.Discard && view.wallLeft() <= WALLS[0];
      if (fits && wall < 0 && (line < 0 || inner.aim(view) == line)) {
        wall = view.wallLeft();
      }
      return choice;
    }
  }

  @Test
  void decisions_withALine_areThoseAtWhichThePlayerAimsAtIt() throws IOException {
    List<Long> any = compared("", -1);
    List<Long> first = compared("\"line\": \"A\",", 0);
    List<Long> second = compared("\"line\": \"B\",", 1);

    assertThat(first.get(0)).isPositive().isLessThan(any.get(0));
    assertThat(second.get(0)).isPositive().isNotEqualTo(first.get(0));
  }

  /** Compares a study's squares with the second count, and gives the games in each. */
  private List<Long> compared(String condition, int line) throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Path file = Files.writeString(folder.resolve("study.json"), STUDY.replace("LINE", condition));
    Study study = StudyFile.read(file, Changes.NONE, Catalog.standard());
    TableSetup setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    StudyTally tally =
        new StudyPlayer(study, setup, new Pulse())
            .play(Block.of(0, DEALS, 500), new RunState(DEALS, 500, 0))
            .tally();

    List<Long> counted = new ArrayList<>();
    long[] walls = new long[WALLS.length];
    long[] games = new long[WALLS.length];
    for (long deal = 0; deal < DEALS; deal++) {
      for (int wall : walls(study, setup, deal, line)) {
        int square = wall > WALLS[1] ? 0 : wall > WALLS[2] ? 1 : 2;
        games[square] += wall < 0 ? 0 : 1;
        walls[square] += Math.max(wall, 0);
      }
    }
    for (int square = 0; square < WALLS.length; square++) {
      assertThat(tally.firing(square).games()).as(condition + square).isEqualTo(games[square]);
      assertThat(tally.firing(square).wall()).as(condition + square).isEqualTo(walls[square]);
      counted.add(games[square]);
    }
    return counted;
  }

  /** The walls at the decisions of the four seats, -1 for a seat without. */
  private static int[] walls(Study study, TableSetup setup, long deal, int line) {
    BranchDesign design = (BranchDesign) study.design();
    List<Noting> seats = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      seats.add(new Noting(design.player().make(), line));
    }
    new Game(setup, List.copyOf(seats), new GameListener() {})
        .play(Deal.of(study.extent().seed(), deal, setup.rules().tiles()));
    return seats.stream().mapToInt(seat -> seat.wall).toArray();
  }
}
