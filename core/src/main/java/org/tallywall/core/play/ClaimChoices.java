package org.tallywall.core.play;

/** The ready-made claim choices. */
final class ClaimChoices {
  static final ClaimChoice NOTHING = new ClaimChoice.Nothing();
  static final ClaimChoice MAHJONG = new ClaimChoice.Mahjong(ClaimChoice.Mahjong.BEST_LINE);
  static final ClaimChoice[][] EXPOSE = new ClaimChoice[7][6];

  static {
    for (int size = 3; size <= 6; size++) {
      for (int jokers = 0; jokers < size; jokers++) {
        EXPOSE[size][jokers] = new ClaimChoice.Expose(ClaimChoice.Expose.AS_OFFERED, size, jokers);
      }
    }
  }

  private ClaimChoices() {}
}
