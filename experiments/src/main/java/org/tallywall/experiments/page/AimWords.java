package org.tallywall.experiments.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.experiments.rack.LineDistance;
import org.tallywall.experiments.rack.NearestLines;
import org.tallywall.experiments.rack.RackQuestion;
import org.tallywall.experiments.story.LineNames;
import org.tallywall.experiments.story.NeedWords;
import org.tallywall.experiments.story.TileWords;
import org.tallywall.strategies.reason.Missing;

/**
 * Says what a rack is after: the line that its player aims at, or else the nearest one; how far it
 * is; and what the nearest hand of that line still needs.
 */
final class AimWords {
  private final NearestLines nearest;
  private final TileWords words;
  private final Map<String, List<LineDistance>> seen = new HashMap<>();

  AimWords(ConcreteHands hands, TileWords words) {
    this.nearest = new NearestLines(hands);
    this.words = words;
  }

  /**
   * The sentence for a rack.
   *
   * @param rack the concealed tiles
   * @param exposures the exposures
   * @param aim the line that its player aims at, if it says so
   * @return a sentence without a full stop
   */
  String of(Rack rack, List<Exposure> exposures, OptionalInt aim) {
    String key = rack + " / " + exposures;
    List<LineDistance> all =
        seen.computeIfAbsent(
            key, text -> nearest.all(new RackQuestion(text, rack.copy(), exposures)));
    if (aim.isPresent()) {
      LineDistance line = all.get(aim.getAsInt());
      return "aims at "
          + name(line)
          + line.nearest().map(this::far).orElse(", which cannot be made any more");
    }
    LineDistance best = null;
    for (LineDistance line : all) {
      if (line.nearest().isPresent() && (best == null || away(line) < away(best))) {
        best = line;
      }
    }
    return best == null
        ? "no line can be made any more"
        : "nearest: " + name(best) + far(best.nearest().orElseThrow());
  }

  private static int away(LineDistance line) {
    return line.nearest().orElseThrow().away();
  }

  private static String name(LineDistance line) {
    return LineNames.of(line.line());
  }

  private String far(LineDistance.Nearest found) {
    if (found.away() == 0) {
      return ", complete";
    }
    Missing missing = found.missing();
    return ": %s away, %s"
        .formatted(found.away(), NeedWords.of(words, missing.tiles(), missing.filled()));
  }
}
