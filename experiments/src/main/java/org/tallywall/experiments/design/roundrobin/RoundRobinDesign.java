package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.answer.Way;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyGame;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.DesignJson;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.ContestTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Everyone against everyone, four at a table.
 *
 * @param players four or more
 */
public record RoundRobinDesign(List<Arm> players) implements PlayedDesign {
  /** The field of a study file that asks for this design. */
  static final String NAME = "round-robin";

  /**
   * Copies the players.
   *
   * @param players four or more
   */
  public RoundRobinDesign {
    players = List.copyOf(players);
  }

  @Override
  public List<PlayerSpec> seated() {
    return players.stream().map(Arm::player).toList();
  }

  @Override
  public Map<String, Object> fields(Function<PlayerSpec, Object> player) {
    return Map.of(NAME, DesignJson.named(players, player));
  }

  @Override
  public int blockSize() {
    return RoundRobinTables.BLOCK;
  }

  /** Whole rounds, in which everybody sits with everybody equally often. */
  @Override
  public long deals(long asked) {
    long round = RoundRobinTables.round(players.size());
    return (asked + round - 1) / round * round;
  }

  @Override
  public TallyPlan plan(int measures) {
    int tables = new RoundRobinTables(players.size()).count();
    return new TallyPlan(players.size(), 0, 0, measures, tables);
  }

  @Override
  public DealPlayer deals(Study study, Tables tables) {
    return new RoundRobinDeals(this, tables);
  }

  /** Games are told by their number within the deal. */
  @Override
  public GamePlace replayed(GamePlace place) {
    int turn = (int) (place.game() % ContestTally.GAMES);
    return new GamePlace(place.deal(), place.game(), place.arm(), turn);
  }

  @Override
  public StudyGame game(long deal, String arm, Integer turn) {
    StudyGame.refuse(arm);
    if (turn == null || turn < 0 || turn > 3) {
      throw new WrongInputException(
          "the study plays each deal four times; write --seat 0 to 3 for the first to the fourth");
    }
    RoundRobinTables tables = new RoundRobinTables(players.size());
    List<Integer> table = tables.players(tables.of(deal));
    List<PlayerSpec> four = new ArrayList<>();
    for (int place : RoundRobinTables.seating(deal, turn)) {
      four.add(players.get(table.get(place)).player());
    }
    return new StudyGame(four, 0);
  }

  @Override
  public List<Integer> seats() {
    return ROTATE;
  }

  @Override
  public List<Way> ways(StudyTally tally) {
    return Way.of(players, seats(), tally);
  }

  @Override
  public List<Table> tables(StudyAnswer answer) {
    return Ratings.all(answer, this);
  }
}
