package org.tallywall.strategies.hand;

import java.util.Arrays;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * The chance to complete one concrete hand.
 *
 * <p>Model: the tiles of each kind are drawn without putting back ({@link ChanceTable}), each kind
 * by itself although all share the same draws, whatever the others do (see {@link Outlook}). Tiles
 * for singles and pairs must be drawn, and so must all tiles of a line without jokers. Of the tiles
 * that another group lacks, the last may be claimed too, if the line can be exposed; so may the
 * last tile of all. Jokers held, and at most two that may yet be drawn, stand for the open tiles
 * that are hardest to get. Left out: that tiles must come before somebody else wins, that others
 * keep what they need, exchanges to come. So it says too little where several groups lack a tile or
 * a line takes no jokers, a little too much where single tiles of many kinds lack; by how much is
 * held in tests and in {@code strategies/CALIBRATION.md}.
 */
final class HandChance {
  /** The least chance that anything is divided by. */
  private static final double LEAST = 1e-9;

  private static final int MOST_KINDS = Tile.NATURALS;
  private static final int FURTHER_JOKERS = 2;

  /** More tiles than these gain no more from the one that may be claimed. */
  private static final int MOST_OPEN = 4;

  private final int[] unseen = new int[Tile.KINDS];
  private final Rack nothing = new Rack();
  private final int[] inWall = new int[Tile.KINDS];
  private final int[] open = new int[MOST_KINDS];
  private final double[] get = new double[MOST_KINDS];
  private final double[] jokersComing = new double[FURTHER_JOKERS + 1];
  private final double[] better = new double[MOST_KINDS];
  private final double[] gain = new double[MOST_KINDS];
  private final ChanceTable drawn = new ChanceTable();
  private final ChanceTable[] opened = new ChanceTable[MOST_OPEN + 1];
  private double anyComing;

  HandChance() {
    Arrays.setAll(opened, needed -> new ChanceTable());
  }

  /**
   * Sets what is unseen and what may be hoped for.
   *
   * @param view what the seat knows
   * @param hopes its outlook
   */
  void begin(SeatView view, Outlook hopes) {
    begin(view, hopes, Foresight.NOTHING, nothing, 0);
  }

