package org.tallywall.strategies.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;

/** How likely a player wins on a tile, once more in plain code: only the table is the same. */
final class PlainRisk {
  private static final List<String> TABLE = table();

  private final SeatView view;
  private final int other;
  private final Map<String, Double> told;
  private final IntToDoubleFunction share;
  private final Set<Integer> lately = new HashSet<>();
  private final Set<Integer> earlier = new HashSet<>();
  private final Set<Integer> since = new HashSet<>();
  private final Set<Integer> before = new HashSet<>();
  private final Set<Integer> passed = new HashSet<>();

  PlainRisk(SeatView view, int other, PlainTells told, IntToDoubleFunction share) {
    this.view = view;
    this.other = other;
    this.told = told.all();
    this.share = share;
    int all = view.discards() - (view.offered() >= 0 ? 1 : 0);
    long hers = 0;
    for (int at = 0; at < all; at++) {
      hers += view.discardSeat(at) == other ? 1 : 0;
    }
    long thrown = 0;
    for (int at = 0; at < all; at++) {
      int kind = view.discardTile(at);
      if (view.discardSeat(at) == other) {
        thrown++;
        (hers - thrown < 2 ? lately : earlier).add(kind);
      } else if (thrown == hers) {
        since.add(kind);
      } else if (thrown == hers - 1) {
        before.add(kind);
      }
    }
    readPasses();
  }

  private void readPasses() {
    Map<PassStep, Integer> from =
        Map.of(
            PassStep.RIGHT_1, 3,
            PassStep.ACROSS_1, 2,
            PassStep.LEFT_1, 1,
            PassStep.LEFT_2, 1,
            PassStep.ACROSS_2, 2,
            PassStep.RIGHT_2, 3);
    for (SeatView.PassSeen pass : view.passes()) {
      int giver = (view.seat() + (pass.step() == null ? 2 : from.get(pass.step()))) % 4;
      if (giver == other && pass.blind().get(other) == 0) {
        passed.addAll(pass.received());
      }
    }
  }

  double chance(int kind) {
    Map<String, Double> seen = new HashMap<>(told);
    boolean shows = !view.exposures(other).isEmpty();
    String who = shows ? "shows: " : "closed: ";
    say(seen, who + "threw it lately", lately.contains(kind));
    say(seen, who + "threw it before that", earlier.contains(kind));
    say(seen, who + "let it lie since her last discard", since.contains(kind));
    say(seen, who + "let it lie in the turn before", before.contains(kind));
    say(seen, who + "passed it to the reader", passed.contains(kind));
    say(seen, who + "one lies", view.faceUp(kind) == 1);
    say(seen, who + "two lie", view.faceUp(kind) == 2);
    say(seen, who + "three lie", view.faceUp(kind) > 2);
    say(seen, who + "none is unseen", view.unseen(kind) == 0);
    say(seen, who + "one is unseen", view.unseen(kind) == 1);
    say(seen, who + "a flower", kind == Tile.FLOWER);
    say(seen, who + "a wind or dragon", kind >= 27 && kind <= 33);
    seen.put(who + "logarithm of the lines that use it", Math.log(1 + use(kind)));
    if (shows) {
      double log = Math.log(Math.max(0.0001, share.applyAsDouble(kind)));
      seen.put("share of what she may wait for, logarithm", log);
      seen.put("share of what she may wait for, logarithm squared", log * log);
      say(seen, "share of what she may wait for is nothing", share.applyAsDouble(kind) == 0);
    }
    double sum = 0;
    for (String line : TABLE) {
      String[] row = line.split("\t");
      sum += line.startsWith("#") ? 0 : seen.getOrDefault(row[0], 0.0) * Double.parseDouble(row[1]);
    }
    return 1 - 1 / (1 + Math.exp(sum));
  }

  private static void say(Map<String, Double> seen, String name, boolean so) {
    seen.put(name, so ? 1.0 : 0.0);
  }

  /** Lines of the card that use a tile, by the share of their ways that do. */
  private double use(int kind) {
    ConcreteHands hands = view.table().hands();
    Map<Integer, int[]> ways = new HashMap<>();
    for (int at = 0; at < hands.size(); at++) {
      int[] counts = ways.computeIfAbsent(hands.lineOf(at), line -> new int[2]);
      counts[0]++;
      counts[1] += hands.hand(at).total(kind) > 0 ? 1 : 0;
    }
    return ways.values().stream().mapToDouble(counts -> counts[1] / (double) counts[0]).sum();
  }

  private static List<String> table() {
    try (InputStream table = PlainRisk.class.getResourceAsStream("tile-risk.txt")) {
      return new String(table.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
