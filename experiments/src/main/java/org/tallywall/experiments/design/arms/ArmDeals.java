package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.deals.Course;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Several ways of playing on the same deals. Each sits at each studied seat of a deal, the others
 * in the other seats. A way that is the others' own has one and the same game in all seats: it is
 * played once and read at every seat.
 */
final class ArmDeals implements DealPlayer {
  private final Study study;
  private final ArmsDesign design;
  private final Tables tables;
  private final List<Measure> measures;
  private final List<List<Tables.Table>> byArm = new ArrayList<>();
  private final ArmGame[][] games;
  private final Habits habits;
  private int played;
  private long running;

  ArmDeals(Study study, ArmsDesign design, Tables tables) {
    this.study = study;
    this.design = design;
    this.tables = tables;
    this.measures = study.question().measures();
    for (Arm arm : design.arms()) {
      byArm.add(tables(arm.player()));
    }
    this.games = new ArmGame[design.arms().size()][design.seats().size()];
    this.habits = new Habits(measures.size());
  }

  private List<Tables.Table> tables(PlayerSpec player) {
    if (isOthers(design, player)) {
      return List.of(tables.table(Collections.nCopies(Seats.COUNT, design.others())));
    }
    List<Tables.Table> bySeat = new ArrayList<>();
    for (int seat : design.seats()) {
      List<PlayerSpec> four = new ArrayList<>(Collections.nCopies(Seats.COUNT, design.others()));
      four.set(seat, player);
      bySeat.add(tables.table(four));
    }
    return bySeat;
  }

  /** Whether a way of playing is the others' own. */
  static boolean isOthers(ArmsDesign design, PlayerSpec player) {
    return StudyJson.digest(player).equals(StudyJson.digest(design.others()));
  }

  /** Games on each deal. */
  static int gamesPerDeal(ArmsDesign design) {
    int games = 0;
    for (Arm arm : design.arms()) {
      games += isOthers(design, arm.player()) ? 1 : design.seats().size();
    }
    return games;
  }

  @Override
  public void play(long number, StudyTally into) {
    Deal deal = tables.deal(number);
    played = 0;
    running = number * gamesPerDeal(design);
    for (int arm = 0; arm < design.arms().size(); arm++) {
      Deal own = design.streams() == Streams.OWN ? deal.withLuck(arm) : deal;
      if (byArm.get(arm).size() == 1 && design.seats().size() > 1) {
        playForAll(arm, own, into);
      } else {
        playBySeat(arm, own, into);
      }
      into.arm(arm).endDeal();
    }
    compare(into);
    into.endDeal(played);
  }

  private void playForAll(int arm, Deal deal, StudyTally into) {
    int mask = 0;
    for (int seat : design.seats()) {
      mask |= 1 << seat;
    }
    tables.tally().count(into.arm(arm), mask);
    byArm.get(arm).get(0).play(deal, place(arm, deal, GamePlace.ALL));
    Course course = tables.course();
    for (int at = 0; at < games[arm].length; at++) {
      games[arm][at] = game(design.seats().get(at), course);
    }
  }

  private void playBySeat(int arm, Deal deal, StudyTally into) {
    for (int at = 0; at < games[arm].length; at++) {
      int seat = design.seats().get(at);
      tables.tally().count(into.arm(arm), 1 << seat);
      Tables.Table table = byArm.get(arm).get(byArm.get(arm).size() == 1 ? 0 : at);
      table.play(deal, place(arm, deal, seat));
      games[arm][at] = game(seat, tables.course());
    }
  }

  private GamePlace place(int arm, Deal deal, int seat) {
    played++;
    return new GamePlace(deal.number(), running++, design.arms().get(arm).name(), seat);
  }

  private ArmGame game(int seat, Course course) {
    return ArmGame.of(tables.tally().seatGame(seat), measures, course, tables.stances(), seat);
  }

  private void compare(StudyTally into) {
    int pair = 0;
    ArmGame[] baseline = games[design.baseline()];
    for (int arm = 0; arm < games.length; arm++) {
      if (arm != design.baseline()) {
        for (int measure = 0; measure < measures.size(); measure++) {
          into.pair(pair, measure).addDeal(values(games[arm], measure), values(baseline, measure));
        }
        habits.compare(pair, games[arm], baseline, into);
        pair++;
      }
    }
  }

  private static long[] values(ArmGame[] seats, int measure) {
    long[] values = new long[seats.length];
    for (int at = 0; at < seats.length; at++) {
      values[at] = seats[at].values()[measure];
    }
    return values;
  }
}
