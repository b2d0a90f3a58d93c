package org.tallywall.experiments.study;

import org.tallywall.core.card.Card;
import org.tallywall.core.rules.TableRules;

/**
 * A question to be played out, with every default in place.
 *
 * @param question what it wants to know
 * @param card the card played
 * @param rules the rules of the table
 * @param design how the games are laid out
 * @param extent how much is played
 * @param source the files it was made of
 */
public record Study(
    Question question, Card card, TableRules rules, Design design, Extent extent, Source source) {
  /**
   * The digest of everything on which the results depend: the study with its defaults, the card by
   * its digest, the rules. File names do not count.
   *
   * @return "sha256:" and 64 hexadecimal digits
   */
  public String digest() {
    return StudyJson.digest(this);
  }
}
