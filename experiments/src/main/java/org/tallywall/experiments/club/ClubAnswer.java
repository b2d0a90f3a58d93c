package org.tallywall.experiments.club;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Which table is most like a club's, and how far the club's tally can tell. */
public final class ClubAnswer {
  private final ClubTally tally;
  private final List<Standing> standings;
  private final double chanceOfAsFar;
  private final double apart;
  private final OptionalInt needed;

  /**
   * A table beside the club's tally.
   *
   * @param kind who plays there, four of a kind
   * @param cells its games
   * @param share how likely it is that the club is such a table, were it one of those tried and
   *     each as likely as the next before; 0 to 1
   * @param right of {@link Telling#TALLIES} tallies of this table, how many are said to be its own
   */
  record Standing(String kind, GameCells cells, double share, int right) {}

  private ClubAnswer(
      ClubTally tally,
      List<Standing> standings,
      double chanceOfAsFar,
      double apart,
      OptionalInt needed) {
    this.tally = tally;
    this.standings = standings;
    this.chanceOfAsFar = chanceOfAsFar;
    this.apart = apart;
    this.needed = needed;
  }

  /**
   * Plays and compares.
   *
   * @param tally what the club counted
   * @param kinds the players to try by what they are called, two or more, each a table of four; in
   *     the order in which they are played
   * @param play plays their games
   * @param seed of the tallies that tables fill themselves
   * @param heard is told of each table before it plays
   * @return the answer
   */
  public static ClubAnswer of(
      ClubTally tally,
      LinkedHashMap<String, PlayerSpec> kinds,
      TablePlay play,
      long seed,
      Consumer<String> heard) {
    List<String> names = new ArrayList<>();
    List<GameCells> tables = new ArrayList<>();
    kinds.forEach(
        (name, kind) -> {
          heard.accept(name);
          names.add(name);
          tables.add(play.play(kind));
        });
    return of(tally, names, tables, seed);
  }

  /** Compares tables that were played. */
  static ClubAnswer of(ClubTally tally, List<String> names, List<GameCells> tables, long seed) {
    long[][] boxes = tally.boxes();
    Telling telling = new Telling(tables, tally, seed);
    double[] logs =
        tables.stream().mapToDouble(table -> Likelihood.log(boxes, table.boxes())).toArray();
    double[] shares = Likelihood.shares(logs);
    List<Integer> order =
        IntStream.range(0, names.size())
            .boxed()
            .sorted(Comparator.comparingDouble(at -> -logs[at]))
            .toList();
    List<Standing> standings = new ArrayList<>();
    for (int at : order) {
      standings.add(new Standing(names.get(at), tables.get(at), shares[at], telling.right(at)));
    }
    int best = order.get(0);
    int next = order.get(1);
    return new ClubAnswer(
        tally,
        List.copyOf(standings),
        telling.chanceOfAsFar(best, boxes),
        telling.apart(best, next, 1),
        telling.gamesNeeded(best, next));
  }

  ClubTally tally() {
    return tally;
  }

  /** The tables, the most like first. */
  List<Standing> standings() {
    return standings;
  }

  Standing best() {
    return standings.get(0);
  }

  Standing next() {
    return standings.get(1);
  }

  /** The chance that a table like the best one gives a tally at least as far from it. */
  double chanceOfAsFar() {
    return chanceOfAsFar;
  }

  /** The share of tallies of this size by which the best and the next are told apart. */
  double apart() {
    return apart;
  }

  /**
   * The games that it takes to tell these two apart; empty where even as many as were played are
   * too few.
   */
  OptionalInt needed() {
    return needed;
  }
}
