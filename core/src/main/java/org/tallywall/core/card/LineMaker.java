package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** Checks a typed line and makes the line of it; every fault is noted at its place. */
final class LineMaker {
  private final LineDraft draft;
  private final CardRoom room;
  private final Faults faults;
  private final List<HandPattern> patterns = new ArrayList<>();
  private final Set<ConcreteHand> hands = new LinkedHashSet<>();
  private long ways;

  private LineMaker(LineDraft draft, CardRoom room, Faults faults) {
    this.draft = draft;
    this.room = room;
    this.faults = faults;
  }

  /**
   * Makes a line.
   *
   * @param draft the line as typed, its id filled in
   * @param room what the card has room for beside the lines before
   * @param faults takes the faults
   * @return the line, or null where it has a fault
   */
  static Line make(LineDraft draft, CardRoom room, Faults faults) {
    int before = faults.findings();
    Line line = new LineMaker(draft, room, faults).line();
    return faults.findings() == before ? line : null;
  }

  private Line line() {
    Slide slide = slide();
    SuitChoice suits = suits();
    Where where = where();
    if (draft.tiles.isEmpty()) {
      return null;
    }
    boolean all = true;
    for (int at = 0; all && at < draft.tiles.size(); at++) {
      all = alternative(draft.tiles.get(at), slide, where, suits);
    }
    if (!all) {
      return null;
    }
    checkLetters(where);
    checkSlide(slide);
    checkOrOne(suits);
    List<ConcreteHand> makeable =
        hands.stream().filter(hand -> hand.canBeMade(TileSet.USUAL, draft.jokers)).toList();
    if (makeable.isEmpty() && !hands.isEmpty()) {
      faults.fault(draft.tiles.get(0).place(), draft.id, whyNot(hands.iterator().next()));
    }
    Crowded.of(makeable)
        .ifPresent(odd -> faults.warn(draft.tiles.get(0).place(), draft.id, odd.text()));
    boolean large = patterns.stream().anyMatch(HandPattern::hasLargeGroup);
    boolean jokerless = draft.jokerless == null ? large : draft.jokerless;
    List<String> tiles =
        draft.tiles.stream().map(typed -> typed.text().strip().replaceAll("\\s+", " ")).toList();
    return new Line(
        draft.id,
        draft.family,
        draft.say,
        new Printed(tiles, slide, where, suits),
        new Terms((int) draft.value, draft.concealed, draft.jokers, jokerless),
        patterns,
        makeable);
  }

  /** Reads one of the hands printed; false where there is no room for it and those behind it. */
  private boolean alternative(Typed typed, Slide slide, Where where, SuitChoice suits) {
    List<HandPattern> read;
    try {
      read = PatternText.read(typed.text());
    } catch (NotationException wrong) {
      faults.fault(typed.place().plus(wrong.position() - 1), draft.id, wrong.getMessage());
      return true;
    }
    long more = 0;
    for (HandPattern pattern : read) {
      String fault = fault(pattern, slide);
      if (fault != null) {
        faults.fault(typed.place(), draft.id, "\"" + Shown.word(typed.text()) + "\": " + fault);
        return true;
      }
      more += Expansion.ways(pattern, slide, where, suits);
    }
    ways += more;
    String full = full(patterns.size() + read.size(), room.forWays(more));
    if (full != null) {
      faults.fault(typed.place(), draft.id, full);
      return false;
    }
    for (HandPattern pattern : read) {
      hands.addAll(Expansion.of(pattern, slide, where, suits));
    }
    patterns.addAll(read);
    return true;
  }

  /** Which bound the line or the card would go beyond, or null. */
  private String full(int printed, boolean inCard) {
    if (printed > CardLimits.MOST_PATTERNS) {
      return "a line prints at most "
          + CardLimits.MOST_PATTERNS
          + " hands, each choice of its brackets counted; split the line";
    } else if (ways > CardLimits.MOST_WAYS_OF_LINE) {
      return "more than "
          + CardLimits.MOST_WAYS_OF_LINE
          + " ways to make this line, the most that a line may have; use where or split the line";
    }
    return inCard
        ? null
        : "with this line there are more than "
            + CardLimits.MOST_WAYS_OF_CARD
            + " ways to make the lines of the card, the most that a card may have; use where, or"
            + " take lines out";
  }

