package org.tallywall.experiments.design.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.tallywall.core.card.Card;
import org.tallywall.experiments.answer.PlayerLabel;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.answer.Way;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyGame;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;
import org.tallywall.reports.schema.Show;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * One fixed table, to see how lines and endings fall: one game a deal.
 *
 * @param players four players, East first
 * @param show what the study is asked about; empty where it does not say
 */
public record TableDesign(List<PlayerSpec> players, Optional<Show> show) implements PlayedDesign {
  /** The field of a study file that asks for this design. */
  static final String NAME = "table";

  /**
   * Copies the players.
   *
   * @param players four players
   * @param show what the study is asked about
   * @throws IllegalArgumentException if there are not four
   */
  public TableDesign {
    players = List.copyOf(players);
    if (players.size() != 4) {
      throw new IllegalArgumentException("four players sit at a table, not " + players.size());
    }
  }

  @Override
  public List<PlayerSpec> seated() {
    return players;
  }

  @Override
  public Map<String, Object> fields(Function<PlayerSpec, Object> player) {
    return Map.of(NAME, players.stream().map(player).toList());
  }

  @Override
  public Map<String, Object> telling(Card card) {
    Show shown = show.orElseGet(() -> Show.usual(card.families().size()));
    return Map.of(Show.FIELD, shown.text());
  }

  @Override
  public TallyPlan plan(int measures) {
    return new TallyPlan(1, 0, 0, measures, 0);
  }

  @Override
  public DealPlayer deals(Study study, Tables tables) {
    return new TableDeals(this, tables);
  }

  @Override
  public StudyGame game(long deal, String arm, Integer seat) {
    StudyGame.refuse(arm);
    if (seat != null) {
      throw new WrongInputException("the study plays one fixed table; leave --seat out");
    }
    return new StudyGame(players, 0);
  }

  @Override
  public List<Integer> seats() {
    return ROTATE;
  }

  @Override
  public List<Way> ways(StudyTally tally) {
    List<String> labels = players.stream().map(PlayerLabel::of).toList();
    return List.of(new Way(Way.TABLE, labels, seats(), tally.arm(0)));
  }

  @Override
  public List<Table> tables(StudyAnswer answer) {
    return List.of(Overall.of(answer.tally().arm(0), answer.certainty().confidence()));
  }
}
