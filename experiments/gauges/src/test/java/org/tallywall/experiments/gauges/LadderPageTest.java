package org.tallywall.experiments.gauges;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.design.roundrobin.RoundRobinDesign;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * The tables of {@code strategies/README.md} are those of today's ladder, cards and scenes. Where
 * this fails, {@code strategies/ladder} has to be run again.
 */
@Tag("long")
class LadderPageTest {
  private static final Path EXPERIMENTS = Path.of("..");
  private static final Path PAGE = Path.of("../../strategies/README.md");
  private static final List<String> CARDS =
      List.of("saltmarsh-quay", "pebble-cove", "lantern-street", "kite-hill");

  private static Study ladder(String card, long deals) {
    Path file = EXPERIMENTS.resolve("cards/" + card + ".json");
    return StudyFile.read(
        EXPERIMENTS.resolve("studies/ladder.json"),
        new Changes(Optional.of(file), Optional.empty(), Optional.empty(), Optional.of(deals)),
        Catalog.standard());
  }

  private static Map<String, PlayerSpec> players() {
    Map<String, PlayerSpec> players = new LinkedHashMap<>();
    ((RoundRobinDesign) ladder(CARDS.get(0), 1).design())
        .players()
        .forEach(arm -> players.put(arm.name(), arm.player()));
    return players;
  }

  /** The cells of the rows of the first table, by the first word of each. */
  private static Map<String, List<String>> rows() throws IOException {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    String page = Files.readString(PAGE);
    String first = page.substring(page.indexOf("## The ladder"), page.indexOf("### "));
    first
        .lines()
        .filter(line -> line.startsWith("| ") && !line.startsWith("| ---"))
        .map(line -> Arrays.stream(line.split("[|]")).map(String::strip).toList())
        .forEach(cells -> rows.put(cells.get(1).split(" ")[0], cells.subList(1, cells.size())));
    return rows;
  }

  @Test
  void page_isMadeOfTodaysLadderOnTodaysCards() throws IOException {
    String page = Files.readString(PAGE);
    for (String card : CARDS) {
      String name = ladder(card, 1).card().name();
      Matcher deals = Pattern.compile("### " + name + "\n\n([0-9,]+) deals").matcher(page);
      assertThat(deals.find()).as(name).isTrue();
      Study study = ladder(card, Long.parseLong(deals.group(1).replace(",", "")));
      assertThat(page).contains("<!-- study " + study.digest() + " -->");
    }
    List<String> names = new ArrayList<>(List.of("player"));
    names.addAll(players().keySet());
    assertThat(rows().keySet()).containsExactlyInAnyOrderElementsOf(names);
  }

  /** All but rollout, which takes minutes. */
  @Test
  void scenes_arePassedAsThePageSays() throws IOException {
    Map<String, PlayerSpec> quick = players();
    quick.remove("rollout");
    Map<String, List<String>> rows = rows();
    new SceneScores(EXPERIMENTS)
        .of(quick)
        .forEach(
            (name, scores) -> {
              List<String> cells = rows.get(name);
              assertThat(cells.subList(cells.size() - 2, cells.size())).as(name).isEqualTo(scores);
            });
  }
}
