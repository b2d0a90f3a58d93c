package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Plays the passes so far once more, from racks as they may have been dealt. The seat that looks
 * gives what it gave and gets what it got; the others pass what their players choose. Where one of
 * them hands tiles over to the seat, she chooses as always, and what she chose was what the seat
 * got: those tiles take the place of the ones chosen, which were never hers.
 */
final class PassesAgain {
  private static final int TILES = 3;

  private final SeatView view;
  private final KnownPasses known;
  private final List<Player> players;
  private final Rack[] racks = new Rack[Seats.COUNT];
  private final List<List<SeatView.PassSeen>> seen = new ArrayList<>();
  private final List<SeatView> views = new ArrayList<>();
  private final List<List<Integer>> out = new ArrayList<>();
  private final Rack pool = new Rack();
  private final Rack aside = new Rack();
  private final int own;

  /**
   * Passes to be played.
   *
   * @param view what the seat that looks knows
   * @param known what it knows of the passes
   * @param players who sits at the four seats
   */
  PassesAgain(SeatView view, KnownPasses known, List<Player> players) {
    this.view = view;
    this.known = known;
    this.players = players;
    own = view.seat();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      racks[seat] = new Rack();
      seen.add(new ArrayList<>());
      views.add(new PassView(view, seat, racks[seat], seen.get(seat)));
      out.add(new ArrayList<>());
    }
  }

  /** The concealed tiles of a seat. */
  Rack rack(int seat) {
    return racks[seat];
  }

  /** The tiles on no rack. */
  Rack pool() {
    return pool;
  }

  /**
   * Deals, and plays the passes.
   *
   * @param random deals, and is handed to the players
   */
  void play(RandomStream random) {
    deal(random);
    for (SeatView.PassSeen pass : known.steps()) {
      step(pass, random);
    }
    if (known.courtesy() != null) {
      courtesy(random);
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      pool.add(kind, aside.held(kind));
    }
    mend();
  }

  private void deal(RandomStream random) {
    seen.forEach(List::clear);
    pool.clear();
    aside.clear();
    Rack before = known.before();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int copies = view.table().rules().tiles().copies(kind);
      pool.add(kind, copies - before.held(kind));
    }
    known.steps().forEach(pass -> layAside(pass.received()));
    if (known.courtesy() != null) {
      layAside(known.courtesy().received());
    }
    int[] tiles = pool.tiles();
    random.shuffle(tiles, tiles.length);
    int next = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      racks[seat].clear();
      while (seat != own && racks[seat].total() < Deal.tilesOf(seat)) {
        pool.remove(tiles[next]);
        racks[seat].add(tiles[next++]);
      }
    }
    racks[own].set(before);
  }

  /** Tiles that the seat will get, unless they were its own before and may come back. */
  private void layAside(List<Integer> kinds) {
    for (int kind : kinds) {
      if (pool.held(kind) > 0) {
        pool.remove(kind);
        aside.add(kind);
      }
    }
  }

  private void step(SeatView.PassSeen pass, RandomStream random) {
    PassStep step = pass.step();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int number = TILES - pass.blind().get(seat);
      int[] chosen =
          seat == own
              ? array(pass.given())
              : players.get(seat).pass(views.get(seat), step, random).own();
      pick(seat, chosen, number, random);
    }
    handOver(step.from(own), pass.received());
    goOnUnseen(pass, random);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      List<Integer> received = new ArrayList<>(out.get(step.from(seat)));
      received.forEach(racks[seat]::add);
      note(seat, step, received, pass.blind());
    }
  }

  private void note(int seat, PassStep step, List<Integer> received, List<Integer> blind) {
    List<Integer> given = new ArrayList<>(out.get(seat));
    Collections.sort(given);
    Collections.sort(received);
    seen.get(seat).add(new SeatView.PassSeen(step, given, received, blind));
  }

  /** Takes as many tiles as must go off a rack: those chosen, as far as they are there. */
  private void pick(int seat, int[] chosen, int number, RandomStream random) {
    Rack rack = racks[seat];
    List<Integer> picked = out.get(seat);
    picked.clear();
    for (int kind : chosen) {
      if (picked.size() < number && rack.held(kind) > 0) {
        rack.remove(kind);
        picked.add(kind);
      }
    }
    while (picked.size() < number) {
      int naturals = rack.total() - rack.jokers();
      int kind = naturals > 0 ? rack.tiles()[random.below(naturals)] : Tile.JOKER;
      rack.remove(kind);
      picked.add(kind);
    }
  }

  /** Makes what a seat passes to the one that looks what that one got. */
  private void handOver(int from, List<Integer> received) {
    List<Integer> passed = out.get(from);
    List<Integer> free = new ArrayList<>(passed);
    for (int kind : received) {
      if (!free.remove(Integer.valueOf(kind)) && !free.isEmpty()) {
        int chosen = free.remove(free.size() - 1);
        if (aside.held(kind) > 0) {
          aside.remove(kind);
          pool.add(chosen);
        } else {
          swap(kind, chosen);
        }
        passed.set(passed.indexOf(chosen), kind);
      } else if (passed.contains(kind) && aside.held(kind) > 0) {
        aside.remove(kind);
        pool.add(kind);
      }
    }
  }

  /** Takes a tile from wherever it is, and lays another there. */
  private void swap(int kind, int other) {
    Rack holder = pool;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      holder = seat != own && racks[seat].held(kind) > 0 ? racks[seat] : holder;
    }
    if (holder.held(kind) > 0) {
      holder.remove(kind);
      holder.add(other);
    }
  }

  /** Tiles that go on unseen are some of those that come in, all as likely. */
  private void goOnUnseen(SeatView.PassSeen pass, RandomStream random) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      List<Integer> incoming = out.get(pass.step().from(seat));
      for (int tile = pass.blind().get(seat); tile > 0; tile--) {
        List<Integer> free = new ArrayList<>(incoming);
        if (seat == own) {
          pass.received().forEach(free::remove);
        }
        if (free.isEmpty()) {
          continue;
        }
        Integer kind = free.get(random.below(free.size()));
        incoming.remove(kind);
        out.get(seat).add(kind);
      }
    }
  }

  private void courtesy(RandomStream random) {
    SeatView.PassSeen pass = known.courtesy();
    int across = Seats.across(own);
    int[] numbers = new int[Seats.COUNT];
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      boolean ours = seat == own || seat == across;
      numbers[seat] =
          ours ? pass.given().size() : players.get(seat).courtesyNumber(views.get(seat), random);
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int number = Math.min(numbers[seat], numbers[Seats.across(seat)]);
      int[] chosen =
          seat == own
              ? array(pass.given())
              : number == 0
                  ? new int[0]
                  : players.get(seat).courtesyTiles(views.get(seat), number, random);
      pick(seat, chosen, number, random);
    }
    handOver(across, pass.received());
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      out.get(Seats.across(seat)).forEach(racks[seat]::add);
    }
  }

  /**
   * Where too many tiles went on unseen for anybody to tell whose they were, racks may be left with
   * a tile too many or too few, or the seat's own with another than it holds: puts that right, with
   * tiles of the pool wherever it can be.
   */
  private void mend() {
    Rack is = new Rack();
    view.copyRack(is);
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      while (racks[own].held(kind) > is.held(kind)) {
        racks[own].remove(kind);
        pool.add(kind);
      }
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      while (racks[own].held(kind) < is.held(kind)) {
        holder(kind).remove(kind);
        racks[own].add(kind);
      }
    }
    even();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int size = Deal.tilesOf(seat);
      while (racks[seat].total() > size) {
        int kind = racks[seat].tiles()[0];
        racks[seat].remove(kind);
        pool.add(kind);
      }
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int size = Deal.tilesOf(seat);
      while (racks[seat].total() < size) {
        int kind = pool.tiles()[pool.total() / 2];
        pool.remove(kind);
        racks[seat].add(kind);
      }
    }
  }

  /**
   * A tile that had to come in, though all of its kind were on their way elsewhere, is there once
   * too often, and another that made room for it is missing: it takes its place.
   */
  private void even() {
    int[] over = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      over[kind] = pool.held(kind) - view.table().rules().tiles().copies(kind);
      for (Rack rack : racks) {
        over[kind] += rack.held(kind);
      }
    }
    int missing = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      for (; over[kind] > 0; over[kind]--) {
        while (over[missing] >= 0) {
          missing++;
        }
        Rack holder = holder(kind);
        holder.remove(kind);
        holder.add(missing);
        over[missing]++;
      }
    }
  }

  private Rack holder(int kind) {
    Rack holder = pool;
    for (int seat = 0; seat < Seats.COUNT && holder.held(kind) == 0; seat++) {
      holder = seat == own ? pool : racks[seat];
    }
    return holder;
  }

  private static int[] array(List<Integer> kinds) {
    int[] array = new int[kinds.size()];
    Arrays.setAll(array, kinds::get);
    return array;
  }
}
