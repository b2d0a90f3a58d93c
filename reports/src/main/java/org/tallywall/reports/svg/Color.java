package org.tallywall.reports.svg;

/**
 * The colors of every picture: those of M. Okabe and K. Ito (Color Universal Design, 2008), as
 * printed by B. Wong (Points of view: Color blindness, Nature Methods 8:441, 2011), which people
 * with the common kinds of color blindness tell apart; and grays for lines and text. No color
 * carries a meaning alone: shape, pattern or words always say the same.
 */
enum Color {
  /** Wong's blue: what is compared; the darkest part. */
  BLUE("#0072B2"),
  /** Wong's sky blue. */
  SKY("#56B4E9"),
  /** Wong's vermilion: the second of two. */
  VERMILION("#D55E00"),
  /** Wong's orange. */
  ORANGE("#E69F00"),
  /** Wong's yellow. */
  YELLOW("#F0E442"),
  /** Wong's bluish green. */
  GREEN("#009E73"),
  /** Text. */
  INK("#1A1A1A"),
  /** Text that must not be missed: Wong's vermilion, darkened; 7 to 1 against white. */
  WARN("#8A3C00"),
  /** Text of less weight; 7 to 1 against white. */
  SOFT("#555555"),
  /** Axes and frames. */
  LINE("#767676"),
  /** Grid lines. */
  GRID("#DDDDDD"),
  /** Every second row. */
  SHADE("#F4F4F4"),
  /** The ground. */
  WHITE("#FFFFFF"),
  /** The band of a curve: Wong's sky blue, thinned with white. */
  BAND("#D5ECFA");

  private final String code;

  Color(String code) {
    this.code = code;
  }

  String code() {
    return code;
  }
}
