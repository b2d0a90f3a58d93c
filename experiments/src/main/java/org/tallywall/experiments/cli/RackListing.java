package org.tallywall.experiments.cli;

import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.rack.LineDistance;
import org.tallywall.experiments.rack.RackQuestion;
import org.tallywall.experiments.story.NeedWords;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.reason.Missing;

/** Prints the nearest lines of a rack for a person. */
final class RackListing {
  private static final int USUALLY_SHOWN = 10;
  private static final String INDENT = "        ";

  private final Console console;
  private final boolean all;

  RackListing(Console console, boolean all) {
    this.console = console;
    this.all = all;
  }

  void print(RackQuestion question, List<LineDistance> sorted) {
    console.say(question.text().strip());
    if (sorted.isEmpty()) {
      console.say("  No line of the card fits these exposures.");
    }
    int shown = all ? sorted.size() : Math.min(USUALLY_SHOWN, sorted.size());
    sorted.subList(0, shown).forEach(this::print);
    if (shown < sorted.size()) {
      console.say("");
      console.say(
          "  "
              + Words.count(sorted.size() - shown, "line", "lines")
              + " further away; --all shows all");
    }
    console.say("");
  }

  private void print(LineDistance distance) {
    Line line = distance.line();
    LineDistance.Nearest nearest = distance.nearest().orElseThrow();
    console.say("");
    console.say(
        "  %s  %s of 14 held, %s; %s that near; worth %s%s%s"
            .formatted(
                line.id(),
                nearest.held(),
                nearest.away() == 0 ? "complete" : nearest.away() + " away",
                Words.count(nearest.ways(), "way", "ways"),
                line.value(),
                line.concealed() ? ", concealed" : "",
                line.say().isEmpty() ? "" : "  " + Words.quoted(line.say())));
    console.say(INDENT + nearest.example());
    if (nearest.away() > 0) {
      console.say(INDENT + "needs " + needs(nearest.missing()));
    }
  }

  private static String needs(Missing missing) {
    String natural = NeedWords.rack(missing.natural()).toString();
    boolean onlyJokers = missing.open().stream().allMatch(kind -> kind == Tile.JOKER);
    String open = NeedWords.rack(missing.open()) + (onlyJokers ? "" : " (or jokers)");
    if (missing.open().isEmpty()) {
      return natural + " (no jokers)";
    }
    return (natural.isEmpty() ? "" : natural + " (no jokers) and ")
        + open
        + NeedWords.byJoker(missing.filled());
  }
}
