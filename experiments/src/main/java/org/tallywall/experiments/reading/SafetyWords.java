package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.reports.words.Listed;

/** What makes a tile safe, in words: facts apart from evidence. */
final class SafetyWords {
  private final SeatView view;
  private final SeatNames seats;

  /**
   * The words in one position.
   *
   * @param view what the seat knows that looks
   * @param seats what the seats are called
   */
  SafetyWords(SeatView view, SeatNames seats) {
    this.view = view;
    this.seats = seats;
  }

  /** A word or two for a table; empty where nothing makes the tile safe. */
  String inShort(TileReading tile) {
    Shelters shelters = tile.shelters();
    if (shelters.nobodyTakes()) {
      return "nobody can take it";
    } else if (shelters.nobodyWins()) {
      return "nobody can win on it";
    }
    return shelters.wentRound() ? "just went around" : "";
  }

  /** All facts about a tile, a sentence each without its end; empty where there is none. */
  List<String> facts(TileReading tile) {
    Shelters shelters = tile.shelters();
    if (holds(shelters, Proof.JOKER)) {
      return List.of("a discarded joker cannot be claimed");
    } else if (holds(shelters, Proof.NOT_ON_CARD)) {
      return List.of("no line of this card has it");
    }
    List<String> facts = new ArrayList<>();
    add(
        facts,
        shelters,
        one -> one.fromWin() == Proof.DEAD_HAND,
        who -> who + " cannot take it: a dead hand takes nothing");
    add(facts, shelters, one -> one.fromWin() == Proof.NOT_HERS, this::notHers);
    Set<List<Integer>> reasons = new LinkedHashSet<>();
    shelters.from().forEach(one -> reasons.add(one.outOf()));
    for (List<Integer> outOf : reasons) {
      Predicate<Shelter> same = one -> one.fromWin() == Proof.OUT && one.outOf().equals(outOf);
      String why = ": " + out(tile.kind(), outOf);
      add(facts, shelters, same.and(Shelter::cannotTake), who -> who + " cannot take it" + why);
      add(
          facts,
          shelters,
          same.and(one -> !one.cannotTake()),
          who -> who + " cannot win on it" + why);
    }
    return facts;
  }

  /** What speaks for a tile and proves nothing; empty where there is nothing. */
  List<String> evidence(TileReading tile) {
    Shelters shelters = tile.shelters();
    if (shelters.nobodyTakes()) {
      return List.of();
    }
    List<String> evidence = new ArrayList<>();
    add(
        evidence,
        shelters,
        one -> one.wentBy() && !one.cannotTake(),
        who -> who + " threw one or let one go by with the rack held now");
    add(
        evidence,
        shelters,
        one -> one.threw() && !one.wentBy() && !one.cannotTake(),
        who -> who + " threw one earlier");
    return evidence;
  }

  private static boolean holds(Shelters shelters, Proof proof) {
    return shelters.from().stream()
            .allMatch(one -> one.fromWin() == proof || one.fromWin() == Proof.DEAD_HAND)
        && shelters.from().stream().anyMatch(one -> one.fromWin() == proof);
  }

  private void add(
      List<String> into, Shelters shelters, Predicate<Shelter> what, UnaryOperator<String> words) {
    List<Integer> who = shelters.where(what);
    if (!who.isEmpty()) {
      boolean all = who.size() == Seats.COUNT - 1 && shelters.seats().size() == who.size();
      List<String> names = who.stream().sorted().map(seats::of).toList();
      into.add(words.apply(all ? "each of the others" : Listed.and(names)));
    }
  }

  private String notHers(String who) {
    return who + " cannot take it: no hand left by her exposures needs it";
  }

  private String out(int kind, List<Integer> outOf) {
    if (outOf.isEmpty()) {
      return "the hands left that need it cannot be finished with the tiles out of view";
    } else if (outOf.contains(kind)) {
      return view.unseen(kind) == 0
          ? "all other %s are in view, and no hand left needs just the last one"
              .formatted(Tile.symbol(kind))
          : inView(kind) + ", too many for the hands left that need it";
    }
    return "each hand left that needs it also needs %s, and %s"
        .formatted(
            Listed.or(outOf.stream().map(Tile::symbol).toList()),
            Listed.and(outOf.stream().map(this::inView).toList()));
  }

  private String inView(int kind) {
    int copies = view.table().rules().tiles().copies(kind);
    int seen = copies - view.unseen(kind);
    String counted = seen == copies ? "all " + copies : seen + " of the " + copies;
    return counted + " " + Tile.symbol(kind) + " are in view";
  }
}
