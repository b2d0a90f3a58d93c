package org.tallywall.core.text;

/**
 * How much of a file is read at most. Files come from strangers too: whatever is larger, longer or
 * deeper is refused in a sentence that names the bound, before it costs memory or time. Each bound
 * lies far above what anybody types.
 */
public final class FileLimits {
  /** Bytes of the largest typed file: 16 MiB. */
  public static final int LARGEST_FILE = 16 << 20;

  /** Characters of the longest line of a file that is read line by line: 1,048,576. */
  public static final int LONGEST_LINE = 1 << 20;

  /** How deep objects and lists of a JSON file may stand in one another. */
  public static final int DEEPEST = 100;

  /** Values of one JSON file, objects and lists among them. */
  public static final int MOST_VALUES = 1_000_000;

  /** Characters of the longest number of a JSON file, as it is typed. */
  public static final int LONGEST_NUMBER = 1_000;

  /** The exponent of the largest numbers, as in 1e300; the smallest above 0 are 1e-300. */
  public static final int LARGEST_EXPONENT = 300;

  /** Faults, and warnings, of one file that are told; the others are counted. */
  public static final int MOST_FAULTS = 50;

  /** Characters of the longest message about a fault; what is longer is cut. */
  public static final int LONGEST_MESSAGE = 4_000;

  /** Characters of a word from a file that a message repeats; what is longer is cut. */
  public static final int LONGEST_QUOTE = 80;

  private FileLimits() {}
}
