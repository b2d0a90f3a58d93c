package org.tallywall.experiments.design.branch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What can be done at the decision that a study branches at. */
public enum BranchOption {
  /** Throws what the own hand needs least, whatever the others show. */
  OWN_NEED("own-need", BranchMoment.DISCARD),
  /** Throws the safest tile that it holds. */
  SAFEST("safest", BranchMoment.DISCARD),
  /** Lets the tile lie. */
  NOTHING("nothing", BranchMoment.CLAIM),
  /** Claims the tile so that the hand comes nearest, with as few jokers as it can. */
  CLAIM("claim", BranchMoment.CLAIM),
  /** Stops the passes. */
  STOP("stop", BranchMoment.STOP),
  /** Goes on to the second three passes. */
  GO_ON("go-on", BranchMoment.STOP);

  /** An older way to write {@link #CLAIM}. */
  private static final String CLAIM_ANY = "claim *";

  private final String text;
  private final BranchMoment moment;

  BranchOption(String text, BranchMoment moment) {
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
  public BranchMoment moment() {
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
  public static List<String> names(BranchMoment moment) {
    return Arrays.stream(values())
        .filter(option -> option.moment == moment)
        .map(BranchOption::text)
        .toList();
  }
}
