package org.tallywall.experiments.stats;

/** How an interval was computed; tables name it beside the limits. */
public enum Method {
  /** Wilson's score interval of a proportion. */
  WILSON("Wilson"),
  /** The exact interval of a proportion by Clopper and Pearson. */
  CLOPPER_PEARSON("Clopper-Pearson"),
  /** Limits of Clopper and Pearson for each size of a difference, added up. */
  CLOPPER_PEARSON_BY_SIZE("Clopper-Pearson by size"),
  /** Student's t interval of a mean, the deal being the unit. */
  T_OVER_DEALS("t over deals"),
  /** The interval of a ratio of two sums over deals, made linear. */
  RATIO_OVER_DEALS("ratio over deals"),
  /** Exact limits of the shares of deals that came out more and fewer, put together. */
  FEW_DIFFER("Clopper-Pearson on deals that differ"),
  /** Newcombe's interval of a difference of paired proportions. */
  NEWCOMBE_PAIRED("Newcombe paired"),
  /** The interval of a median between two order statistics. */
  ORDER_STATISTICS("order statistics"),
  /**
   * Student's t interval of a fitted number, from the spread of whole deals within their tables.
   */
  FITTED_OVER_DEALS("t over deals within tables"),
  /**
   * The exact interval by Clopper and Pearson of the deals with a win, carried into the ratings.
   */
  CLOPPER_PEARSON_CARRIED("Clopper-Pearson carried into the ratings"),
  /** The empirical-Bernstein band, which holds at every look at once. */
  ALWAYS_VALID_SHARE("always-valid empirical Bernstein"),
  /** The asymptotic band, which holds at every look at once. */
  ALWAYS_VALID_MEAN("always-valid asymptotic");

  private final String text;

  Method(String text) {
    this.text = text;
  }

  /**
   * The name as tables print it.
   *
   * @return a few words
   */
  public String text() {
    return text;
  }
}
