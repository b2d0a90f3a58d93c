package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Exposure;

/**
 * What happens in play, in words that stand behind a player's name: "throws a five dot".
 *
 * @param seats what the seats are called
 * @param words how tiles are named
 */
public record PlayWords(SeatNames seats, TileWords words) {
  /**
   * A tile from the wall.
   *
   * @param draw the event
   * @return as in "draws a red"
   */
  public String draw(GameEvent.Draw draw) {
    return "draws " + words.one(draw.tile());
  }

  /**
   * A discard.
   *
   * @param discard the event
   * @return as in "throws a red"
   */
  public String discard(GameEvent.Discard discard) {
    return "throws " + words.one(discard.tile());
  }

  /**
   * A discard of a tile such as was just drawn.
   *
   * @param discard the event
   * @return as in "draws and throws a red"
   */
  public String drawnAndThrown(GameEvent.Discard discard) {
    return "draws and " + discard(discard);
  }

  /**
   * A claim for an exposure.
   *
   * @param claim the event
   * @param laid what is exposed
   * @return two things done one after the other
   */
  public List<String> claim(GameEvent.Claim claim, Exposure laid) {
    return List.of(
        "calls the " + words.tile(claim.tile()),
        "exposes " + words.exposure(laid) + alsoWanted(claim.losers()));
  }

  /**
   * A joker exchange.
   *
   * @param exchange the event
   * @param before the exposure as it was before
   * @return as in "exchanges a five dot for the joker in Cora's kong of five dots"
   */
  public String exchange(GameEvent.Exchange exchange, Exposure before) {
    String group = words.group(before);
    return "exchanges %s for %s joker in %s"
        .formatted(
            words.one(exchange.tile()),
            before.jokers() == 1 ? "the" : "a",
            exchange.owner() == exchange.seat()
                ? "her own " + group
                : seats.whose(exchange.owner(), group));
  }

  /**
   * Mahjong.
   *
   * @param mahjong the event
   * @return as in "declares mahjong on Ann's discard"
   */
  public String mahjong(GameEvent.Mahjong mahjong) {
    String on = mahjong.from() < 0 ? "" : " on " + seats.whose(mahjong.from(), "discard");
    return "declares mahjong" + on + alsoWanted(mahjong.losers());
  }

  /**
   * A hand that is called dead.
   *
   * @param dead the event
   * @return a whole sentence without capital and full stop
   */
  public String dead(GameEvent.Dead dead) {
    return seats.whose(dead.seat(), "hand")
        + " is called dead: no hand on the card can be made from it any more";
  }

  private String alsoWanted(GameEvent.Losers losers) {
    List<String> also = new ArrayList<>();
    wanted(losers.exposures(), "an exposure", also);
    wanted(losers.mahjongs(), "mahjong", also);
    return also.isEmpty() ? "" : " (" + String.join("; ", also) + ")";
  }

  private void wanted(List<Integer> losers, String what, List<String> also) {
    if (!losers.isEmpty()) {
      String names = Sentences.list(losers.stream().map(seats::of).toList());
      also.add(names + " wanted it too, for " + what);
    }
  }
}
