package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.ContestTally;
import org.tallywall.experiments.tally.StudyTally;

/** Everyone against everyone: each deal is played four times, everybody once in each seat. */
final class RoundRobinDeals implements DealPlayer {
  private final List<Arm> players;
  private final RoundRobinTables seatings;
  private final Tables tables;

  RoundRobinDeals(RoundRobinDesign design, Tables tables) {
    this.players = design.players();
    this.seatings = new RoundRobinTables(players.size());
    this.tables = tables;
  }

  @Override
  public void play(long number, StudyTally into) {
    Deal deal = tables.deal(number);
    int table = seatings.of(number);
    List<Integer> four = seatings.players(table);
    int[] wins = new int[ContestTally.PLAYERS];
    for (int game = 0; game < ContestTally.GAMES; game++) {
      int[] seating = RoundRobinTables.seating(number, game);
      List<Integer> sitting = new ArrayList<>();
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        sitting.add(four.get(seating[seat]));
      }
      play(deal, sitting, number * ContestTally.GAMES + game, into);
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        wins[seating[seat]] += (int) tables.tally().seatGame(seat).value(Measure.WIN_RATE);
      }
    }
    four.forEach(player -> into.arm(player).endDeal());
    into.contests().get(table).addDeal(wins);
    into.endDeal(ContestTally.GAMES);
  }

  private void play(Deal deal, List<Integer> sitting, long game, StudyTally into) {
    tables.tally().countEach(sitting.stream().map(into::arm).toList());
    table(sitting).play(deal, new GamePlace(deal.number(), game, "", GamePlace.ALL));
  }

  private Tables.Table table(List<Integer> sitting) {
    return tables.table(sitting.stream().map(player -> players.get(player).player()).toList());
  }
}
