package org.tallywall.experiments.design.branch;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Plays each deal to the first decision of a studied seat that fits a square, then takes each
 * option there on the same hidden tiles and the same luck (Monte Carlo with common random numbers
 * at a branching point). Afterwards the player plays on as before.
 */
final class BranchDeals implements DealPlayer {
  private final Study study;
  private final BranchDesign design;
  private final Tables tables;
  private final List<Measure> measures;
  private final boolean alike;
  private final List<BranchPlayer> players = new ArrayList<>();
  private final List<Tables.Table> bySeat = new ArrayList<>();
  private final List<List<Option>> options = new ArrayList<>();
  private final TableTally unused;
  private int played;

  BranchDeals(Study study, BranchDesign design, Tables tables) {
    this.study = study;
    this.design = design;
    this.tables = tables;
    this.measures = study.question().measures();
    this.unused = new TableTally(tables.setup());
    this.alike = StudyJson.digest(design.player()).equals(StudyJson.digest(design.others()));
    for (int seat : design.seats()) {
      players.add(
          new BranchPlayer(
              tables.player(design.player(), seat), design.moment(), design.cells(), line()));
      options.add(design.options().stream().map(what -> Option.of(what, design.player())).toList());
    }
    for (int at = 0; at < players.size(); at++) {
      bySeat.add(alike && at > 0 ? bySeat.get(0) : table(at));
    }
  }

  private int line() {
    if (design.line().isEmpty()) {
      return -1;
    }
    ConcreteHands hands = tables.setup().hands();
    int at = 0;
    while (!hands.line(at).id().equals(design.line().get())) {
      at++;
    }
    return at;
  }

  /** Refuses a study whose player knows nothing of an option. */
  static void check(BranchDesign design) {
    design.options().forEach(what -> Option.of(what, design.player()));
  }

  private Tables.Table table(int studied) {
    List<Player> four = new ArrayList<>();
    List<Object> written = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int at = design.seats().indexOf(seat);
      boolean watched = alike ? at >= 0 : at == studied;
      PlayerSpec spec = watched ? design.player() : design.others();
      four.add(watched ? players.get(at) : tables.player(spec, seat));
      written.add(spec.written());
    }
    return tables.table(four, written);
  }

  @Override
  public void play(long number, StudyTally into) {
    Deal deal = tables.deal(number);
    played = 0;
    look(deal, into);
    into.arm(0).endDeal();
    Squares squares = new Squares(design, measures.size());
    tables.pause();
    for (int at = 0; at < players.size(); at++) {
      if (players.get(at).cell() != Cells.NONE) {
        branch(at, deal, squares);
      }
    }
    tables.goOn();
    squares.count(players.size(), into);
    into.endDeal(played);
  }

  private void look(Deal deal, StudyTally into) {
    for (int at = 0; at < (alike ? 1 : players.size()); at++) {
      int mask = 0;
      for (int other = 0; other < players.size(); other++) {
        if (alike || other == at) {
          players.get(other).look();
          mask |= 1 << design.seats().get(other);
        }
      }
      tables.tally().count(into.arm(0), mask);
      int games = alike ? 1 : players.size();
      int seat = alike && players.size() > 1 ? GamePlace.ALL : design.seats().get(at);
      bySeat.get(at).play(deal, new GamePlace(deal.number(), deal.number() * games + at, "", seat));
      played++;
    }
  }

  private void branch(int at, Deal deal, Squares squares) {
    int seat = design.seats().get(at);
    long[][] values = new long[design.options().size()][measures.size()];
    for (int option = 0; option < values.length; option++) {
      players.forEach(BranchPlayer::rest);
      players.get(at).take(options.get(at).get(option));
      tables.tally().count(unused, 1 << seat);
      bySeat.get(at).play(deal, new GamePlace(deal.number(), 0, "", seat));
      played++;
      for (int measure = 0; measure < measures.size(); measure++) {
        values[option][measure] = tables.tally().seatGame(seat).value(measures.get(measure));
      }
    }
    squares.add(players.get(at), values);
  }
}
