package org.tallywall.strategies.read;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/**
 * Reads the others: what their exposures leave possible, which tiles those hands still want, and
 * how likely somebody wins on a tile or lays it open if it is thrown.
 *
 * <p>Of an opponent who shows exposures all live hands are weighed ({@link LiveHands}); of one who
 * shows nothing only the usual chance is known. What she threw herself, what went round unclaimed,
 * what lies on the table and what she passed to the reader makes a tile safer ({@link Evidence}).
 * Each kind of evidence can be left out.
 */
public final class OpponentReader {
  /** What lines were worth on the average, in points. */
  private static final double USUAL_VALUE = 28;

  /** Share of what is waited for that is taken to be any kind where exposures are not read. */
  private static final double UNREAD_SHARE = 0.03;

  private static final int RACK = 13;

  /** With so many tiles concealed, or fewer, a player waits for what her only hands lack. */
  private static final int FEW_TILES = 2;

  /** Most of a chance; nothing is quite sure. */
  private static final double MOST = 0.95;

  private final LiveHands[] hands = new LiveHands[Seats.COUNT];
  private final double[] win = new double[Seats.COUNT];
  private final double[] claim = new double[Seats.COUNT];
  private final Evidence evidence = new Evidence();

  /** What all that can be seen says of wins; null where it is not read. */
  private final TileRisk risks;

  private final ReadSettings settings;
  private final Revealed revealed;
  private SeatView view;
  private TableRules rules;
  private Stakes stakes;

  /** A reader that takes the usual evidence. */
  public OpponentReader() {
    this(ReadSettings.USUAL);
  }

  /**
   * A reader.
   *
   * @param settings which evidence counts
   */
  public OpponentReader(ReadSettings settings) {
    this(settings, Revealed.NOTHING);
  }

