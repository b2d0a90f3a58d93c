package example.suitkeeper;

import java.util.Arrays;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.player.NearestPlayer;

/**
 * Plays as {@code nearest}, but with a habit of its own: it passes away the suit of which it holds
 * fewest tiles, whatever line they would do for.
 *
 * <p>It keeps nothing between questions: all it needs is in the view.
 */
public final class SuitKeeper implements Player {
  private static final int PASSED = 3;
  private static final int SUITS = 3;

  private final NearestPlayer usual = new NearestPlayer();
  private final int thinAtMost;
  private final boolean keepsPairs;

  /** A player with its usual settings, as {@code jar:suit-keeper.jar!…} makes it. */
  public SuitKeeper() {
    this(4, true);
  }

  /**
   * A player.
   *
   * @param thinAtMost how many tiles the thinnest suit may have to be passed away, 0 to 6
   * @param keepsPairs whether two of a kind stay
   */
  public SuitKeeper(int thinAtMost, boolean keepsPairs) {
    this.thinAtMost = thinAtMost;
    this.keepsPairs = keepsPairs;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    PassChoice asUsual = usual.pass(view, step, random);
    int suit = thinnest(view);
    if (size(view, suit) > thinAtMost) {
      return asUsual;
    }
    int[] left = new int[Tile.KINDS];
    Arrays.setAll(left, view::held);
    int[] own = new int[PASSED];
    int count = 0;
    for (int number = 1; number <= 9; number++) {
      int kind = Tile.suited(suit, number);
      while (count < PASSED && left[kind] > 0 && !(keepsPairs && view.held(kind) > 1)) {
        own[count++] = kind;
        left[kind]--;
      }
    }
    for (int kind : asUsual.own()) {
      if (count < PASSED && left[kind] > 0) {
        own[count++] = kind;
        left[kind]--;
      }
    }
    return count == PASSED ? PassChoice.of(own) : asUsual;
  }

  private static int thinnest(SeatView view) {
    int thinnest = 0;
    for (int suit = 1; suit < SUITS; suit++) {
      if (size(view, suit) < size(view, thinnest)) {
        thinnest = suit;
      }
    }
    return thinnest;
  }

  private static int size(SeatView view, int suit) {
    int size = 0;
    for (int number = 1; number <= 9; number++) {
      size += view.held(Tile.suited(suit, number));
    }
    return size;
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return usual.declares(view, random);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return usual.stops(view, random);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return usual.courtesyNumber(view, random);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return usual.courtesyTiles(view, number, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    return usual.claim(view, random);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    return usual.turn(view, random);
  }

  @Override
  public int aim(SeatView view) {
    return usual.aim(view);
  }
}
