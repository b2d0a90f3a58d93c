package org.tallywall.experiments.gauges.guess;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.guess.WeighedTiles;

/** Sheets leave out what they like: order of discards, passes, most discards. */
class SheetGuessesTest {
  private static final Path SCENES = Path.of("../scenes/heron-reach");

  @Test
  void sheets_areGuessedFromWhateverTheySay() throws IOException {
    TableSetup setup =
        new TableSetup(
            new ConcreteHands(CardFile.read(SCENES.resolve("card.json")).orThrow()),
            TableRules.STANDARD);
    PlayerSpec nearest = new PlayerSpec(Catalog.standard().type("nearest").orElseThrow(), Map.of());
    List<Supplier<Player>> players = Collections.nCopies(4, nearest::make);
    WeighedTiles guess = new WeighedTiles(players, Collections.nCopies(4, "nobody known"));
    List<Path> files;
    try (Stream<Path> all = Files.list(SCENES)) {
      files = all.filter(file -> file.toString().endsWith(".txt")).sorted().toList();
    }
    assertThat(files).hasSizeGreaterThan(5);
    for (Path file : files) {
      SeatView view = PositionSheet.read(file, setup).view();
      RandomStream random = new RandomStream(new StreamKey(1, 2, Purpose.ROLLOUT, 0, 0, 3));
      Position position = new Position();
      position.begin(view, random);
      guess.look(view);
      for (int world = 0; world < 3; world++) {
        guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
        noTileTwice(file, view, position);
      }
    }
  }

  /**
   * All hidden racks are full, and no kind lies on racks and in the wall more often than unseen.
   */
  private static void noTileTwice(Path file, SeatView view, Position position) {
    Rack all = new Rack();
    for (int at = 0; at < view.wallLeft(); at++) {
      all.add(position.wall(at));
    }
    for (int seat = 0; seat < 4; seat++) {
      if (seat != view.seat()) {
        int exposed = view.exposures(seat).stream().mapToInt(one -> one.size()).sum();
        assertThat(position.rack(seat).total() + exposed).as("%s", file).isBetween(13, 14);
        for (int tile : position.rack(seat).tiles()) {
          all.add(tile);
        }
      }
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      assertThat(all.held(kind)).as("%s %s", file, kind).isLessThanOrEqualTo(view.unseen(kind));
    }
  }
}
