package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tallywall.core.sheet.SheetLine.Word;
import org.tallywall.core.sheet.WordReader.Seen;
import org.tallywall.core.text.Faults;

/** Reads the choices of a sheet. */
final class ChoiceReader {
  private static final int PASSED = 3;
  private static final int SMALLEST = 3;
  private static final int LARGEST = 6;
  private static final String THEN = "then";
  private static final List<String> VERBS =
      List.of(
          "pass", "stop", "go", "courtesy", "nothing", "claim", "mahjong", "exchange", "discard");

  /** Other words that are spoken at a table; a choice is shown with those of the sheet. */
  private static final Map<String, String> SPOKEN =
      Map.of("throw", "discard", "call", "claim", "redeem", "exchange");

  private final WordReader words;
  private final Faults faults;

  private ChoiceReader(WordReader words, Faults faults) {
    this.words = words;
    this.faults = faults;
  }

  /** A choice with the place of its line. */
  record Written(Choice choice, List<MovePattern> moves, Word line) {}

  /** Reads what stands behind {@code expect} or {@code never}; null where it has a fault. */
  static Written read(SheetLine line, Faults faults) {
    int before = faults.findings();
    List<Word> rest = inWordsOfTheSheet(line.rest());
    List<MovePattern> moves =
        new ChoiceReader(new WordReader(line.name(), rest, faults), faults).moves();
    return faults.findings() > before
        ? null
        : new Written(new Choice(SheetLine.text(rest), moves), moves, line.name());
  }

  private static List<Word> inWordsOfTheSheet(List<Word> typed) {
    List<Word> words = new ArrayList<>();
    boolean verb = true;
    for (Word word : typed) {
      String small = word.text().toLowerCase(Locale.ROOT);
      words.add(verb ? new Word(SPOKEN.getOrDefault(small, word.text()), word.place()) : word);
      verb = small.equals(THEN);
    }
    return words;
  }

  private List<MovePattern> moves() {
    List<MovePattern> moves = new ArrayList<>();
    do {
      int before = faults.findings();
      moves.add(move());
      if (faults.findings() > before) {
        return moves;
      }
    } while (words.take(THEN));
    words.finish("\"then\" before a further move, or a line of its own");
    return moves;
  }

  private MovePattern move() {
    String verb = words.oneOf(VERBS, "the choice");
    if (verb == null) {
      return null;
    }
    return switch (verb) {
      case "pass" -> pass();
      case "stop" -> new MovePattern.Exactly(new Move.Stop(true));
      case "go" -> goOn();
      case "courtesy" ->
          new MovePattern.Exactly(
              new Move.Courtesy(words.number(0, PASSED, "how many are offered across")));
      case "nothing" -> new MovePattern.Exactly(new Move.Nothing());
      case "claim" -> claim();
      case "mahjong" -> new MovePattern.Exactly(new Move.Mahjong());
      case "exchange" -> exchange();
      default -> discard();
    };
  }

  private MovePattern goOn() {
    if (!words.take("on")) {
      words.fault("write \"go on\"");
    }
    return new MovePattern.Exactly(new Move.Stop(false));
  }

  private MovePattern pass() {
    if (words.take("with")) {
      if (!words.take("any")) {
        words.fault("write \"pass with any\" and the tiles");
        return null;
      }
      return new MovePattern.PassWithAny(someTiles());
    }
    List<Integer> tiles = kinds(words.tiles("blind"));
    int blind = words.take("blind") ? words.number(0, PASSED, "how many go on blind") : 0;
    return new MovePattern.Pass(new Move.Pass(tiles, blind));
  }

  private MovePattern claim() {
    if (words.take("*")) {
      return new MovePattern.Claim(MovePattern.ANY, MovePattern.ANY);
    }
    int size = words.number(SMALLEST, LARGEST, "the size of the exposure");
    int jokers =
        words.take("jokers")
            ? words.number(0, size - 1, "the number of jokers in it")
            : MovePattern.ANY;
    return new MovePattern.Claim(size, jokers);
  }

  private MovePattern exchange() {
    if (words.take("*")) {
      return new MovePattern.Exchange(MovePattern.ANY, MovePattern.ANY);
    }
    int tile = words.tile("the tile that is given");
    return new MovePattern.Exchange(tile, words.take("seat") ? words.seat() : MovePattern.ANY);
  }

  private MovePattern discard() {
    if (words.take("*")) {
      return new MovePattern.AnyDiscard();
    }
    if (words.take("any")) {
      return new MovePattern.Discard(someTiles());
    }
    return new MovePattern.Discard(List.of(words.tile("the tile that is thrown")));
  }

  private List<Integer> someTiles() {
    if (!words.more()) {
      words.fault("write at least one tile after \"any\"");
    }
    return kinds(words.tiles(THEN));
  }

  private List<Integer> kinds(List<Seen> tiles) {
    return tiles.stream().map(Seen::kind).toList();
  }
}
