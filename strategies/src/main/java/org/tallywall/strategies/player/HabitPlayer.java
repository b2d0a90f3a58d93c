package org.tallywall.strategies.player;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.sheet.Move;
import org.tallywall.strategies.habit.AimHabit;
import org.tallywall.strategies.habit.ClaimHabit;
import org.tallywall.strategies.habit.ColderHabit;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.DefenseHabit;
import org.tallywall.strategies.habit.DiscardHabit;
import org.tallywall.strategies.habit.JokerHabit;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.Objection;
import org.tallywall.strategies.habit.OverlookHabit;
import org.tallywall.strategies.habit.PassHabit;
import org.tallywall.strategies.habit.ReadHabit;
import org.tallywall.strategies.habit.Stance;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.habit.WinHabit;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * A player made of habits. It judges what racks are worth, reads the exposures of the others, and
 * does what its settings say.
 *
 * <p>As {@code reckoner} it looks at nobody else; as {@code watchful} the steps of defense are on.
 * The same view gives the same answer, lapses apart, which are drawn from the stream that comes
 * with the question.
 */
public final class HabitPlayer implements Player, Defending, Judging {
  private static final int SLACK = 2;
  private static final int PASSES_NAMED = 6;

  private final RackJudge judge;
  private final OpponentReader reader;
  private final PassHabit passes;
  private final ClaimHabit claims;
  private final JokerHabit jokers;
  private final DefenseHabit defense;
  private final DiscardHabit discards;
  private final ColderHabit colder;
  private final WinHabit wins;
  private final OverlookHabit overlooks;
  private final Knowledge knows;
  private Stance last = Stance.OWN_HAND;
  private RackJudge.KindTest thrown = kind -> true;

  /**
   * A player.
   *
   * @param values its settings
   */
  public HabitPlayer(SettingValues values) {
    this(values, Knowledge.none(values));
  }

  /**
   * A player that may know more than its seat.
   *
   * @param values its settings
   * @param knowledge what it knows besides
   */
  HabitPlayer(SettingValues values, Knowledge knowledge) {
    knows = knowledge;
    judge = AimHabit.rackJudge(values, knows);
    RackJudge after = AimHabit.rackJudge(values, knows);
    reader = ReadHabit.reader(values, knows);
    passes = new PassHabit(judge, values);
    claims = new ClaimHabit(judge, after, values);
    jokers = new JokerHabit(after, values);
    defense = new DefenseHabit(values);
    discards = new DiscardHabit(defense, values);
    colder = new ColderHabit(values);
    wins = new WinHabit(values);
    overlooks = new OverlookHabit(values);
  }

  /**
   * The settings of a player that looks at nobody else unless told to.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> reckoner() {
    return HabitPresets.RECKONER;
  }

  /**
   * The settings of a player that reads and defends unless told not to.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> watchful() {
    return HabitPresets.WATCHFUL.settings();
  }

  /**
   * The settings of a watchful player that gives up late.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> bold() {
    return HabitPresets.BOLD.settings();
  }

  /**
   * The settings of a watchful player that holds back and gives up early.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> cautious() {
    return HabitPresets.CAUTIOUS.settings();
  }

  /**
   * The settings of a watchful player that reads all that can be seen and weighs it everywhere.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> sharp() {
    return HabitPresets.SHARP.settings();
  }

  /**
   * The settings of a player who knows a few families, claims at once and never gives up.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> social() {
    return HabitPresets.SOCIAL.settings();
  }

  /**
   * The settings of a sound, plain player who holds back late.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> steady() {
    return HabitPresets.STEADY.settings();
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return wins.takes(view) && !overlooks.win(random);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return passes.pass(view, step);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return passes.stops(view);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return passes.courtesyNumber(view);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return passes.courtesyTiles(view, number);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    if (view.complete()) {
      return declares(view, random) ? wins.claim(view) : ClaimChoice.nothing();
    }
    if (overlooks.call(random) || givenUp(view)) {
      return ClaimChoice.nothing();
    }
    return claims.claim(view);
  }

  /** A hand that was given up claims nothing; in the last wall only one that is near does. */
  private boolean givenUp(SeatView view) {
    if (!defense.isOn()) {
      return false;
    }
    judge.look(view, 0, 0);
    Stance stance = stance(view);
    return stance == Stance.TO_THE_WALL || (stance == Stance.LAST_WALL && judge.least() > 2);
  }

