package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Passes as a player would, but with what is known to have been passed: the seat that looks passes
 * what it passed, and the others hand over to it what it got. Tiles that will have to be handed
 * over later are kept until then.
 */
final class PassesPlayed extends ForwardingPlayer implements SeesOpenTable {
  private static final int TILES = 3;

  private final KnownPasses known;
  private final int seat;
  private final int looks;
  private final Rack free = new Rack();
  private OpenTable table;
  private int notChosen;

  /** The passes are played up to the moment that is asked about. */
  static final class Done extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient OpenTable table;

    Done(OpenTable table) {
      super("the passes are played", null, false, false);
      this.table = table;
    }

    /** The table as it lies then. */
    OpenTable table() {
      return table;
    }
  }

  /**
   * A player.
   *
   * @param player who passes
   * @param seat where
   * @param looks the seat that looks
   * @param known what it knows of the passes
   */
  PassesPlayed(Player player, int seat, int looks, KnownPasses known) {
    super(player);
    this.seat = seat;
    this.looks = looks;
    this.known = known;
  }

  @Override
  public void sitAt(OpenTable open) {
    table = open;
    show(open);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    SeatView.PassSeen seen = known.of(step);
    if (seen == null) {
      throw new Done(table);
    }
    int blind = seen.blind().get(seat);
    if (seat == looks) {
      int number = seen.given().size();
      return new PassChoice(pick(view, seen.given(), List.of(), number, random), blind);
    }
    List<Integer> forced = known.handedOver(step, seat);
    if (!holds(view, forced)) {
      forced = List.of();
    }
    PassChoice choice = super.pass(view, step, random);
    notChosen += left(forced, choice.own());
    if (forced.size() == TILES) {
      return new PassChoice(array(forced), 0);
    }
    List<Integer> chosen = new ArrayList<>(forced);
    Arrays.stream(choice.own()).forEach(chosen::add);
    List<Integer> kept = new ArrayList<>(known.handedOverFrom(step, seat));
    forced.forEach(kept::remove);
    return new PassChoice(pick(view, chosen, kept, TILES - blind, random), blind);
  }

  private static int left(List<Integer> forced, int[] chosen) {
    List<Integer> left = new ArrayList<>(forced);
    for (int kind : chosen) {
      left.remove(Integer.valueOf(kind));
    }
    return left.size();
  }

  /**
   * How many tiles were handed over that the player would not have chosen, since this was asked
   * last.
   */
  int notChosen() {
    int count = notChosen;
    notChosen = 0;
    return count;
  }

  private static boolean holds(SeatView view, List<Integer> kinds) {
    Rack wanted = Rack.of(array(kinds));
    Rack rack = new Rack();
    view.copyRack(rack);
    return wanted.isPartOf(rack);
  }

  /** As many tiles as must be passed: those chosen, as far as they are free to go, then others. */
  private int[] pick(
      SeatView view, List<Integer> chosen, List<Integer> kept, int number, RandomStream random) {
    view.copyRack(free);
    for (int kind : kept) {
      if (free.held(kind) > 0) {
        free.remove(kind);
      }
    }
    int[] picked = new int[number];
    int count = 0;
    for (int kind : chosen) {
      if (count < number && free.held(kind) > 0) {
        free.remove(kind);
        picked[count++] = kind;
      }
    }
    free.remove(Tile.JOKER, free.jokers());
    while (count < number) {
      int kind =
          free.total() > 0
              ? free.tiles()[random.below(free.total())]
              : anyLeft(view, picked, count);
      if (free.held(kind) > 0) {
        free.remove(kind);
      }
      picked[count++] = kind;
    }
    return picked;
  }

  /** Some tile that is not picked yet, jokers last. */
  private static int anyLeft(SeatView view, int[] picked, int count) {
    Rack rack = new Rack();
    view.copyRack(rack);
    for (int at = 0; at < count; at++) {
      rack.remove(picked[at]);
    }
    return rack.tiles()[0];
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return known.courtesy() != null && known.made() <= PassStep.LEFT_1.number();
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    if (known.courtesy() == null) {
      throw new Done(table);
    }
    boolean ours = seat % 2 == looks % 2;
    return ours ? known.courtesy().given().size() : super.courtesyNumber(view, random);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    if (seat == looks) {
      return pick(view, known.courtesy().given(), List.of(), number, random);
    }
    List<Integer> forced = known.courtesy().received();
    boolean toOwn = seat == Seats.across(looks);
    return toOwn && holds(view, forced) ? array(forced) : super.courtesyTiles(view, number, random);
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return false;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    throw new Done(table);
  }

  private static int[] array(List<Integer> kinds) {
    List<Integer> copy = new ArrayList<>(kinds);
    return copy.stream().mapToInt(Integer::intValue).toArray();
  }
}