  private static String fault(HandPattern pattern, Slide slide) {
    if (pattern.tiles() != 14) {
      return pattern.tiles() == 1
          ? "this is 1 tile; a hand has 14"
          : String.format(Locale.ROOT, "these are %d tiles; a hand has 14", pattern.tiles());
    }
    int left = 3 - pattern.writtenSuits().length();
    if (pattern.openSuits().length() > left) {
      return String.format(
          Locale.ROOT,
          pattern.openSuits().length() == 1
              ? "the letter %s stands for a suit of its own, but %s left for it"
              : "the letters %s stand for suits of their own, but %s left for them",
          String.join(" ", pattern.openSuits().split("")),
          left == 0
              ? "no suit is"
              : left == 1 ? "only one suit is" : "only " + left + " suits are");
    }
    if (slide != Slide.NONE && pattern.digits().length == 0) {
      return String.format(
          Locale.ROOT, "slide \"%s\" has no digit to move; leave the field out", slide.text());
    }
    return null;
  }

  private void checkLetters(Where where) {
    for (char letter : where.letters().toCharArray()) {
      boolean used = patterns.stream().anyMatch(p -> p.numberLetters().indexOf(letter) >= 0);
      if (!used && !patterns.isEmpty()) {
        faults.fault(
            draft.where.place(),
            draft.id,
            String.format(
                    Locale.ROOT,
                    "where names the letter %s, which the hand does not have; take it out or write it in",
                    letter)
                + " the tiles");
      }
    }
  }

  private void checkSlide(Slide slide) {
    boolean still = patterns.stream().anyMatch(p -> Expansion.shifts(p, slide).size() == 1);
    if (slide != Slide.NONE && still) {
      faults.warn(
          draft.slide.place(),
          draft.id,
          String.format(
              Locale.ROOT,
              "slide \"%s\" changes nothing: the digits can only stay where they are",
              slide.text()));
    }
  }

  private void checkOrOne(SuitChoice suits) {
    boolean useless = patterns.stream().allMatch(pattern -> pattern.openSuits().length() < 2);
    if (suits == SuitChoice.OR_ONE && useless && !patterns.isEmpty()) {
      faults.warn(
          draft.suits.place(),
          draft.id,
          "suits \"or one\" changes nothing: the hand has fewer than two suit letters");
    }
  }

  private String whyNot(ConcreteHand hand) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int copies = TileSet.USUAL.copies(kind);
      if (hand.loose(kind) > copies) {
        return String.format(
            Locale.ROOT,
            "no hand of this line can be made: %s needs %d of %s in singles and pairs, and there are only %d",
            hand,
            hand.loose(kind),
            Tile.symbol(kind),
            copies);
      }
    }
    int jokers = hand.jokersNeeded(TileSet.USUAL);
    return String.format(
        Locale.ROOT,
        "no hand of this line can be made: %s needs %s, %s",
        hand,
        jokers == 1 ? "a joker" : jokers + " jokers",
        draft.jokers
            ? "and there are only " + TileSet.USUAL.jokers()
            : "but the line forbids jokers");
  }

  private Slide slide() {
    for (Slide slide : Slide.values()) {
      if (slide.text().equals(draft.slide.text())) {
        return slide;
      }
    }
    unknown(draft.slide, "slide", Arrays.stream(Slide.values()).map(Slide::text).toList());
    return Slide.NONE;
  }

  private SuitChoice suits() {
    for (SuitChoice choice : SuitChoice.values()) {
      if (choice.text().equals(draft.suits.text())) {
        return choice;
      }
    }
    unknown(
        draft.suits, "suits", Arrays.stream(SuitChoice.values()).map(SuitChoice::text).toList());
    return SuitChoice.AS_WRITTEN;
  }

  private void unknown(Typed typed, String field, List<String> known) {
    faults.fault(
        typed.place(),
        draft.id,
        String.format(
            Locale.ROOT,
            "%s \"%s\" is unknown; write one of %s%s",
            field,
            Shown.word(typed.text()),
            String.join(", ", known),
            Nearest.hint(typed.text(), known)));
  }

  private Where where() {
    try {
      return Where.read(draft.where.text());
    } catch (NotationException wrong) {
      Place place = draft.where.place().plus(wrong.position() - 1);
      faults.fault(place, draft.id, "where: " + wrong.getMessage());
      return Where.FREE;
    }
  }
}
