package org.tallywall.strategies.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** What can be seen of a player, once more in plain code. */
final class PlainTells {
  private final Map<String, Double> told = new HashMap<>();

  PlainTells(SeatView view, int other, int live, IntToDoubleFunction wanted) {
    int shown = Math.min(3, view.exposures(other).size());
    double wall = Math.max(10, Math.min(90, view.wallLeft()));
    for (int column = 10; column <= 90; column += 20) {
      double near = Math.max(0, 1 - Math.abs(wall - column) / 20);
      say("shows " + shown + ", wall " + column, near);
    }
    int blind = view.passes().stream().mapToInt(pass -> pass.blind().get(other)).sum();
    say("stopped the passes", view.stoppers().contains(other));
    say("passed blind", blind > 0);
    say("each tile passed blind", blind);
    say("asked across for one", view.courtesyAsked(other) == 1);
    say("asked across for two", view.courtesyAsked(other) == 2);
    say("asked across for three", view.courtesyAsked(other) == 3);
    long redeemed = view.exchanges().stream().filter(one -> one.seat() == other).count();
    say("redeemed a joker", redeemed >= 1);
    say("redeemed two or more", redeemed >= 2);
    int jokers = view.exposures(other).stream().mapToInt(Exposure::jokers).sum();
    say("shows a joker", jokers >= 1);
    say("each further joker shown", jokers == 0 ? 0 : jokers - 1);
    say("claims that lost", view.lostClaims().stream().filter(one -> one.seat() == other).count());
    discards(view, other, wanted);
    say("logarithm of her live hands", shown == 0 || live == 0 ? 0 : Math.log(live));
    say("her hands are all dead", shown > 0 && live == 0);
  }

  private void say(String name, double number) {
    told.put(name, number);
  }

  private void say(String name, boolean so) {
    told.put(name, so ? 1.0 : 0.0);
  }

  /** Goes from the first discard to the last, the tile on offer left out. */
  private void discards(SeatView view, int other, IntToDoubleFunction wanted) {
    List<Integer> hers = new ArrayList<>();
    List<Boolean> fresh = new ArrayList<>();
    List<Integer> before = new ArrayList<>();
    double since = 0;
    double earlier = 0;
    for (int at = 0; at < view.discards() - (view.offered() >= 0 ? 1 : 0); at++) {
      int kind = view.discardTile(at);
      if (view.discardSeat(at) == other) {
        hers.add(kind);
        fresh.add(!before.contains(kind));
        earlier = since;
        since = 0;
      } else {
        since += kind == Tile.JOKER ? 0 : wanted.applyAsDouble(kind);
      }
      before.add(kind);
    }
    say("threw a joker", hers.contains(Tile.JOKER));
    say("threw a flower", hers.contains(Tile.FLOWER));
    List<Integer> five = hers.subList(Math.max(0, hers.size() - 5), hers.size());
    List<Integer> two = hers.subList(Math.max(0, hers.size() - 2), hers.size());
    say("threw a flower lately", five.contains(Tile.FLOWER));
    double newOfFive = share(fresh, 5);
    say("share of her last five that were new on the table", newOfFive);
    say(
        "share of her last five that were new on the table, by the wall",
        newOfFive * view.wallLeft() / 99);
    say("share of her last two that were new on the table", share(fresh, 2));
    say("each discard", hers.size());
    say(
        "wanted tiles thrown lately",
        two.stream().filter(kind -> kind != Tile.JOKER).mapToDouble(wanted::applyAsDouble).sum());
    say("wanted tiles let lie since", since);
    say("wanted tiles let lie before", hers.isEmpty() ? 0 : earlier);
  }

  private static double share(List<Boolean> fresh, int most) {
    List<Boolean> last = fresh.subList(Math.max(0, fresh.size() - most), fresh.size());
    return last.stream().mapToDouble(one -> one ? 1 : 0).average().orElse(0);
  }

  double told(String name) {
    return told.getOrDefault(name, 0.0);
  }

  /** All that is told, by name. */
  Map<String, Double> all() {
    return Map.copyOf(told);
  }
}
