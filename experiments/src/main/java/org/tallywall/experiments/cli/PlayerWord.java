package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.tallywall.core.card.Card;
import org.tallywall.core.text.Fault;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Shown;
import org.tallywall.core.text.TextFile;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** A player as it is named on the command line. */
final class PlayerWord {
  private PlayerWord() {}

  /**
   * Reads a player who is to play on a card.
   *
   * @param word its name, or a file that ends in {@code .json} and holds what a study would write
   * @param named the players that a word may name
   * @param inFiles those that a file may name
   * @param card the card
   * @return the player; it names nothing that the card does not have
   */
  static PlayerSpec read(String word, Catalog named, Catalog inFiles, Card card) {
    PlayerSpec spec = read(word, named, inFiles);
    spec.unfit(card)
        .ifPresent(
            fault -> {
              throw new WrongInputException(Shown.word(word) + ": " + fault);
            });
    return spec;
  }

  private static PlayerSpec read(String word, Catalog named, Catalog inFiles) {
    if (!word.endsWith(".json")) {
      return new PlayerSpec(named.find(word), Map.of());
    }
    Path file = Path.of(word);
    Faults faults = new Faults();
    Node node = LocatedJson.read(TextFile.read(file), faults);
    PlayerSpec spec = node == null ? null : inFiles.in(file.resolveSibling("")).read(node, faults);
    List<Fault> found = faults.faults();
    if (!found.isEmpty()) {
      throw new FaultyFileException(word, found);
    }
    return spec;
  }
}
