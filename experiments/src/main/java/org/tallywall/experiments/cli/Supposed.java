package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.jar.JarTrust;

/** Who is supposed to sit at the table of a position. */
final class Supposed {
  private Supposed() {}

  /**
   * Reads who sits where.
   *
   * @param words one name for all seats, or four with commas between, East's first
   * @param sheet the position; a seat of which it says who plays there is that player's
   * @param roster the players that are known
   * @param trust of jars that the sheet names
   * @param card the card
   * @return four players, East's first
   */
  static List<PlayerSpec> read(
      String words, PositionSheet sheet, Roster roster, Trust trust, Card card) {
    List<String> names = Arrays.stream(words.split(",", -1)).map(String::strip).toList();
    if (names.size() == 1) {
      names = Collections.nCopies(Seats.COUNT, names.get(0));
    } else if (names.size() != Seats.COUNT) {
      throw new WrongInputException(
          "--players takes one player for all seats, or four with commas between, East first; not"
              + " \""
              + Shown.word(words)
              + "\"");
    }
    Catalog typed = roster.catalog(JarTrust.ALL);
    Catalog inFiles = roster.catalog(trust.named());
    List<PlayerSpec> four = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      String onSheet = sheet.plays().get(seat);
      four.add(
          blind(
              onSheet == null
                  ? PlayerWord.read(names.get(seat), typed, inFiles, card)
                  : PlayerWord.read(onSheet, inFiles, inFiles, card)));
    }
    return four;
  }

  private static PlayerSpec blind(PlayerSpec spec) {
    if (spec.make() instanceof SeesOpenTable) {
      throw new WrongInputException(
          "\"%s\" sees all racks and the wall, which no sheet shows; name another player"
              .formatted(spec.type().id()));
    }
    return spec;
  }

  /** The four in words: one name where all are alike, else each with its seat. */
  static String inWords(List<PlayerSpec> four) {
    List<String> names = four.stream().map(Supposed::name).toList();
    if (names.stream().distinct().count() == 1) {
      return names.get(0);
    }
    List<String> seated = new ArrayList<>();
    for (int seat = 0; seat < names.size(); seat++) {
      seated.add(names.get(seat) + " (seat " + seat + ")");
    }
    return String.join(", ", seated);
  }

  private static String name(PlayerSpec spec) {
    return spec.type().id() + (spec.changed().isEmpty() ? "" : " with settings of its own");
  }
}
