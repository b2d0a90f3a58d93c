package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** The tiles of the players while a story is told. It trusts the record and checks nothing. */
public final class StoryTable {
  private final List<Rack> racks = new ArrayList<>();
  private final List<List<Exposure>> exposures = new ArrayList<>();
  private int left;

  /**
   * The table right after the deal.
   *
   * @param game the record
   */
  public StoryTable(GameRecord game) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      racks.add(new Rack());
      exposures.add(new ArrayList<>());
    }
    for (int at = 0; at < Deal.DEALT; at++) {
      racks.get(Deal.dealtTo(at)).add(game.wall().get(at));
    }
    left = game.wall().size() - Deal.DEALT;
  }

  /**
   * The concealed tiles of a player.
   *
   * @param seat 0 to 3
   * @return the rack itself, which goes on changing
   */
  public Rack rack(int seat) {
    return racks.get(seat);
  }

  /**
   * The exposures of a player.
   *
   * @param seat 0 to 3
   * @return in the order made, as they are now
   */
  public List<Exposure> exposures(int seat) {
    return List.copyOf(exposures.get(seat));
  }

  Exposure exposure(int owner, int index) {
    return exposures.get(owner).get(index);
  }

  /**
   * Tiles left in the wall.
   *
   * @return 0 to 99
   */
  public int left() {
    return left;
  }

  /** Jokers among all tiles of a seat. */
  int jokers(int seat) {
    return rack(seat).jokers() + exposures.get(seat).stream().mapToInt(Exposure::jokers).sum();
  }

  /**
   * The four parts of a pass move at once.
   *
   * @param parts one part a seat
   */
  public void pass(List<GameEvent.Pass> parts) {
    for (GameEvent.Pass part : parts) {
      for (int tile : part.own()) {
        rack(part.to()).add(tile);
      }
      for (int tile : part.forwarded()) {
        rack(part.to()).add(tile);
      }
    }
    for (GameEvent.Pass part : parts) {
      part.own().forEach(rack(part.from())::remove);
      part.forwarded().forEach(rack(part.from())::remove);
    }
  }

  /**
   * Two opposite seats pass across.
   *
   * @param courtesy what they gave
   */
  public void courtesy(GameEvent.Courtesy courtesy) {
    int low = courtesy.seats().get(0);
    int high = courtesy.seats().get(1);
    move(courtesy.tiles().get(0), low, high);
    move(courtesy.tiles().get(1), high, low);
  }

  private void move(List<Integer> tiles, int from, int to) {
    for (int tile : tiles) {
      rack(from).remove(tile);
      rack(to).add(tile);
    }
  }

  /**
   * A tile goes from the wall to a rack.
   *
   * @param draw who drew what
   */
  public void draw(GameEvent.Draw draw) {
    rack(draw.seat()).add(draw.tile());
    left--;
  }

  /**
   * A tile leaves a rack.
   *
   * @param discard who threw what
   */
  public void discard(GameEvent.Discard discard) {
    rack(discard.seat()).remove(discard.tile());
  }

  /**
   * Lays a group open.
   *
   * @param claim who claimed what
   * @return the group
   */
  public Exposure claim(GameEvent.Claim claim) {
    Rack rack = rack(claim.seat());
    rack.remove(claim.kind(), claim.size() - 1 - claim.jokers());
    rack.remove(Tile.JOKER, claim.jokers());
    int jokers = claim.jokers() + (claim.tile() == Tile.JOKER ? 1 : 0);
    Exposure laid = new Exposure(claim.kind(), claim.size(), jokers);
    exposures.get(claim.seat()).add(laid);
    return laid;
  }

  /**
   * Redeems a joker.
   *
   * @param exchange who gave what
   * @return the group as it was before
   */
  public Exposure exchange(GameEvent.Exchange exchange) {
    Exposure before = exposure(exchange.owner(), exchange.exposure());
    rack(exchange.seat()).remove(exchange.tile());
    rack(exchange.seat()).add(Tile.JOKER);
    exposures.get(exchange.owner()).set(exchange.exposure(), before.redeemed());
    return before;
  }
}