  /**
   * A reader that may know more than its seat. Who is known to be ready is taken for that and
   * nobody else is, and what is read of the tiles stays as it is; where the waits are known, a tile
   * wins or does not.
   *
   * @param settings which evidence counts
   * @param revealed what it is told beside what its seat sees
   */
  public OpponentReader(ReadSettings settings, Revealed revealed) {
    this.settings = settings;
    this.revealed = revealed;
    risks = settings.tells() ? new TileRisk() : null;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      hands[seat] = new LiveHands();
    }
  }

  /**
   * Reads all opponents.
   *
   * @param seat what the seat knows
   */
  public void look(SeatView seat) {
    view = seat;
    if (rules != seat.table().rules()) {
      rules = seat.table().rules();
      stakes = Stakes.of(rules);
    }
    evidence.gather(seat, settings);
    if (risks != null) {
      risks.look(seat);
    }
    for (int other = 0; other < Seats.COUNT; other++) {
      hands[other].clear();
      if (other != seat.seat() && !seat.dead(other)) {
        int shown = seat.exposures(other).size();
        double nearer = 1 + settings.blind() * evidence.blind(other);
        win[other] =
            revealed.readiness()
                ? ReadyTable.win(revealed.ready(other), shown, seat.wallLeft())
                : RiskTable.win(shown, seat.wallLeft()) * nearer;
        claim[other] = RiskTable.claim(shown, seat.wallLeft());
        if (settings.exposures() && shown > 0) {
          hands[other].read(seat, seat.reach(other));
        }
        if (risks != null) {
          risks.look(other, this);
        }
      }
    }
  }

  /**
   * How many hands are live for an opponent.
   *
   * @param other her seat
   * @return 0 where she shows nothing, or where all are dead
   */
  public int live(int other) {
    return hands[other].live();
  }

  /**
   * How many lines are live for an opponent.
   *
   * @param other her seat
   * @return 0 where she shows nothing
   */
  public int lines(int other) {
    return hands[other].lines();
  }

  /**
   * The share of an opponent's live hands, as weighed, that want a tile.
   *
   * @param other her seat
   * @param kind a kind
   * @return 0 to 1; 0 for a joker, and where she shows nothing
   */
  public double wanted(int other, int kind) {
    return kind < Tile.NATURALS ? hands[other].wanted(kind) : 0;
  }

  /**
   * Whether a tile is one of hers: enough of the live hands of a seat with enough exposures want
   * it.
   *
   * @param kind a kind
   * @param exposures fewest exposures on one rack that make a player be feared
   * @param share share of her live hands from which a tile is hers, 0 to 1; 0 for any of them
   * @return true if so; never for a joker
   */
  public boolean hers(int kind, int exposures, double share) {
    for (int other = 0; other < Seats.COUNT && kind < Tile.NATURALS; other++) {
      double wanted = hands[other].wanted(kind);
      if (feared(other, exposures) && wanted > 0 && wanted >= share) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a tile can give feared players an exposure only: none of their live hands wants it for
   * a single or a pair, and none of them shows three exposures.
   *
   * @param kind a kind
   * @param exposures fewest exposures on one rack that make a player be feared
   * @return true if so; true too for a tile that none of them wants
   */
  public boolean exposureOnly(int kind, int exposures) {
    for (int other = 0; other < Seats.COUNT && kind < Tile.NATURALS; other++) {
      if (feared(other, exposures)
          && hands[other].wanted(kind) > 0
          && (hands[other].wantedNatural(kind) > 0 || view.exposures(other).size() > 2)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether a tile would end the game on every hand that is left to some player who shows three
   * exposures or more and holds two tiles at most besides.
   *
   * @param kind a kind
   * @return true if so
   */
  public boolean surelyWanted(int kind) {
    for (int other = 0; other < Seats.COUNT && kind < Tile.NATURALS; other++) {
      if (feared(other, 3)
          && hands[other].wanted(kind) > 1 - 1e-9
          && concealed(view, other) <= FEW_TILES) {
        return true;
      }
    }
    return false;
  }

  private boolean feared(int other, int exposures) {
    return hands[other].live() > 0 && view.exposures(other).size() >= exposures;
  }

  /**
   * The chance that an opponent wins on a tile, if it is thrown now.
   *
   * @param other her seat
   * @param kind a kind
   * @return 0 to 0.95, or 0 or 1 where it is known; 0 for a joker, the own seat and a dead hand
   */
  public double winChance(int other, int kind) {
    if (revealed.waits()) {
      return revealed.winsOn(other, kind) ? 1 : 0;
    }
    if (risks == null || revealed.readiness()) {
      return chance(other, kind, win[other], evidence.win());
    }
    return kind >= Tile.NATURALS || other == view.seat() || view.dead(other)
        ? 0
        : Math.min(MOST, risks.chance(other, kind, waited(other, kind)));
  }

  /**
   * The chance that anybody wins on a tile, if it is thrown now: one can do so, whoever else could.
   *
   * @param kind a kind
   * @return 0 to 1; 0 for a joker
   */
  public double winChance(int kind) {
    double nobody = 1;
    for (int other = 0; other < Seats.COUNT; other++) {
      nobody *= 1 - winChance(other, kind);
    }
    return 1 - nobody;
  }

  /**
   * The share of what an opponent may be waiting for that is one kind.
   *
   * @param other her seat
   * @param kind a natural kind
   * @return 0 to 1; 0 where she shows nothing
   */
  public double waited(int other, int kind) {
    return hands[other].waited(kind);
  }

  /**
   * The chance that an opponent lays a tile open, if it is thrown now.
   *
   * @param other her seat
   * @param kind a kind
   * @return 0 to 0.95; 0 for a joker, the own seat and a dead hand
   */
  public double claimChance(int other, int kind) {
    return chance(other, kind, claim[other], evidence.claim());
  }

  private double chance(int other, int kind, double factor, Evidence.Factors factors) {
    if (kind >= Tile.NATURALS || other == view.seat() || view.dead(other)) {
      return 0;
    }
    boolean shows = !view.exposures(other).isEmpty();
    double waited = 1;
    if (shows) {
      waited = settings.exposures() ? hands[other].waited(kind) : UNREAD_SHARE;
    }
    return waited == 0
        ? 0
        : Math.min(MOST, factor * waited * evidence.factor(other, kind, shows, factors));
  }

  /**
   * What throwing a tile risks: the chance that somebody wins on it, times what that costs the
   * thrower by the payments of the table beside what she loses anyway, and the chance that somebody
   * lays it open, times what that is taken to cost.
   *
   * @param kind a kind
   * @param valueWeight how much more a dear line is feared than a cheap one, 0 to 1
   * @param lost what the thrower loses besides, since the game is over, in points
   * @param exposed points that an exposure given to somebody counts for, 0 for nothing
   * @return points, 0 for a joker
   */
  public double cost(int kind, double valueWeight, double lost, double exposed) {
    double cost = 0;
    for (int other = 0; other < Seats.COUNT && kind < Tile.NATURALS; other++) {
      double chance = winChance(other, kind);
      if (chance > 0) {
        double more = hands[other].value(USUAL_VALUE) / USUAL_VALUE - 1;
        double paid = pays(other) * USUAL_VALUE * (1 + valueWeight * more);
        cost += chance * (Math.max(0, paid - stakes.lost(view.wallLeft())) + lost);
      }
    }
    return exposed == 0 ? cost : cost + exposed * given(kind);
  }

  /** What the thrower pays for one point of the line on which an opponent wins. */
  private double pays(int other) {
    boolean one =
        rules.score().oneHand()
            && !view.exposures(other).isEmpty()
            && view.reach(other).lines() == 1;
    return one ? stakes.payingAll() : stakes.throwing();
  }

  /**
   * What rides on the game at the table that was read.
   *
   * @return the stakes
   */
  public Stakes stakes() {
    return stakes;
  }

  /**
   * How many exposures throwing a tile is expected to give.
   *
   * @param kind a kind
   * @return the sum of the chances of the others, 0 for a joker
   */
  public double given(int kind) {
    double given = 0;
    for (int other = 0; other < Seats.COUNT; other++) {
      given += claimChance(other, kind);
    }
    return given;
  }

  /**
   * How many tiles a player holds besides her exposures, when it is not her turn.
   *
   * @param view what the seat knows
   * @param other her seat
   * @return 0 to 13
   */
  public static int concealed(SeatView view, int other) {
    int concealed = RACK;
    for (Exposure exposure : view.exposures(other)) {
      concealed -= exposure.size();
    }
    return concealed;
  }

  /**
   * The most exposures that one opponent shows.
   *
   * @param view what the seat knows
   * @return 0 to 4; dead hands do not count
   */
  public static int mostExposures(SeatView view) {
    int most = 0;
    for (int other = 0; other < Seats.COUNT; other++) {
      if (other != view.seat() && !view.dead(other)) {
        most = Math.max(most, view.exposures(other).size());
      }
    }
    return most;
  }
}
