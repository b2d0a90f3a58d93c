package org.tallywall.experiments.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What can be done at the decision that a study branches at. */
public enum BranchOption {
  /** Throws what the own hand needs least, whatever the others show. */
  OWN_NEED("own-need", Moment.DISCARD, "throw by your own need", "throwing by your own need"),
  /** Throws the safest tile that it holds. */
  SAFEST("safest", Moment.DISCARD, "throw the safest tile", "throwing the safest tile"),
  /** Lets the tile lie. */
  NOTHING("nothing", Moment.CLAIM, "let the tile lie", "letting the tile lie"),
  /** Claims the tile so that the hand comes nearest, with as few jokers as it can. */
  CLAIM("claim", Moment.CLAIM, "claim the tile", "claiming the tile");

  /** An older way to write {@link #CLAIM}. */
  private static final String CLAIM_ANY = "claim *";

  private final String text;
  private final Moment moment;
  private final String words;
  private final String doing;

  BranchOption(String text, Moment moment, String words, String doing) {
    this.text = text;
    this.moment = moment;
    this.words = words;
    this.doing = doing;
  }

  /**
   * The name in studies.
   *
   * @return as in {@code own-need}
   */
  public String text() {
    return text;
  }

  /**
   * When it can be chosen.
   *
   * @return the kind of decision
   */
  public Moment moment() {
    return moment;
  }

  /**
   * What it does, for readers.
   *
   * @return a few words that follow "to"
   */
  public String words() {
    return words;
  }

  /**
   * The same as the subject of a sentence.
   *
   * @return a few words, as in "throwing the safest tile"
   */
  public String doing() {
    return doing;
  }

  /**
   * The option that a study or a table names.
   *
   * @param text its name
   * @return the option, if there is one
   */
  public static Optional<BranchOption> of(String text) {
    String name = text.equals(CLAIM_ANY) ? CLAIM.text : text;
    return Arrays.stream(values()).filter(option -> option.text.equals(name)).findFirst();
  }

  /**
   * What can be chosen at a kind of decision.
   *
   * @param moment the kind of decision
   * @return the names of its options
   */
  public static List<String> names(Moment moment) {
    return Arrays.stream(values())
        .filter(option -> option.moment == moment)
        .map(BranchOption::text)
        .toList();
  }
}
