package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.RecordFile;
import org.tallywall.core.tile.Tile;

/**
 * The decisions of a branch study, counted again from the records of its games by code that knows
 * nothing of how they are found: per square the games with such a decision, their deals, and the
 * tiles left in the wall then.
 */
@Tag("long")
class BranchRecountTest {
  private static final int[] WALLS = {90, 70, 50, 30};

  /** What is expected of one square. */
  private static final class Count {
    private final Set<Long> deals = new HashSet<>();
    private int games;
    private int wall;
  }

  @TempDir Path folder;

  /** All four seats of a game are looked at: none may find a decision in another seat's trials. */
  @Test
  void discards_byExposuresAwayAndWall_areThoseOfTheGamesPlayed() throws IOException {
    run(
        """
        "deals": 40, "records": 40, "branch": { "at": "discard", "player": "watchful",
          "when": { "exposures-on-one-rack": [1, 2], "away": [1, 2, 3, 4], "wall": [90, 70, 50, 30] },
          "options": ["own-need", "safest"] }
        """);
    assertThat(counted(true, List.of(1, 2, 3, 4), false)).hasSizeGreaterThan(10);
  }

  /** Only what brings the hand nearer is a decision about a claim. */
  @Test
  void claims_byAwayAndWall_areThoseThatBringTheHandNearer() throws IOException {
    run(
        """
        "deals": 40, "records": 40, "branch": { "at": "claim", "player": "reckoner",
          "when": { "away": [1, 2, 3, 4, 5], "wall": [90, 70, 50, 30] },
          "options": ["claim", "nothing"] }
        """);
    assertThat(counted(false, List.of(1, 2, 3, 4, 5), true)).hasSizeGreaterThan(10);
  }

  /** One studied seat after the other among other players, sorted by exposures and wall alone. */
  @Test
  void discards_amongOthers_byExposuresAndWall_areThoseOfTheGamesPlayed() throws IOException {
    run(
        """
        "deals": 12, "records": 12, "others": "nearest", "branch": { "at": "discard", "player": "watchful",
          "when": { "exposures-on-one-rack": [1, 2], "wall": [90, 70, 50, 30] },
          "options": ["safest", "own-need"] }
        """);
    assertThat(counted(true, List.of(), false)).hasSize(4);
  }

