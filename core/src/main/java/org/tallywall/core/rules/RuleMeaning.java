package org.tallywall.core.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a switch means, in words for whoever sets it.
 *
 * @param rule the switch
 * @param sentence what it decides; begins with a question word and ends with a full stop
 * @param words what each of its words means, in the order of the switch; words that are known but
 *     not played yet are among them
 */
public record RuleMeaning(RuleSwitch rule, String sentence, Map<String, String> words) {
  /**
   * A meaning.
   *
   * @param rule the switch
   * @param sentence what it decides
   * @param words what each of its words means
   */
  public RuleMeaning {
    words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  /**
   * A meaning by the switch's key.
   *
   * @param key the key of a known switch
   * @param sentence what it decides
   * @return the meaning, its words not yet explained
   */
  static RuleMeaning of(String key, String sentence) {
    return new RuleMeaning(RuleSwitches.find(key).orElseThrow(), sentence, Map.of());
  }

  /**
   * The same meaning with one more word explained.
   *
   * @param word one of the switch's words
   * @param means what it stands for, without a full stop
   * @return the longer meaning
   */
  RuleMeaning word(String word, String means) {
    Map<String, String> more = new LinkedHashMap<>(words);
    more.put(word, means);
    return new RuleMeaning(rule, sentence, more);
  }

  /**
   * The switch's key.
   *
   * @return as in {@code wall.cold}
   */
  public String key() {
    return rule.key();
  }

  /**
   * What the switch is about.
   *
   * @return its group
   */
  public RuleGroup group() {
    return RuleGroup.of(rule.key());
  }

  /**
   * How the switch is set unless somebody sets it.
   *
   * @return as in "OFF", "8" or "true"
   */
  public String usual() {
    return String.valueOf(rule.standard());
  }

  /**
   * What it may be set to.
   *
   * @return as in "OFF, NO_CLAIM"; its usual value alone where nothing else is played
   */
  public String choices() {
    return rule.choices();
  }

  /**
   * What is known and not played yet, so that it may not be set.
   *
   * @return as in "MUSH" or "a whole number from 1 to 6"; empty where all that is known is played
   */
  public String notYet() {
    return rule.laterChoices();
  }

  /**
   * Whether there is anything to choose.
   *
   * @return false where only the usual value is played
   */
  public boolean open() {
    return !choices().equals(usual());
  }
}
