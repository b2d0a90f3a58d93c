package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.words.Listed;

/** What a reading says first: three sentences to read out, and what they rest on. */
public final class ReadingWords {
  /** Safe tiles that a sentence names. */
  private static final int NAMED = 4;

  /** One tile away in this share of guesses, a player is one to watch. */
  private static final double CLOSE = 0.1;

  private static final Comparator<TileReading> SAFEST =
      Comparator.comparingDouble(TileReading::perThrow)
          .thenComparingDouble(TileReading::win)
          .thenComparingDouble(TileReading::claim)
          .thenComparingInt(TileReading::kind);

  private final Reading reading;
  private final OpponentWords opponents;
  private final SafetyWords safety;
  private final SeatNames seats;
  private final String players;

  /**
   * The words of a reading.
   *
   * @param reading what was seen
   * @param seats what the seats are called
   * @param players who is supposed to sit there, in words that follow "played by"
   */
  public ReadingWords(Reading reading, SeatNames seats, String players) {
    this.reading = reading;
    this.seats = seats;
    this.players = players;
    opponents = new OpponentWords(reading.view());
    safety = new SafetyWords(reading.view(), seats);
  }

  /**
   * What a teacher would say first: whom to watch, and why.
   *
   * @return a sentence
   */
  public String first() {
    OpponentReading one =
        reading.opponents().stream()
            .filter(each -> !each.lines().isEmpty() && !reading.view().dead(each.seat()))
            .max(
                Comparator.comparingInt((OpponentReading each) -> each.within(1))
                    .thenComparingInt(each -> each.within(2))
                    .thenComparingInt(each -> -each.seat()))
            .orElse(null);
    if (one == null) {
      return "None of the others can finish a hand any more.";
    }
    if (one.within(1) < CLOSE * one.guesses()) {
      return "Nobody looks close: %s, the nearest, %s."
          .formatted(seats.of(one.seat()), opponents.oneAway(one));
    }
    boolean closed = reading.view().exposures(one.seat()).isEmpty();
    String often =
        closed || one.linesLeft().size() == 1
            ? ""
            : ", most often " + opponents.line(one.lines().get(0).line());
    return "Watch %s: %s%s, %s she %s."
        .formatted(
            seats.of(one.seat()),
            opponents.shows(one),
            often,
            closed ? "but" : "and",
            opponents.oneAway(one));
  }

  /**
   * The tiles to hold and to throw.
   *
   * @return a sentence
   */
  public String tiles() {
    return worst() + "; " + best() + ".";
  }

  private String worst() {
    TileReading worst =
        reading.tiles().stream()
            .max(
                Comparator.comparingDouble(TileReading::win)
                    .thenComparingDouble(TileReading::claim)
                    .thenComparingInt(tile -> -tile.kind()))
            .orElseThrow();
    if (worst.win() < 0.01) {
      return "No tile of this rack gives the game away in as many as 1 of 100 guesses";
    }
    return "The tile of this rack to be most careful with is "
        + Tile.symbol(worst.kind())
        + ", which gives the game away "
        + In100.guesses(worst.win())
        + " and then costs "
        + points(worst);
  }

  private static String points(TileReading tile) {
    String mean = Words.count(Math.round(tile.pays()), "point", "points");
    return tile.least() == tile.most() ? mean : "about " + mean;
  }

  /** What the thrower pays where a tile gives the game away, for a table. */
  static String pays(TileReading tile) {
    String mean = Words.grouped(Math.round(tile.pays()));
    return tile.least() == tile.most()
        ? mean
        : mean + " (" + Words.grouped(tile.least()) + " to " + Words.grouped(tile.most()) + ")";
  }

  private String best() {
    Optional<String> sure = group(tile -> tile.shelters().nobodyTakes(), "nobody can take %s");
    Optional<String> noWin = group(tile -> tile.shelters().nobodyWins(), "nobody can win on %s");
    if (sure.isPresent() || noWin.isPresent()) {
      return sure.orElseGet(noWin::get) + ", whatever the others hold";
    }
    return fromThoseWhoShow()
        .or(() -> wentRound().map(words -> words + ", which is evidence but no proof"))
        .orElseGet(this::least);
  }

  private Optional<String> wentRound() {
    return group(tile -> tile.shelters().wentRound(), "nobody took the last %s thrown");
  }

  /** Tiles that nobody can take who shows an exposure. */
  private Optional<String> fromThoseWhoShow() {
    SeatView view = reading.view();
    List<String> who =
        reading.opponents().stream()
            .map(OpponentReading::seat)
            .filter(seat -> !view.exposures(seat).isEmpty())
            .sorted()
            .map(seats::of)
            .toList();
    return who.isEmpty()
        ? Optional.empty()
        : group(
            tile ->
                tile.shelters().where(Shelter::cannotTake).stream()
                    .map(seats::of)
                    .toList()
                    .containsAll(who),
            Listed.and(who) + " cannot take %s");
  }

  private Optional<String> group(Predicate<TileReading> which, String what) {
    List<TileReading> safest = new ArrayList<>(reading.tiles());
    safest.sort(SAFEST);
    safest.removeIf(tile -> tile.kind() == Tile.JOKER);
    List<String> kinds =
        safest.stream().filter(which).map(tile -> Tile.symbol(tile.kind())).toList();
    if (kinds.isEmpty()) {
      return Optional.empty();
    }
    boolean all = kinds.size() == safest.size() && kinds.size() > 1;
    String some = Listed.or(kinds.subList(0, Math.min(NAMED, kinds.size())));
    int more = kinds.size() - NAMED;
    String others = more > 0 ? " (or " + Words.count(more, "more kind", "more kinds") + ")" : "";
    return Optional.of(what.formatted(all ? "any tile of it" : some + others));
  }

  private String least() {
    TileReading best =
        reading.tiles().stream()
            .filter(tile -> tile.kind() != Tile.JOKER)
            .min(SAFEST)
            .orElse(reading.tiles().get(0));
    return Tile.symbol(best.kind())
        + " looks safest ("
        + In100.guesses(best.win())
        + "), though nothing proves it";
  }

  /**
   * What the answer rests on.
   *
   * @return a sentence
   */
  public String basis() {
    return "These are "
        + Words.grouped(reading.draws().guesses())
        + " guesses of the hidden tiles, with the others played by "
        + players
        + ": programmed players, points, and one card, not people or stakes.";
  }

  /**
   * What the numbers mean and do not mean.
   *
   * @return sentences, one to a paragraph
   */
  public List<String> methods() {
    int tried = reading.draws().tried();
    return List.of(
        "Each guess fills the other racks and the wall with tiles that this player cannot see, the way"
            + " players build hands. The doubt that matters is not the number of guesses but whether"
            + " they are right: strategies/CALIBRATION.md shows how far off chances read from play"
            + " have been.",
        "A tile gives the game away in a guess if somebody there may declare mahjong on it; that is"
            + " exact by the rules. The cost is what the thrower pays for that hand. Whether a tile"
            + " is claimed for an exposure is what "
            + players
            + " would do, asked in "
            + (tried == reading.draws().guesses()
                ? "every guess"
                : Words.grouped(tried) + " guesses")
            + ". All of it is the risk of a throw right now, for racks change with every draw; what the tile is worth to your hand is not weighed here, but by review.",
        "What is called a fact holds whatever the others hold, if the sheet is right. A tile that just"
            + " went around, or that a player threw herself, is evidence: racks change, and players"
            + " overlook things.");
  }

  OpponentWords opponents() {
    return opponents;
  }

  SafetyWords safety() {
    return safety;
  }
}
