package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameEvent;

/** Tells the Charleston; false for an event that does not belong to the passes. */
final class PassStory implements GameEvent.Cases<Boolean> {
  private final SeatNames seats;
  private final TileWords words;
  private final StoryTable table;
  private final List<String> lines;
  private final List<GameEvent.Pass> parts = new ArrayList<>();
  private boolean courtesyBegun;

  PassStory(SeatNames seats, TileWords words, StoryTable table, List<String> lines) {
    this.seats = seats;
    this.words = words;
    this.table = table;
    this.lines = lines;
  }

  @Override
  public Boolean pass(GameEvent.Pass pass) {
    parts.add(pass);
    if (parts.size() == Seats.COUNT) {
      pass();
    }
    return true;
  }

  private void pass() {
    heading(PassNames.of(parts.get(0).step()));
    boolean nothing = parts.stream().allMatch(p -> p.own().isEmpty() && p.forwarded().isEmpty());
    if (nothing) {
      say(PassNames.ALL_BLIND);
    } else {
      parts.forEach(this::part);
    }
    table.pass(parts);
    parts.clear();
  }

  private void part(GameEvent.Pass pass) {
    List<String> tiles = new ArrayList<>();
    if (!pass.own().isEmpty()) {
      tiles.add(words.tiles(pass.own()));
    }
    int unseen = pass.forwarded().size();
    if (unseen > 0) {
      tiles.add(
          (unseen == 1
                  ? "one unseen tile, which was "
                  : Sentences.number(unseen) + " unseen tiles, which were ")
              + words.tiles(pass.forwarded())
              + ",");
    }
    say(
        seats.of(pass.from())
            + " passes "
            + String.join(" and ", tiles)
            + " to "
            + seats.player(pass.to()));
  }

  @Override
  public Boolean stop(GameEvent.Stop stop) {
    List<Integer> stoppers = stop.seats();
    heading(PassNames.SECOND);
    if (stoppers.isEmpty()) {
      say("nobody stops the Charleston");
    } else {
      List<String> names = stoppers.stream().map(seats::of).toList();
      say(Sentences.list(names) + (names.size() == 1 ? " stops" : " stop") + " the Charleston");
    }
    return true;
  }

  @Override
  public Boolean courtesy(GameEvent.Courtesy courtesy) {
    if (!courtesyBegun) {
      heading("Courtesy");
      courtesyBegun = true;
    }
    String low = seats.of(courtesy.seats().get(0));
    String high = seats.of(courtesy.seats().get(1));
    String offers = offers(low, high, courtesy.asked().get(0), courtesy.asked().get(1));
    if (courtesy.tiles().get(0).isEmpty()) {
      say(offers + ", so no tiles are passed");
    } else {
      say(
          "%s: %s gives %s, and %s gives %s"
              .formatted(
                  offers,
                  low,
                  words.tiles(courtesy.tiles().get(0)),
                  high,
                  words.tiles(courtesy.tiles().get(1))));
    }
    table.courtesy(courtesy);
    return true;
  }

  private static String offers(String low, String high, int ofLow, int ofHigh) {
    String number = Sentences.number(ofLow);
    return ofLow == ofHigh
        ? low + " and " + high + " offer " + number + (ofLow == 0 ? "" : " each")
        : "%s offers %s and %s offers %s".formatted(low, number, high, Sentences.number(ofHigh));
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void say(String sentence) {
    lines.add("  " + Sentences.sentence(sentence));
  }

  @Override
  public Boolean draw(GameEvent.Draw draw) {
    return false;
  }

  @Override
  public Boolean exchange(GameEvent.Exchange exchange) {
    return false;
  }

  @Override
  public Boolean discard(GameEvent.Discard discard) {
    return false;
  }

  @Override
  public Boolean claim(GameEvent.Claim claim) {
    return false;
  }

  @Override
  public Boolean dead(GameEvent.Dead dead) {
    return false;
  }

  @Override
  public Boolean mahjong(GameEvent.Mahjong mahjong) {
    return false;
  }

  @Override
  public Boolean wallGame(GameEvent.WallGame wallGame) {
    return false;
  }

  @Override
  public Boolean voidGame(GameEvent.VoidGame voidGame) {
    return false;
  }
}
