package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.Seats;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.review.Seated;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Who is asked in a review, and who plays on.
 *
 * @param named the players that the command line may name
 * @param inFiles those that a file may name
 * @param card the card
 */
record ReviewPlayers(Catalog named, Catalog inFiles, Card card) {
  private static final String USUAL = "watchful";
  private static final int MOST_TABLES = 12;

  /** Who is asked; no one who sees all tiles. */
  PlayerSpec asked(String word) {
    return fair(PlayerWord.read(word, named, inFiles, card));
  }

  private static PlayerSpec fair(PlayerSpec spec) {
    return HiddenTiles.refuseWhoSees(spec, "name another player");
  }

  /** The tables at which a position is reviewed; what the sheet says of a seat goes before. */
  List<List<Seated>> tables(String players, String among, PositionSheet sheet) {
    List<List<Seated>> tables = new ArrayList<>();
    if (among == null) {
      tables.add(table(players));
    } else {
      List<String> words = words(among);
      if (words.size() < 2 || words.size() > MOST_TABLES) {
        throw new WrongInputException(
            "--among takes 2 to 12 names with commas between, not " + words.size());
      }
      words.forEach(word -> tables.add(seated(Collections.nCopies(Seats.COUNT, word))));
    }
    tables.forEach(table -> seatBySheet(table, sheet));
    return tables;
  }

  /** The table that {@code --players} names. */
  List<Seated> table(String players) {
    return seated(four(players));
  }

  /** The same players as a study would write them. */
  List<Object> written(String players) {
    return four(players).stream()
        .map(word -> fair(PlayerWord.read(word, named, inFiles, card)).written())
        .toList();
  }

  private static List<String> four(String players) {
    List<String> words = words(players == null ? USUAL : players);
    if (words.size() != 1 && words.size() != Seats.COUNT) {
      throw new WrongInputException(
          "--players takes one name, or four with commas between, not " + words.size());
    }
    return words.size() == 1 ? Collections.nCopies(Seats.COUNT, words.get(0)) : words;
  }

  private static List<String> words(String typed) {
    List<String> words = new ArrayList<>();
    for (String word : typed.split(",", -1)) {
      if (word.isBlank()) {
        throw new WrongInputException(
            "\"" + Shown.word(typed) + "\": a player's name is missing between the commas");
      }
      words.add(word.strip());
    }
    return words;
  }

  private List<Seated> seated(List<String> words) {
    List<Seated> table = new ArrayList<>();
    for (String word : words) {
      table.add(seated(word, fair(PlayerWord.read(word, named, inFiles, card))));
    }
    return table;
  }

  private void seatBySheet(List<Seated> table, PositionSheet sheet) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      String word = sheet.plays().get(seat);
      if (word != null) {
        table.set(seat, seated(word, fair(PlayerWord.read(word, inFiles, inFiles, card))));
      }
    }
  }

  /** A file of settings is named as it was typed, for its player's name would say too little. */
  static Seated seated(String word, PlayerSpec spec) {
    return new Seated(
        word.endsWith(".json") ? Shown.word(word) : spec.type().id(), spec.type().id(), spec::make);
  }
}
