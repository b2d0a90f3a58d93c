package org.tallywall.experiments.design.branch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What can be done at the decision that a study branches at. */
public enum BranchOption {
  /** Throws what the own hand needs least, whatever the others show. */
  OWN_NEED("own-need", Moment.DISCARD),
  /** Throws the safest tile that it holds. */
  SAFEST("safest", Moment.DISCARD),
  /** Lets the tile lie. */
  NOTHING("nothing", Moment.CLAIM),
  /** Claims the tile so that the hand comes nearest, with as few jokers as it can. */
  CLAIM("claim", Moment.CLAIM);

  /** An older way to write {@link #CLAIM}. */
  private static final String CLAIM_ANY = "claim *";

  private final String text;
  private final Moment moment;

  BranchOption(String text, Moment moment) {
    this.text = text;
    this.moment = moment;
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
