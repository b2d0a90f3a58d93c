package org.tallywall.experiments.design.branch;

import java.util.Arrays;
import java.util.List;

/** What can be done at the decision that a study branches at. */
public enum BranchOption {
  /** Throws what the own hand needs least, whatever the others show. */
  OWN_NEED("own-need", Moment.DISCARD, "throws by its own need"),
  /** Throws the safest tile that it holds. */
  SAFEST("safest", Moment.DISCARD, "throws the safest tile"),
  /** Lets the tile go. */
  NOTHING("nothing", Moment.CLAIM, "lets the tile go"),
  /** Claims the tile, with as few jokers as it can. */
  CLAIM("claim *", Moment.CLAIM, "claims the tile");

  private final String text;
  private final Moment moment;
  private final String words;

  BranchOption(String text, Moment moment, String words) {
    this.text = text;
    this.moment = moment;
    this.words = words;
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
   * @return a few words without a subject
   */
  public String words() {
    return words;
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
