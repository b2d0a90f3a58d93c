package org.tallywall.experiments.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.design.roundrobin.RoundRobinDesign;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.reports.markdown.MarkdownWriter;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Writes the tables of {@code strategies/README.md}: of ladders that were played before, and of the
 * scenes, into which players are put here. {@code strategies/ladder} does both.
 */
public final class LadderPage {
  private static final String APART = "(the ranges are apart)";

  private final List<Results> ladders;
  private final List<List<Rung>> rungs;
  private final Map<String, PlayerSpec> players;
  private final StringBuilder page = new StringBuilder();

  private LadderPage(List<Results> ladders, Study study) {
    this.ladders = ladders;
    this.rungs = ladders.stream().map(Rung::of).toList();
    this.players = new LinkedHashMap<>();
    for (Arm arm : ((RoundRobinDesign) study.design()).players()) {
      players.put(arm.name(), arm.player());
    }
  }

  /**
   * Writes the tables.
   *
   * @param args the page, the folder {@code experiments}, and the results folders of the ladders;
   *     the first is that by whose order the players are listed
   * @throws IOException if the page cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    MarkedPage marked = new MarkedPage(Path.of(args[0]), "ladder");
    Path experiments = Path.of(args[1]);
    List<Results> ladders = new ArrayList<>();
    for (int at = 2; at < args.length; at++) {
      ladders.add(
          ResultsFolder.read(Path.of(args[at]), new ThisProgram("", StreamKey.STREAM_VERSION)));
    }
    Study study =
        StudyFile.read(
            experiments.resolve("studies/ladder.json"), Changes.NONE, Catalog.standard());
    LadderPage page = new LadderPage(ladders, study);
    marked.write(page.text(new SceneScores(experiments).of(page.players)));
  }

  private String text(Map<String, List<String>> scores) {
    say("## The ladder");
    say(
        "Everyone against everyone on four cards: strength beside the average of these players"
            + " (0.69 more wins twice as often), with the range that would hold the true figure in"
            + " 95 of 100 such runs, and the scenes passed of those of `experiments/scenes`. The"
            + " players stand in the order of the first card. To a player that never wins half a win"
            + " is lent, lest its strength be less than any number."
            + settings());
    table(strengths(scores));
    order();
    for (int card = 0; card < ladders.size(); card++) {
      say("### " + name(card));
      say(
          "%,d deals, each played four times, seed %s."
              .formatted(
                  ladders.get(card).manifest().whole("deals").orElseThrow(),
                  ladders.get(card).manifest().whole("seed").orElseThrow()));
      say("<!-- study " + ladders.get(card).manifest().text("study-digest") + " -->");
      table(one(card));
    }
    return page.toString();
  }

  /** The players that do not play as usual. */
  private String settings() {
    StringBuilder text = new StringBuilder();
    players.forEach(
        (name, player) -> {
          if (!player.changed().isEmpty()) {
            text.append(" Here `").append(name).append("` plays with ");
            text.append(
                player.changed().entrySet().stream()
                    .map(setting -> "`" + setting.getKey() + "` " + setting.getValue())
                    .collect(Collectors.joining(", ")));
            text.append('.');
          }
        });
    return text.toString();
  }

  private void say(String paragraph) {
    page.append(wrapped(paragraph)).append("\n\n");
  }

  private void table(Table table) {
    page.append(MarkdownWriter.grid(table).strip()).append("\n\n");
  }

  private String name(int card) {
    return ladders.get(card).manifest().text("card");
  }

  /** A player as the page names it, one that sees all tiles marked. */
  private String marked(String name) {
    return players.get(name).type().seesEverything() ? name + " (sees all tiles)" : name;
  }

