package org.tallywall.core.hand;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/**
 * The concrete hands that stay possible with certain exposures, as rows of bits. The groups laid
 * open are taken out: what remains must be made from the rack.
 */
public final class Reach {
  private final ConcreteHands hands;
  private final int size;
  private final int wanted;

  /** Bits of the tiles that each hand still wants, by word of {@link TileBits}. */
  final long[] need0;

  final long[] need1;
  final long[] need2;

  /** Bits of the tiles among them that must be natural. */
  final long[] strict0;

  final long[] strict1;
  final long[] strict2;

  /**
   * The same words hand by hand, {@link #ROW} to a hand: wanted, then natural, then two unused, so
   * that looking at one hand touches one line of the processor's cache.
   */
  final long[] rows;

  /** The words of all hands put together: a bit is set where one of them has it set. */
  final long[] together = new long[6];

  /** The most that {@link #over} says of a hand. */
  final int mostOver;

  /** Words of a hand in {@link #rows}. */
  static final int ROW = 8;

  /** Tiles wanted beyond what the fields of {@link TileBits} can show; they must be jokers. */
  final byte[] over;

  private final int[] hand;
  private final int[] line;
  private final byte[] open = new byte[Tile.NATURALS];
  private final byte[] openWithJokers = new byte[Tile.NATURALS];
  private Postings postings;

  /**
   * Narrows a card to what some exposures leave possible.
   *
   * @param hands all hands of the card
   * @param exposures the exposures, in any order
   */
  Reach(ConcreteHands hands, List<Exposure> exposures) {
    this.hands = hands;
    this.wanted = 14 - exposures.stream().mapToInt(Exposure::size).sum();
    int[] possible = possible(hands, exposures);
    size = possible.length;
    need0 = new long[size];
    need1 = new long[size];
    need2 = new long[size];
    strict0 = new long[size];
    strict1 = new long[size];
    strict2 = new long[size];
    rows = new long[ROW * size];
    over = new byte[size];
    hand = possible;
    line = new int[size];
    TileBits bits = new TileBits();
    int most = 0;
    for (int at = 0; at < size; at++) {
      line[at] = hands.lineOf(possible[at]);
      row(at, exposures, bits);
      keepTogether(at);
      findOpen(at, exposures);
      most = Math.max(most, over[at]);
    }
    mostOver = most;
  }

  private void keepTogether(int at) {
    long[] row = row(at);
    System.arraycopy(row, 0, rows, ROW * at, row.length);
    for (int word = 0; word < row.length; word++) {
      together[word] |= row[word];
    }
  }

  private void findOpen(int at, List<Exposure> exposures) {
    Line printed = hands.line(line[at]);
    ConcreteHand concrete = hand(at);
    int used = used(concrete, exposures);
    for (int group = 0; group < concrete.groups() && !printed.concealed(); group++) {
      if ((used >> group & 1) == 0) {
        int kind = concrete.groupKind(group);
        byte size = (byte) (1 << concrete.groupSize(group));
        open[kind] |= size;
        openWithJokers[kind] |= printed.terms().jokers() ? size : 0;
      }
    }
  }

