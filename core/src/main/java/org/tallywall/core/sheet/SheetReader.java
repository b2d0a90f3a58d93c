package org.tallywall.core.sheet;

import java.util.List;
import java.util.Locale;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Seats;
import org.tallywall.core.sheet.SheetDraft.Thrown;
import org.tallywall.core.sheet.WordReader.Seen;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** Reads a sheet line by line; what the lines say together is checked afterwards. */
final class SheetReader {
  private static final List<String> LINES =
      List.of(
          "seat",
          "moment",
          "wall",
          "rack",
          "exposed",
          "discards",
          "unseen",
          "passed",
          "received",
          "blind",
          "plays",
          "scene",
          "players",
          "expect",
          "never",
          "because",
          "dead",
          "stopped",
          "courtesy",
          "exchanged",
          "lost");
  private static final List<String> SEVERAL =
      List.of(
          "exposed",
          "received",
          "passed",
          "blind",
          "plays",
          "expect",
          "never",
          "courtesy",
          "exchanged",
          "lost");
  private static final int MOST_WALL = 200;
  private static final int PASSED = 3;

  private final SheetDraft draft = new SheetDraft();
  private final Faults faults;

  private SheetReader(Faults faults) {
    this.faults = faults;
  }

  static SheetDraft read(String text, Faults faults) {
    SheetReader reader = new SheetReader(faults);
    SheetLine.of(text, faults).forEach(reader::line);
    return reader.draft;
  }

  private void line(SheetLine line) {
    WordReader words = new WordReader(line.name(), line.words(), faults);
    String name = words.oneOf(LINES, "the line");
    if (name == null) {
      return;
    }
    SheetLine.Word first = draft.names.putIfAbsent(name, line.name());
    if (first != null && !SEVERAL.contains(name)) {
      faults.fault(
          line.name().place(),
          String.format(
              Locale.ROOT,
              "\"%s\" is in line %d already; write it only once",
              name,
              first.place().line()));
      return;
    }
    take(name, line, words);
  }

  private void take(String name, SheetLine line, WordReader words) {
    switch (name) {
      case "seat" -> seat(words);
      case "moment" -> draft.moment = MomentReader.read(words, draft);
      case "wall" -> wall(words);
      case "rack" -> show(words.tiles("")).forEach(seen -> draft.rack.add(seen.kind()));
      case "exposed" -> exposed(words);
      case "discards" -> discards(words);
      case "unseen" -> show(words.tiles("")).forEach(seen -> draft.unseen[seen.kind()]++);
      case "passed" -> passed(words, true);
      case "received" -> passed(words, false);
      case "blind" -> blind(words);
      case "plays" -> plays(words);
      case "scene" -> draft.scene = line.text();
      case "players" -> line.rest().forEach(word -> draft.players.add(word.text()));
      case "expect" -> choice(line, draft.expect);
      case "never" -> choice(line, draft.never);
      case "because" -> draft.because = line.text();
      default -> HeardReader.read(name, words, draft.heard);
    }
  }

  private void seat(WordReader words) {
    draft.seat = words.seat();
    words.finish("one seat");
  }

  private void wall(WordReader words) {
    draft.wall = words.number(0, MOST_WALL, "the number of tiles left in the wall");
    words.finish("one number");
  }

  private List<Seen> show(List<Seen> tiles) {
    draft.shown.addAll(tiles);
    return tiles;
  }

  private void exposed(WordReader words) {
    int seat = words.seat();
    if (!words.more()) {
      words.fault("the exposures are missing; write each group as a word, as in 333cJ");
    }
    while (words.more()) {
      var place = words.place();
      Exposure exposure = words.exposure();
      if (exposure != null && seat != WordReader.NONE) {
        draft.exposures.get(seat).add(exposure);
        draft.exposurePlaces.get(seat).add(place);
        for (int tile = 0; tile < exposure.size(); tile++) {
          boolean natural = tile < exposure.naturals();
          draft.shown.add(new Seen(natural ? exposure.kind() : Tile.JOKER, place));
        }
      }
    }
  }

  private void discards(WordReader words) {
    if (!words.take("in")) {
      show(words.tiles(""))
          .forEach(seen -> draft.discards.add(new Thrown(seen.kind(), SheetDraft.NONE)));
      return;
    }
    if (!words.take("order")) {
      words.fault("write \"discards in order\", then each as seat and tile, as in 0:9d");
      return;
    }
    while (words.more()) {
      inOrder(words.word());
    }
  }

  private void inOrder(SheetLine.Word word) {
    int colon = word.text().indexOf(':');
    if (colon < 1) {
      faults.fault(
          word.place(),
          String.format(
              Locale.ROOT,
              "\"%s\": write who threw it, a colon and the tile, as in 0:9d",
              Shown.word(word.text())));
      return;
    }
    WordReader parts =
        new WordReader(
            word,
            List.of(
                new SheetLine.Word(word.text().substring(0, colon), word.place()),
                new SheetLine.Word(word.text().substring(colon + 1), word.place().plus(colon + 1))),
            faults);
    int seat = parts.seat();
    var place = parts.place();
    int tile = parts.tile("the tile");
    if (seat != WordReader.NONE && tile != WordReader.NONE) {
      draft.discards.add(new Thrown(tile, seat));
      draft.shown.add(new Seen(tile, place));
    }
  }

  private void passed(WordReader words, boolean given) {
    boolean courtesy = words.take("courtesy");
    PassStep step = courtesy ? null : words.step();
    var place = words.place();
    if (words.take("nothing")) {
      words.finish("either tiles or \"nothing\"");
    }
    List<Integer> tiles = words.tiles("").stream().map(Seen::kind).toList();
    if (tiles.size() > PASSED) {
      faults.fault(place, "a pass has three tiles at most, not " + tiles.size());
    } else if (courtesy || step != null) {
      SheetDraft.Passed passed = courtesy ? draft.courtesyPass() : draft.passed(step);
      (given ? passed.given : passed.received).addAll(tiles);
    }
  }

  private void blind(WordReader words) {
    int seat = words.seat();
    PassStep step = words.step();
    int number = words.number(0, PASSED, "how many went on blind");
    words.finish("seat, pass and number, as in 2 left-1 1");
    if (seat != WordReader.NONE && step != null) {
      draft.passed(step).blind[seat] = Math.max(0, number);
    }
  }

  private void plays(WordReader words) {
    int seat = words.seat();
    if (!words.more()) {
      words.fault("the player is missing; write its name");
    } else if (seat != WordReader.NONE && seat < Seats.COUNT) {
      draft.plays[seat] = words.next();
      words.finish("one player");
    }
  }

  private void choice(SheetLine line, List<ChoiceReader.Written> into) {
    ChoiceReader.Written written = ChoiceReader.read(line, faults);
    if (written != null) {
      into.add(written);
    }
  }
}