  /**
   * First pass of a seat that fits: tiles counted on the racks before anybody's pass went round.
   */
  @Test
  void passes_byPassPairsAndJokers_areThoseOfTheGamesPlayed() throws IOException {
    run(
        """
        "deals": 40, "records": 40, "branch": { "at": "pass", "player": "reckoner",
          "when": { "pass": [1, 2, 4], "pairs": [2, 3, 4], "jokers": [0, 1, 2, 3] },
          "options": { "keep": { "player": "reckoner", "passes.keep-pairs": true }, "usual": "reckoner" } }
        """);
    Map<String, Integer> expected = new HashMap<>();
    ConcreteHands hands = new ConcreteHands(CardFile.json("card", Cards.SMALL).orThrow());
    try (RecordFile records = RecordFile.open(folder.resolve("out/records.jsonl.gz"))) {
      for (GameRecord game = records.next(); game != null; game = records.next()) {
        countPasses(new PlainTable(hands, game), game, expected);
      }
    }

    List<String> lines = Files.readAllLines(folder.resolve("out/branch.csv"));
    List<String> columns = Arrays.asList(lines.get(0).split(","));
    assertThat(columns).startsWith("pass", "pairs", "jokers");
    int games = columns.indexOf("games");
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      String square = cells[0] + "/" + cells[1] + "/" + cells[2];
      assertThat(cells[games]).as(square).isEqualTo("" + expected.getOrDefault(square, 0));
    }
    assertThat(expected).containsKeys("1/2/2", "4/2/2");
  }

  private static void countPasses(PlainTable table, GameRecord game, Map<String, Integer> squares) {
    List<String> steps = List.of("right-1", "across-1", "left-1", "left-2", "across-2", "right-2");
    boolean[] done = new boolean[4];
    String last = "";
    for (GameEvent event : game.events()) {
      if (event instanceof GameEvent.Pass pass && !pass.step().equals(last)) {
        last = pass.step();
        int number = steps.indexOf(last) + 1;
        for (int seat = 0; seat < 4; seat++) {
          int[] rack = table.racks[seat];
          int pairs = 0;
          for (int kind = 0; kind < Tile.NATURALS; kind++) {
            pairs += rack[kind] > 1 ? 1 : 0;
          }
          boolean fits =
              List.of(1, 2, 4).contains(number) && pairs >= 2 && pairs <= 4 && rack[Tile.JOKER] < 4;
          if (fits && !done[seat]) {
            done[seat] = true;
            squares.merge(number + "/" + pairs + "/" + rack[Tile.JOKER], 1, Integer::sum);
          }
        }
      }
      table.happens(event);
    }
  }

  private void run(String rest) {
    Cards.small(folder);
    String study =
        "{ \"study\": \"s\", \"card\": \"small.json\", \"seed\": 4717, "
            + "\"primary\": \"points\", "
            + rest
            + "}";
    String file = Cards.write(folder, "study.json", study);
    Typed typed = Typed.run("run", file, "--out", folder.resolve("out").toString());
    assertThat(typed.code()).as(typed.err()).isZero();
  }

  /** Compares, and gives the squares that came up. */
  private Set<String> counted(boolean exposures, List<Integer> aways, boolean claim)
      throws IOException {
    Recount expected = new Recount(exposures, aways, claim);
    ConcreteHands hands = new ConcreteHands(CardFile.json("card", Cards.SMALL).orThrow());
    try (RecordFile records = RecordFile.open(folder.resolve("out/records.jsonl.gz"))) {
      for (GameRecord game = records.next(); game != null; game = records.next()) {
        expected.count(hands, game);
      }
    }
    Map<String, List<String>> found = rows(exposures, !aways.isEmpty());
    found.forEach(
        (square, cells) -> {
          Count count = expected.squares.getOrDefault(square, new Count());
          assertThat(cells.get(0)).as("games in " + square).isEqualTo("" + count.games);
          assertThat(cells.get(1)).as("deals in " + square).isEqualTo("" + count.deals.size());
          if (count.games > 0) {
            assertThat(Double.parseDouble(cells.get(2)))
                .as("wall in " + square)
                .isEqualTo((double) count.wall / count.games, within(1e-6));
          }
        });
    assertThat(found.keySet()).containsAll(expected.squares.keySet());
    return expected.squares.keySet();
  }

  /** Games, deals reached and mean wall of every square, as the file says. */
  private Map<String, List<String>> rows(boolean exposures, boolean away) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("out/branch.csv"));
    List<String> columns = Arrays.asList(lines.get(0).split(",", -1));
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      String square =
          (exposures ? cells[columns.indexOf("exposures-on-one-rack")] : "-")
              + "/"
              + (away ? cells[columns.indexOf("away")] : "-")
              + "/"
              + cells[columns.indexOf("wall")];
      List<String> wanted = new ArrayList<>();
      for (String name : List.of("games", "deals-reached", "mean-wall")) {
        wanted.add(cells[columns.indexOf(name)]);
      }
      rows.put(square, wanted);
    }
    return rows;
  }

  /** Walks through games and notes the first decision of each studied seat that fits a square. */
  private static final class Recount {
    private final Map<String, Count> squares = new LinkedHashMap<>();
    private final boolean exposures;
    private final List<Integer> aways;
    private final boolean claim;
    private boolean[] done;

    Recount(boolean exposures, List<Integer> aways, boolean claim) {
      this.exposures = exposures;
      this.aways = aways;
      this.claim = claim;
    }

    void count(ConcreteHands hands, GameRecord game) {
      PlainTable table = new PlainTable(hands, game);
      int only = game.header().seat();
      done = new boolean[4];
      for (int seat = 0; seat < 4; seat++) {
        done[seat] = only >= 0 && only < 4 && only != seat;
      }
      for (GameEvent event : game.events()) {
        if (event instanceof GameEvent.Discard discard && !claim) {
          note(table, discard.seat(), Tile.JOKER, game.header().deal());
        }
        table.happens(event);
        if (event instanceof GameEvent.Discard discard && claim && discard.tile() != Tile.JOKER) {
          for (int seat = 0; seat < 4; seat++) {
            if (seat != discard.seat() && !table.dead[seat]) {
              note(table, seat, discard.tile(), game.header().deal());
            }
          }
        }
      }
    }

    private void note(PlainTable table, int seat, int offered, long deal) {
      int shown = table.mostExposuresBeside(seat);
      int edge = 0;
      for (int wall : WALLS) {
        edge = table.wallLeft() <= wall ? wall : edge;
      }
      boolean out = done[seat] || edge == 0 || (exposures && shown != 1 && shown != 2);
      if (out || (claim && !helps(table, seat, offered))) {
        return;
      }
      int away = aways.isEmpty() ? 0 : table.away(seat);
      if (aways.isEmpty() || aways.contains(away)) {
        done[seat] = true;
        String place = (exposures ? shown : "-") + "/" + (aways.isEmpty() ? "-" : away);
        Count count = squares.computeIfAbsent(place + "/" + edge, name -> new Count());
        count.games++;
        count.wall += table.wallLeft();
        count.deals.add(deal);
      }
    }

    private static boolean helps(PlainTable table, int seat, int offered) {
      return table.mayExpose(seat, offered)
          && !table.completeWith(seat, offered)
          && table.awayAfterClaim(seat, offered) < table.away(seat);
    }
  }
}