  /**
   * Sets what is unseen and what may be hoped for. A tile that is known to lie in another rack
   * cannot be drawn, but it may still be thrown.
   *
   * @param view what the seat knows
   * @param hopes its outlook
   * @param told what is known besides
   * @param coming draws that are known and count as held
   * @param draws how many those are
   */
  void begin(SeatView view, Outlook hopes, Foresight told, Rack coming, int draws) {
    double looks = Math.max(0, hopes.draws() - draws);
    double all = Math.max(1, hopes.unseen() - draws);
    int elsewhere = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int left = view.unseen(kind) - coming.held(kind);
      elsewhere += told.elsewhere(kind);
      unseen[kind] = Math.min(left, ChanceTable.MOST_COPIES);
      inWall[kind] = Math.min(left - told.elsewhere(kind), ChanceTable.MOST_COPIES);
    }
    drawn.set(looks, Math.max(1, all - elsewhere));
    for (int needed = 1; needed <= MOST_OPEN; needed++) {
      opened[needed].set(looks + hopes.thrown() / needed, all);
    }
    double none = 1 - drawn.atLeast(1, inWall[Tile.JOKER]);
    double two = drawn.atLeast(2, inWall[Tile.JOKER]);
    jokersComing[0] = none;
    jokersComing[1] = Math.max(0, 1 - none - two);
    jokersComing[2] = two;
    anyComing = jokersComing[0] + jokersComing[1] + jokersComing[2];
  }

  /**
   * The chance.
   *
   * @param lack what the rack lacks of the hand
   * @param jokers jokers held, 0 where the line takes none
   * @param takesJokers whether the line takes jokers
   * @param concealed whether its tiles cannot be claimed, the last apart
   * @param more one kind of which the rack loses tiles, or -1
   * @param moreNatural how many tiles of it must be natural
   * @param moreOpen how many of it a joker may stand for
   * @return 0 to 1
   */
  double of(
      Lack lack,
      int jokers,
      boolean takesJokers,
      boolean concealed,
      int more,
      int moreNatural,
      int moreOpen) {
    int kinds = lack.kinds();
    int naturals = lack.naturals() + moreNatural;
    int opens = lack.opens() + moreOpen;
    boolean one = Math.max(naturals, naturals + opens - jokers) <= 1;
    double chance = 1;
    int count = 0;
    boolean merged = false;
    for (int at = 0; at < kinds; at++) {
      int kind = lack.kind(at);
      boolean same = kind == more;
      merged |= same;
      int natural = lack.natural(at) + (same ? moreNatural : 0);
      int loose = lack.open(at) + (same ? moreOpen : 0);
      chance *= naturalChance(natural, kind, one);
      if (loose > 0) {
        open[count] = kind << 8 | loose;
        get[count++] = openChance(loose, kind, natural, concealed && !one);
      }
    }
    if (more >= 0 && !merged) {
      chance *= naturalChance(moreNatural, more, one);
      if (moreOpen > 0) {
        open[count] = more << 8 | moreOpen;
        get[count++] = openChance(moreOpen, more, moreNatural, concealed && !one);
      }
    }
    if (chance == 0) {
      return 0;
    }
    return chance
        * (takesJokers ? withJokers(count, opens, jokers, concealed && !one) : product(count));
  }

  private double naturalChance(int needed, int kind, boolean one) {
    return one ? opened[1].atLeast(needed, unseen[kind]) : drawn.atLeast(needed, inWall[kind]);
  }

  /** The more tiles a group lacks, the less it gains from the one that may be claimed. */
  private double openChance(int needed, int kind, int alsoNatural, boolean drawnOnly) {
    ChanceTable table = drawnOnly ? drawn : opened[Math.min(needed, MOST_OPEN)];
    int copies = drawnOnly ? inWall[kind] : unseen[kind];
    double all = table.atLeast(needed + alsoNatural, copies);
    return alsoNatural == 0 ? all : all / Math.max(LEAST, table.atLeast(alsoNatural, copies));
  }

  private double product(int count) {
    double product = 1;
    for (int at = 0; at < count; at++) {
      product *= get[at];
    }
    return product;
  }

  /** Jokers are put where they help most, one after the other. */
  private double withJokers(int count, int opens, int jokers, boolean drawnOnly) {
    if (opens <= jokers) {
      return anyComing;
    }
    double chance = 0;
    int placed = 0;
    for (int at = 0; at < count; at++) {
      weigh(at, drawnOnly);
    }
    for (int coming = 0; coming <= FURTHER_JOKERS; coming++) {
      int wanted = Math.min(opens, jokers + coming);
      while (placed < wanted) {
        placeOne(count, drawnOnly);
        placed++;
      }
      chance += jokersComing[coming] * (placed >= opens ? 1 : product(count));
    }
    return chance;
  }

  /** Works out what one joker more would do for a kind. */
  private void weigh(int at, boolean drawnOnly) {
    int left = (open[at] & 0xFF) - 1;
    better[at] = left == 0 ? 1 : openChance(left, open[at] >> 8, 0, drawnOnly);
    gain[at] = better[at] / Math.max(LEAST, get[at]);
  }

  private void placeOne(int count, boolean drawnOnly) {
    int best = -1;
    double most = 0;
    for (int at = 0; at < count; at++) {
      if (gain[at] > most) {
        most = gain[at];
        best = at;
      }
    }
    if (best >= 0) {
      open[best]--;
      get[best] = better[best];
      if ((open[best] & 0xFF) > 0) {
        weigh(best, drawnOnly);
      } else {
        gain[best] = 0;
      }
    }
  }
}