  private Stance stance(SeatView view) {
    return defense.stance(view, OpponentReader.mostExposures(view), judge.least());
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    if (view.complete() && declares(view, random)) {
      return wins.turn(view);
    }
    judge.look(view, SLACK, 0);
    TurnChoice exchange = jokers.exchange(view, judge.worth());
    if (exchange != null && !overlooks.exchange(random)) {
      return exchange;
    }
    last = Stance.OWN_HAND;
    if (reads()) {
      reader.look(view);
      last = stance(view);
    }
    thrown = knows.thrown(view, judge.least());
    int chosen = discards.discard(view, judge, reader, last, thrown);
    if (last != Stance.TO_THE_WALL) {
      int cold = colder.instead(view, judge, reader, chosen);
      chosen = thrown.test(cold) ? cold : chosen;
    }
    boolean defends = last != Stance.OWN_HAND && last != Stance.CAREFUL;
    int instead = jokers.discard(view, judge, chosen, defends);
    return TurnChoice.discard(thrown.test(instead) ? instead : chosen);
  }

  /**
   * Whether a discard is one that it would make at all, as it was asked last.
   *
   * @param choice a choice of a turn
   * @return false for a tile that it never throws while it holds another
   */
  boolean mayThrow(TurnChoice choice) {
    return !(choice instanceof TurnChoice.Discard discard) || thrown.test(discard.tile());
  }

  private boolean reads() {
    return !discards.byNeedAlone() || knows.any() || colder.isOn();
  }

  @Override
  public Stance lastStance() {
    return last;
  }

  @Override
  public int aim(SeatView view) {
    judge.look(view, 1, 0);
    return judge.aim();
  }

  @Override
  public int handInMind(SeatView view) {
    judge.look(view, 1, 0);
    return judge.bestHand();
  }

  @Override
  public int lineThatNeeds(SeatView view, int tile) {
    judge.look(view, SLACK, 0);
    return judge.lineThatNeeds(tile);
  }

  @Override
  public List<Weighed> discards(SeatView view) {
    judge.look(view, SLACK, 0);
    boolean reads = reads();
    Stance stance = Stance.OWN_HAND;
    if (reads) {
      reader.look(view);
      stance = stance(view);
    }
    double worth = judge.worth();
    List<Weighed> all = new ArrayList<>();
    for (int kind : order(view, stance)) {
      double kept = worth == 0 ? 1 : judge.worthWithout(kind) / worth;
      double risk = reads ? reader.winChance(kind) : Weighed.UNREAD;
      all.add(new Weighed(new Move.Discard(kind), kept, risk, Objection.NONE));
    }
    return all;
  }

  private List<Integer> order(SeatView view, Stance stance) {
    RackJudge.KindTest may = knows.thrown(view, judge.least());
    List<Integer> order = new ArrayList<>(discards.order(view, judge, reader, stance, may));
    if (colder.isOn() && stance != Stance.TO_THE_WALL && !order.isEmpty()) {
      Integer first = colder.instead(view, judge, reader, order.get(0));
      if (may.test(first)) {
        order.remove(first);
        order.add(0, first);
      }
    }
    return order;
  }

  @Override
  public List<Weighed> claims(SeatView view) {
    boolean up = givenUp(view);
    List<Weighed> all = new ArrayList<>();
    all.add(new Weighed(new Move.Nothing(), 1, Weighed.UNREAD, Objection.NONE));
    for (Weighed claim : claims.weigh(view)) {
      Objection objection = up ? Objection.GIVEN_UP : claim.objection();
      all.add(new Weighed(claim.move(), claim.worth(), claim.risk(), objection));
    }
    all.sort(
        Comparator.comparing((Weighed one) -> one.objection() != Objection.NONE)
            .thenComparing(one -> -one.worth()));
    return all;
  }

  @Override
  public List<Weighed> passes(SeatView view, PassStep step) {
    return passes.weigh(view, step, PASSES_NAMED);
  }
}
