package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameEvent;

/** Tells the Charleston. */
final class PassStory {
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

  /** Tells an event; false where it does not belong to the passes. */
  boolean take(GameEvent event) {
    if (event instanceof GameEvent.Pass pass) {
      parts.add(pass);
      if (parts.size() == Seats.COUNT) {
        pass();
      }
    } else if (event instanceof GameEvent.Stop stop) {
      stop(stop.seats());
    } else if (event instanceof GameEvent.Courtesy courtesy) {
      courtesy(courtesy);
    } else {
      return false;
    }
    return true;
  }

  private void pass() {
    heading(PassNames.of(parts.get(0).step()));
    boolean nothing = parts.stream().allMatch(p -> p.own().isEmpty() && p.forwarded().isEmpty());
    if (nothing) {
      say("all four want to pass on what they get, so no tile moves");
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
                  ? "one tile unseen, which is "
                  : Sentences.number(unseen) + " tiles unseen, which are ")
              + words.tiles(pass.forwarded()));
    }
    say(seats.of(pass.from()) + " passes " + String.join(", and ", tiles) + recipient(pass.to()));
  }

  private String recipient(int seat) {
    return ", to " + seats.of(seat);
  }

  private void stop(List<Integer> stoppers) {
    heading("A second round?");
    if (stoppers.isEmpty()) {
      say("nobody stops");
    } else {
      List<String> names = stoppers.stream().map(seats::of).toList();
      say(Sentences.list(names) + (names.size() == 1 ? " stops" : " stop") + " the passes");
    }
  }

  private void courtesy(GameEvent.Courtesy courtesy) {
    if (!courtesyBegun) {
      heading("Courtesy");
      courtesyBegun = true;
    }
    String low = seats.of(courtesy.seats().get(0));
    String high = seats.of(courtesy.seats().get(1));
    String offers =
        "%s offers %s, %s %s"
            .formatted(
                low,
                Sentences.number(courtesy.asked().get(0)),
                high,
                Sentences.number(courtesy.asked().get(1)));
    if (courtesy.tiles().get(0).isEmpty()) {
      say(offers + "; nothing goes across");
    } else {
      say(
          "%s; %s gives %s, %s gives %s"
              .formatted(
                  offers,
                  low,
                  words.tiles(courtesy.tiles().get(0)),
                  high,
                  words.tiles(courtesy.tiles().get(1))));
    }
    table.courtesy(courtesy);
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void say(String sentence) {
    lines.add("  " + Sentences.sentence(sentence));
  }
}
