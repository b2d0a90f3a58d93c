package org.tallywall.experiments.design.branch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.Line;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.answer.Way;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyGame;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.DesignJson;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Plays to a decision and takes each option there on the same hidden tiles.
 *
 * @param moment the kind of decision
 * @param cells how positions are sorted; the first decision that fits a square counts
 * @param line the id of a line; where given, only decisions count at which the studied player aims
 *     at it
 * @param options what is tried, two or more; the others are compared with the first
 * @param player the studied player
 * @param others who sits in the other seats
 * @param seats where the studied player sits
 */
public record BranchDesign(
    BranchMoment moment,
    Cells cells,
    Optional<String> line,
    List<BranchChoice> options,
    PlayerSpec player,
    PlayerSpec others,
    List<Integer> seats)
    implements PlayedDesign {
  /** The field of a study file that asks for this design. */
  static final String NAME = "branch";

  /**
   * Copies the lists.
   *
   * @param moment the kind of decision
   * @param cells how positions are sorted
   * @param line the id of a line
   * @param options what is tried
   * @param player the studied player
   * @param others who sits in the other seats
   * @param seats where the studied player sits
   */
  public BranchDesign {
    options = List.copyOf(options);
    seats = List.copyOf(seats);
  }

  @Override
  public List<PlayerSpec> seated() {
    return Stream.concat(
            Stream.of(player, others), options.stream().flatMap(one -> one.player().stream()))
        .toList();
  }

  @Override
  public Map<String, Object> fields(Function<PlayerSpec, Object> writer) {
    Map<String, Object> when = new LinkedHashMap<>();
    cells.values().forEach((feature, values) -> when.put(feature.text(), values));
    Map<String, Object> branch = new LinkedHashMap<>();
    branch.put("at", moment.text());
    branch.put("when", when);
    line.ifPresent(id -> branch.put("line", id));
    branch.put("options", written(writer));
    branch.put("player", writer.apply(player));
    Map<String, Object> written = new LinkedHashMap<>();
    written.put(NAME, branch);
    written.put("others", writer.apply(others));
    written.put("seats", DesignJson.seats(seats));
    return written;
  }

  /** The options: a list where all are bare words, as studies have always had them. */
  private Object written(Function<PlayerSpec, Object> writer) {
    if (options.stream().allMatch(BranchChoice::isWord)) {
      return options.stream().map(BranchChoice::name).toList();
    }
    Map<String, Object> named = new LinkedHashMap<>();
    for (BranchChoice one : options) {
      named.put(
          one.name(),
          one.player().isPresent()
              ? writer.apply(one.player().get())
              : one.what().orElseThrow().text());
    }
    return named;
  }

  @Override
  public Optional<String> unfit(Card card) {
    List<String> ids = card.lines().stream().map(Line::id).toList();
    return line.filter(id -> !ids.contains(id))
        .map(id -> "the card has no line \"%s\"%s".formatted(id, Nearest.advice(id, ids)));
  }

  @Override
  public TallyPlan plan(int measures) {
    return new TallyPlan(1, 0, cells.count() * (options.size() - 1), measures, 0);
  }

  /** Refuses a study whose player knows nothing of an option. */
  @Override
  public void check() {
    BranchDeals.check(this);
  }

  @Override
  public DealPlayer deals(Study study, Tables tables) {
    return new BranchDeals(study, this, tables);
  }

  @Override
  public StudyGame game(long deal, String arm, Integer seat) {
    StudyGame.refuse(arm);
    return new StudyGame(StudyGame.seated(player, others, seat, seats), 0);
  }

  @Override
  public List<Way> ways(StudyTally tally) {
    return Way.of(List.of(new Arm("as it plays", player)), seats, tally);
  }

  @Override
  public List<Table> tables(StudyAnswer answer) {
    return List.of(BranchTable.of(answer.study(), this, answer.tally(), answer.certainty()));
  }
}
