package org.tallywall.experiments.study;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tallywall.core.card.Card;
import org.tallywall.core.rules.TableRules;
import org.tallywall.strategies.catalog.PlayerSpec;

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
    StudyQuestion question,
    Card card,
    TableRules rules,
    Design design,
    Extent extent,
    Source source) {
  /**
   * The digest of everything on which the results depend: the study with its defaults, the card and
   * jars of players by their digests, the rules. The folders of files do not count.
   *
   * @return "sha256:" and 64 hexadecimal digits
   */
  public String digest() {
    return StudyJson.digest(this);
  }

  /**
   * The same study with another number of deals, chosen after its run had begun.
   *
   * @param deals the number
   * @param planned the number that was fixed before the run began
   * @return a study with the digest of the one planned, for it asks the same of the same deals
   */
  public Study changed(long deals, long planned) {
    Extent other = extent.changed(deals, planned);
    return new Study(question, card, rules, design, other, source);
  }

  /**
   * The jars from which players come.
   *
   * @return the digest of each by its file's name, in the order in which the study names them
   */
  public Map<String, String> jars() {
    Map<String, String> jars = new LinkedHashMap<>();
    for (PlayerSpec player : design.seated()) {
      player.type().origin().ifPresent(jar -> jars.put(jar.fileName(), jar.digest()));
    }
    return jars;
  }
}
