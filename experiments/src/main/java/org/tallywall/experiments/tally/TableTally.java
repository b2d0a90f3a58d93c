package org.tallywall.experiments.tally;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;

/**
 * Everything that is counted over the games of one way of playing. A deal may hold several of its
 * games, and in each game one seat or more is counted. Whole numbers only, so tallies of parts of a
 * run may be added in any order.
 */
public final class TableTally {
  private final CardFamilies families;
  private final SeatTally[] seats = new SeatTally[Seats.COUNT];
  private final SeatTally all = new SeatTally();
  private final List<AimTally> lines = new ArrayList<>();
  private final List<AimTally> byFamily = new ArrayList<>();
  private final EndTally ends;
  private final PassTally passes = new PassTally();
  private long games;
  private long deals;
  private long winsInDeal;
  private long pointsInDeal;

  /**
   * No games yet.
   *
   * @param setup the card and the rules
   */
  public TableTally(TableSetup setup) {
    ConcreteHands hands = setup.hands();
    this.families = new CardFamilies(hands);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      seats[seat] = new SeatTally();
    }
    for (int line = 0; line < hands.lines(); line++) {
      lines.add(new AimTally());
    }
    for (int family = 0; family < families.count(); family++) {
      byFamily.add(new AimTally());
    }
    this.ends = new EndTally(setup.rules().tiles().size() - Deal.DEALT);
  }

  /** Carries all numbers out or in, between two deals. */
  void carry(Carrier carrier) {
    for (SeatTally seat : seats) {
      seat.carry(carrier);
    }
    all.carry(carrier);
    lines.forEach(line -> line.carry(carrier));
    byFamily.forEach(family -> family.carry(carrier));
    ends.carry(carrier);
    passes.carry(carrier);
    games = carrier.carry(games);
    deals = carrier.carry(deals);
  }

  /**
   * Adds the games of another tally.
   *
   * @param other a tally of the same card and rules
   */
  public void add(TableTally other) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      seats[seat].add(other.seats[seat]);
    }
    all.add(other.all);
    for (int line = 0; line < lines.size(); line++) {
      lines.get(line).add(other.lines.get(line));
    }
    for (int family = 0; family < byFamily.size(); family++) {
      byFamily.get(family).add(other.byFamily.get(family));
    }
    ends.add(other.ends);
    passes.add(other.passes);
    games += other.games;
    deals += other.deals;
  }

  /** Counts a game whose seats won so much together. */
  void endGame(long wins, long points) {
    winsInDeal += wins;
    pointsInDeal += points;
    games++;
  }

  /** Ends a deal: all of its games have been counted. */
  public void endDeal() {
    all.wins().add(winsInDeal);
    all.points().add(pointsInDeal);
    winsInDeal = 0;
    pointsInDeal = 0;
    lines.forEach(AimTally::endDeal);
    byFamily.forEach(AimTally::endDeal);
    deals++;
  }

  /**
   * Deals played.
   *
   * @return how many
   */
  public long deals() {
    return deals;
  }

  /**
   * Games played; one that is counted for several seats is one game.
   *
   * @return how many
   */
  public long games() {
    return games;
  }

  /**
   * One seat.
   *
   * @param seat 0 to 3
   * @return its tally, live
   */
  public SeatTally seat(int seat) {
    return seats[seat];
  }

  /**
   * All four seats together; its numbers a deal are sums over the seats.
   *
   * @return their tally, live
   */
  public SeatTally all() {
    return all;
  }

  /**
   * One line of the card.
   *
   * @param line its place on the card
   * @return its tally, live
   */
  public AimTally line(int line) {
    return lines.get(line);
  }

  /**
   * The families of the card.
   *
   * @return their names and lines
   */
  public CardFamilies families() {
    return families;
  }

  /**
   * One family of the card.
   *
   * @param family its place on the card
   * @return its tally, live
   */
  public AimTally family(int family) {
    return byFamily.get(family);
  }

  /**
   * How games ended.
   *
   * @return the tally, live
   */
  public EndTally ends() {
    return ends;
  }

  /**
   * The Charleston.
   *
   * @return the tally, live
   */
  public PassTally passes() {
    return passes;
  }
}