  private Table strengths(Map<String, List<String>> scores) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("player", "The player."));
    for (int card = 0; card < ladders.size(); card++) {
      columns.add(
          Column.decimalInterval("strength-" + card, "logarithm", "Strength on this card.")
              .headed(name(card)));
    }
    columns.add(Column.text("heron", "Scenes passed.").headed("scenes of Heron Reach"));
    columns.add(Column.text("quay", "Scenes passed.").headed("scenes of Saltmarsh Quay"));
    TableBuilder table = Table.builder("ladder", "The ladder").columns(columns);
    for (Rung first : rungs.get(0)) {
      List<Cell> cells = new ArrayList<>();
      cells.add(Cell.text(marked(first.name())));
      for (List<Rung> card : rungs) {
        cells.add(find(card, first.name()).strength().cell());
      }
      scores.get(first.name()).forEach(score -> cells.add(Cell.text(score)));
      table.row(cells);
    }
    return table.build();
  }

  private static Rung find(List<Rung> card, String name) {
    return card.stream().filter(rung -> rung.name().equals(name)).findFirst().orElseThrow();
  }

  private Table one(int card) {
    TableBuilder table =
        Table.builder("card-" + card, name(card))
            .columns(
                Column.text("player", "The player."),
                Column.integer("games", "games", "Games played."),
                Column.decimalInterval("wins", "in 100 games", "Games won.")
                    .headed("games won in 100"),
                Column.decimalInterval("points", "points per 100 games", "Points.")
                    .headed("points per 100 games"));
    for (Rung rung : rungs.get(card)) {
      table.row(
          Cell.text(marked(rung.name())), Cell.whole(rung.games()), rung.wins(), rung.points());
    }
    return table.build();
  }

  /** Whether the order of the rungs depends on the card. */
  private void order() {
    List<Rung> first = rungs.get(0);
    List<String> near = new ArrayList<>();
    for (int above = 0; above + 1 < first.size(); above++) {
      if (overlap(first.get(above), first.get(above + 1))) {
        near.add(first.get(above).name() + " and " + first.get(above + 1).name());
      }
    }
    if (!near.isEmpty()) {
      say(
          "On the first card the ranges of these neighbours overlap, so that their order is not"
              + " told: "
              + String.join("; ", near)
              + ".");
    }
    List<String> swapped = new ArrayList<>();
    for (int card = 1; card < rungs.size(); card++) {
      swaps(card).forEach(swap -> swapped.add("- " + swap));
    }
    if (swapped.isEmpty()) {
      say("The order is the same on all cards.");
    } else {
      say("In another order than on the first card:");
      page.append(String.join("\n", swapped)).append("\n\n");
      if (swapped.stream().noneMatch(swap -> swap.endsWith(APART))) {
        say("Nowhere are the ranges apart: nothing here says that the order depends on the card.");
      }
    }
  }

  private List<String> swaps(int card) {
    List<Rung> first = rungs.get(0);
    List<String> swaps = new ArrayList<>();
    for (int above = 0; above < first.size(); above++) {
      for (int below = above + 1; below < first.size(); below++) {
        Rung upper = find(rungs.get(card), first.get(above).name());
        Rung lower = find(rungs.get(card), first.get(below).name());
        if (upper.strength().value() < lower.strength().value()) {
          swaps.add(
              "%s: %s above %s %s"
                  .formatted(
                      name(card),
                      lower.name(),
                      upper.name(),
                      overlap(lower, upper) ? "(the ranges overlap)" : APART));
        }
      }
    }
    return swaps;
  }

  private static boolean overlap(Rung one, Rung other) {
    return one.strength().low() <= other.strength().high()
        && other.strength().low() <= one.strength().high();
  }

  private static String wrapped(String paragraph) {
    StringBuilder text = new StringBuilder();
    int width = 0;
    for (String word : paragraph.split(" ")) {
      boolean fits = width + 1 + word.length() <= 118;
      text.append(width == 0 ? "" : fits ? " " : "\n").append(word);
      width = (width > 0 && fits ? width + 1 : 0) + word.length();
    }
    return text.toString();
  }
}