  private void row(int at, List<Exposure> exposures, TileBits bits) {
    ConcreteHand concrete = hands.hand(hand[at]);
    boolean jokers = hands.line(line[at]).terms().jokers();
    int[] rest = new int[Tile.NATURALS];
    int beyond = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      rest[kind] = concrete.total(kind);
    }
    for (Exposure exposure : exposures) {
      rest[exposure.kind()] -= exposure.size();
    }
    bits.clear();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      bits.put(kind, rest[kind]);
      beyond += Math.max(0, rest[kind] - TileBits.width(kind));
    }
    need0[at] = bits.w0;
    need1[at] = bits.w1;
    need2[at] = bits.w2;
    over[at] = (byte) beyond;
    if (jokers) {
      bits.clear();
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        bits.put(kind, concrete.loose(kind));
      }
    }
    strict0[at] = bits.w0;
    strict1[at] = bits.w1;
    strict2[at] = bits.w2;
  }

  private static int[] possible(ConcreteHands hands, List<Exposure> exposures) {
    boolean joker = exposures.stream().anyMatch(exposure -> exposure.jokers() > 0);
    int[] found = new int[hands.size()];
    int count = 0;
    for (int at = 0; at < hands.size(); at++) {
      boolean closed = !exposures.isEmpty() && hands.line(hands.lineOf(at)).concealed();
      boolean jokerBarred = joker && !hands.line(hands.lineOf(at)).terms().jokers();
      if (!closed && !jokerBarred && contains(hands.hand(at), exposures)) {
        found[count++] = at;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /**
   * Whether a hand contains every exposure as a group of that very size, as often as exposed.
   *
   * @param hand a concrete hand
   * @param exposures the exposures
   * @return true if it does
   */
  public static boolean contains(ConcreteHand hand, List<Exposure> exposures) {
    return used(hand, exposures) >= 0;
  }

  private static int used(ConcreteHand hand, List<Exposure> exposures) {
    int used = 0;
    for (Exposure exposure : exposures) {
      int at = 0;
      while (at < hand.groups()
          && ((used >> at & 1) != 0
              || hand.groupKind(at) != exposure.kind()
              || hand.groupSize(at) != exposure.size())) {
        at++;
      }
      if (at == hand.groups()) {
        return -1;
      }
      used |= 1 << at;
    }
    return used;
  }

  /**
   * The rows turned round. They are made at first use; threads that make them at once make the
   * same.
   *
   * @return for each tile the hands that want it
   */
  Postings postings() {
    Postings made = postings;
    if (made == null) {
      made = new Postings(this);
      postings = made;
    }
    return made;
  }

  /**
   * How many hands stay possible.
   *
   * @return 0 or more
   */
  public int size() {
    return size;
  }

  /**
   * How many tiles of a finished hand are not laid open.
   *
   * @return 14 less the exposed tiles
   */
  public int wanted() {
    return wanted;
  }

  /**
   * One of the hands.
   *
   * @param index from 0, in the order of the card
   * @return the hand, exposed groups included
   */
  public ConcreteHand hand(int index) {
    return hands.hand(hand[index]);
  }

  /**
   * The place of one of the hands among all of the card.
   *
   * @param index from 0
   * @return its index in {@link ConcreteHands}
   */
  public int index(int index) {
    return hand[index];
  }

  /**
   * The bits of one of the hands, for those who measure how fast they are scanned.
   *
   * @param index from 0
   * @return six words: the tiles wanted, then those that must be natural
   */
  public long[] row(int index) {
    return new long[] {
      need0[index], need1[index], need2[index], strict0[index], strict1[index], strict2[index]
    };
  }

  /**
   * The line of one of the hands.
   *
   * @param index from 0
   * @return the line's place on the card, from 0
   */
  public int line(int index) {
    return line[index];
  }

  /**
   * All hands of the card from which this was narrowed.
   *
   * @return the card's hands
   */
  public ConcreteHands hands() {
    return hands;
  }

  /**
   * How many different lines stay possible.
   *
   * @return 0 or more
   */
  public int lines() {
    int lines = 0;
    for (int at = 0; at < size; at++) {
      lines += at == 0 || line[at] != line[at - 1] ? 1 : 0;
    }
    return lines;
  }

  /**
   * The sizes of groups of one kind that could be laid open next and leave a hand possible.
   *
   * @param kind a natural kind, 0 to 34
   * @param withJokers whether the group would hold jokers
   * @return a bit for each size: bit 3 for a pung up to bit 6 for a sextet
   */
  public int openSizes(int kind, boolean withJokers) {
    return withJokers ? openWithJokers[kind] : open[kind];
  }

  /**
   * Whether holding one tile less of a kind would leave a hand with less matched.
   *
   * @param index the hand, from 0
   * @param kind a natural kind
   * @param held how many of the kind are on the rack, 1 or more
   * @return true if the last of them is wanted
   */
  public boolean wants(int index, int kind, int held) {
    return bit(ROW * index + TileBits.word(kind), kind, held);
  }

  /**
   * Adds a weight to every kind of which a hand wants the last tile held.
   *
   * @param index the hand, from 0
   * @param last the last tiles held, as {@link TileBits#setLast} has them
   * @param weight what to add
   * @param into sums by kind
   */
  public void addWanted(int index, TileBits last, long weight, long[] into) {
    int row = ROW * index;
    addWanted(0, rows[row] & last.w0, weight, into);
    addWanted(1, rows[row + 1] & last.w1, weight, into);
    addWanted(2, rows[row + 2] & last.w2, weight, into);
  }

  private static void addWanted(int word, long wanted, long weight, long[] into) {
    for (long bits = wanted; bits != 0; bits &= bits - 1) {
      into[TileBits.kind(word, Long.numberOfTrailingZeros(bits))] += weight;
    }
  }

  /**
   * Whether a further tile of a kind must be natural for a hand, that is, it goes to a single or a
   * pair, or the line takes no jokers.
   *
   * @param index the hand, from 0
   * @param kind a natural kind
   * @param held how many of the kind would be on the rack with it, 1 or more
   * @return true if the last of them fills such a place
   */
  public boolean wantsNatural(int index, int kind, int held) {
    return bit(ROW * index + 3 + TileBits.word(kind), kind, held);
  }

  private boolean bit(int word, int kind, int held) {
    return held <= TileBits.width(kind)
        && (rows[word] >>> (TileBits.shift(kind) + held - 1) & 1) != 0;
  }
}
