package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.tile.Tile;

/**
 * A table set up again from a record, event by event, with plain counts; "tiles away" is worked out
 * hand by hand, without the bit rows and meters of the engine.
 */
final class PlainTable {
  /** A group laid open. */
  record Group(int kind, int size, boolean jokers) {}

  final int[][] racks = new int[4][Tile.KINDS];
  final List<List<Group>> open = new ArrayList<>();
  private final List<List<Integer>> shown = new ArrayList<>();
  final boolean[] dead = new boolean[4];
  private final ConcreteHands hands;
  private final List<Integer> wall;
  private int taken;

  PlainTable(ConcreteHands hands, GameRecord game) {
    this.hands = hands;
    this.wall = game.wall();
    for (int seat = 0; seat < 4; seat++) {
      open.add(new ArrayList<>());
      shown.add(new ArrayList<>());
    }
    for (int tile = 0; tile < 48; tile++) {
      racks[tile / 4 % 4][wall.get(taken++)]++;
    }
    for (int tile = 0; tile < 5; tile++) {
      racks[tile % 4][wall.get(taken++)]++;
    }
  }

  int wallLeft() {
    return wall.size() - taken;
  }

  int mostExposuresBeside(int seat) {
    int most = 0;
    for (int other = 0; other < 4; other++) {
      most = other == seat || dead[other] ? most : Math.max(most, open.get(other).size());
    }
    return most;
  }

  void happens(GameEvent event) {
    if (event instanceof GameEvent.Pass pass) {
      move(pass.own(), pass.from(), pass.to());
      move(pass.forwarded(), pass.from(), pass.to());
    } else if (event instanceof GameEvent.Courtesy courtesy) {
      for (int at = 0; at < 2; at++) {
        move(courtesy.tiles().get(at), courtesy.seats().get(at), courtesy.seats().get(1 - at));
      }
    } else if (event instanceof GameEvent.Draw draw) {
      taken++;
      racks[draw.seat()][draw.tile()]++;
    } else if (event instanceof GameEvent.Discard discard) {
      racks[discard.seat()][discard.tile()]--;
    } else if (event instanceof GameEvent.Exchange exchange) {
      exchange(exchange);
    } else if (event instanceof GameEvent.Claim claim) {
      racks[claim.seat()][claim.kind()] -= claim.size() - 1 - claim.jokers();
      racks[claim.seat()][Tile.JOKER] -= claim.jokers();
      open.get(claim.seat()).add(new Group(claim.kind(), claim.size(), claim.jokers() > 0));
      shown.get(claim.seat()).add(claim.jokers());
    } else if (event instanceof GameEvent.Dead gone) {
      dead[gone.seat()] = true;
    }
  }

  private void move(List<Integer> tiles, int from, int to) {
    for (int tile : tiles) {
      racks[from][tile]--;
      racks[to][tile]++;
    }
  }

  private void exchange(GameEvent.Exchange exchange) {
    racks[exchange.seat()][exchange.tile()]--;
    racks[exchange.seat()][Tile.JOKER]++;
    List<Integer> jokers = shown.get(exchange.owner());
    jokers.set(exchange.exposure(), jokers.get(exchange.exposure()) - 1);
    Group group = open.get(exchange.owner()).get(exchange.exposure());
    boolean left = jokers.get(exchange.exposure()) > 0;
    open.get(exchange.owner())
        .set(exchange.exposure(), new Group(group.kind(), group.size(), left));
  }

  int away(int seat) {
    return away(racks[seat], open.get(seat));
  }

  /** Whether the rack with a further tile is a hand. */
  boolean completeWith(int seat, int tile) {
    int[] rack = racks[seat].clone();
    rack[tile]++;
    return away(rack, open.get(seat)) == 0;
  }

  /** Whether the rack could lay a group of three or more with a tile. */
  boolean mayExpose(int seat, int tile) {
    return racks[seat][tile] + racks[seat][Tile.JOKER] >= 2;
  }

  /** The fewest tiles away after any legal claim of a natural tile; a large number without one. */
  int awayAfterClaim(int seat, int tile) {
    int least = Integer.MAX_VALUE;
    int held = 0;
    for (int count : racks[seat]) {
      held += count;
    }
    for (int size = 3; size <= 6; size++) {
      for (int jokers = 0; jokers < size; jokers++) {
        int naturals = size - 1 - jokers;
        boolean there = naturals <= racks[seat][tile] && jokers <= racks[seat][Tile.JOKER];
        if (there && held > size - 1) {
          int[] rack = racks[seat].clone();
          rack[tile] -= naturals;
          rack[Tile.JOKER] -= jokers;
          List<Group> groups = new ArrayList<>(open.get(seat));
          groups.add(new Group(tile, size, jokers > 0));
          least = Math.min(least, away(rack, groups));
        }
      }
    }
    return least;
  }

  /** Over all hands that contain the groups; a large number where none does. */
  private int away(int[] rack, List<Group> groups) {
    int least = Integer.MAX_VALUE;
    for (int at = 0; at < hands.size(); at++) {
      Line line = hands.line(hands.lineOf(at));
      boolean barred = groups.stream().anyMatch(Group::jokers) && !line.terms().jokers();
      if (!barred && (groups.isEmpty() || !line.concealed())) {
        least = Math.min(least, away(hands.hand(at), line.terms().jokers(), rack, groups));
      }
    }
    return least;
  }

  private static int away(ConcreteHand hand, boolean jokers, int[] rack, List<Group> laid) {
    int[] inGroups = new int[Tile.NATURALS];
    List<Group> left = new ArrayList<>(laid);
    for (int at = 0; at < hand.groups(); at++) {
      int kind = hand.groupKind(at);
      int size = hand.groupSize(at);
      boolean open = false;
      for (int one = 0; one < left.size() && !open; one++) {
        open = left.get(one).kind() == kind && left.get(one).size() == size;
        if (open) {
          left.remove(one);
        }
      }
      inGroups[kind] += open ? 0 : size;
    }
    if (!left.isEmpty()) {
      return Integer.MAX_VALUE;
    }
    int missing = 0;
    int gaps = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int loose = Math.min(rack[kind], hand.loose(kind));
      int grouped = Math.min(rack[kind] - loose, inGroups[kind]);
      missing += hand.loose(kind) - loose;
      gaps += inGroups[kind] - grouped;
    }
    return missing + Math.max(0, gaps - (jokers ? rack[Tile.JOKER] : 0));
  }
}
