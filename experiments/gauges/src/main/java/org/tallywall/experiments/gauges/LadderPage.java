package org.tallywall.experiments.gauges;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
import org.tallywall.reports.tables.RatingNeighbors;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Writes the tables of {@code strategies/README.md}: of ladders that were played before, and of the
 * scenes, into which players are put here. {@code strategies/ladder} does both.
 */
public final class LadderPage {
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
        "Everyone against everyone on several cards: strength beside the average of the players that"
            + " won (of two players 0.69 apart the stronger wins twice as often), with the range"
            + " that would hold the true figure in 95 of 100 such runs, and the scenes passed of"
            + " those of `experiments/scenes`. The players stand in the order of the first card. The"
            + " strengths are those that make the wins likeliest, with Firth's penalty (Biometrika"
            + " 80, 1993), which comes to about half a win for each player in all; a player that"
            + " never won has none."
            + settings());
    table(strengths(scores));
    never();
    new CardDependence(ladders).paragraphs().forEach(this::say);
    for (int card = 0; card < ladders.size(); card++) {
      say("### " + name(card));
      say(
          String.format(
              Locale.ROOT,
              "%,d deals, each played four times, seed %s.",
              ladders.get(card).manifest().whole("deals").orElseThrow(),
              ladders.get(card).manifest().whole("seed").orElseThrow()));
      say("<!-- study " + ladders.get(card).manifest().text("study-digest") + " -->");
      table(one(card));
      String neighbors = new RatingNeighbors(ladders.get(card)).sentences();
      if (!neighbors.isEmpty()) {
        say(neighbors);
      }
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
    page.append(Paragraph.of(paragraph));
  }

  private void table(Table table) {
    page.append(MarkdownWriter.grid(table).strip()).append("\n\n");
  }

  private String name(int card) {
    return ladders.get(card).manifest().text("card");
  }

  /** A player as the page names it, one that sees all tiles marked. */
  private String marked(String name) {
    return players.get(name).mark().map(mark -> name + " (" + mark + ")").orElse(name);
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
        cells.add(find(card, first.name()).cell());
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

  /** The limits of players that won on no deal of a card. */
  private void never() {
    for (Rung first : rungs.get(0)) {
      List<String> limits = new ArrayList<>();
      for (int card = 0; card < rungs.size(); card++) {
        Rung rung = find(rungs.get(card), first.name());
        if (rung.below().isPresent()) {
          limits.add(
              String.format(
                  Locale.ROOT,
                  "in %,d games on the %s, strength below %s",
                  rung.games(),
                  name(card),
                  upwards(rung.below().getAsDouble())));
        }
      }
      if (!limits.isEmpty()) {
        say(
            "`%s` never won: no win %s. A player as strong as the limit would win as large a share of its games as none of its deals allows at most (Clopper and Pearson)."
                .formatted(first.name(), String.join("; ", limits)));
      }
    }
  }

  /** To a tenth, rounded up, so that "below" stays true. */
  private static String upwards(double limit) {
    long tenths = (long) Math.ceil(10 * limit);
    return (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + "." + Math.abs(tenths % 10);
  }
}
