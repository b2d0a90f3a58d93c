package org.tallywall.experiments.cli;

import java.nio.file.Path;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.guide.FileKind;
import org.tallywall.experiments.words.Words;

/** Files named where others are wanted: says what each is and what was meant. */
final class MixedUp {
  private MixedUp() {}

  /**
   * Looks at a file where a study is wanted.
   *
   * @throws WrongInputException if it is a card or a file of table rules
   */
  static void wantsStudy(Path file) {
    String typed = Words.typed(file.toString());
    switch (FileKind.of(file)) {
      case CARD ->
          throw new WrongInputException(
              "\"%s\" is a card, not a study; a study names it. Try: tallywall study new table --card %s"
                  .formatted(file, typed));
      case RULES ->
          throw new WrongInputException(
              "\"%s\" holds table rules, not a study; name a study and add --rules %s"
                  .formatted(file, typed));
      default -> {}
    }
  }

  /**
   * Looks at a file where a card is wanted.
   *
   * @throws WrongInputException if it is a study or a file of table rules
   */
  static void wantsCard(Path file) {
    switch (FileKind.of(file)) {
      case STUDY ->
          throw new WrongInputException(
              "\"%s\" is a study, not a card; try: tallywall run %s"
                  .formatted(file, Words.typed(file.toString())));
      case RULES ->
          throw new WrongInputException("\"%s\" holds table rules, not a card".formatted(file));
      default -> {}
    }
  }
}
