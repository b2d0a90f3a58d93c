package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.tile.TileSet;
import org.tallywall.experiments.chances.Waiting;
import org.tallywall.experiments.chances.Wall;
import org.tallywall.experiments.chances.words.WaitWords;
import org.tallywall.experiments.error.WrongInputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Waiting for tiles of which some have been seen. */
@Command(
    name = "wait",
    description = "The chance that a tile you wait for comes while the wall lasts.",
    footer = {
      "Examples:",
      "  tallywall chances wait \"5b 8b\" --seen \"55b\" --wall 40",
      "  tallywall chances wait \"5b 8b\" --seen \"55b\" --wall 20..80/4",
      "  tallywall chances wait --wanted 1..8 --wall 40 --hidden 33"
    })
final class ChancesWaitCommand implements Callable<Integer> {
  private static final int MOST_HIDDEN = 42;

  private final Console console;

  @Parameters(
      arity = "0..1",
      paramLabel = "TILES",
      description = "The kinds you wait for: \"5b 8b N\". A joker is one, if it would do.")
  private String tiles;

  @Option(
      names = "--seen",
      paramLabel = "TILES",
      description = "Every tile of those kinds that you have seen, on your rack or on the table.")
  private String seen;

  @Option(
      names = "--wanted",
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      description = "In place of TILES: how many unseen tiles would do.")
  private NumberRange wanted;

  @Option(
      names = "--wall",
      required = true,
      converter = NumberRange.Reader.class,
      paramLabel = "N",
      description = "How many tiles are left in the wall.")
  private NumberRange wall;

  @Option(
      names = "--hidden",
      paramLabel = "N",
      defaultValue = "39",
      description =
          "How many tiles stand unseen in the other three racks; ${DEFAULT-VALUE} unless given,"
              + " which is right while nobody has exposed any.")
  private Integer hidden;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "How many draws you have left; the wall divided by four unless given.")
  private Integer draws;

  @Option(
      names = "--before-me",
      paramLabel = "N",
      description = "In place of --draws: how many others draw before you, 0 to 3.")
  private Integer before;

  @Mixin private ChancePapers papers;

  ChancesWaitCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    TileSet set = papers.rules().tiles();
    check(set);
    WaitedTiles waited = tiles == null ? null : WaitedTiles.read(tiles, seen, set);
    List<Integer> outs = waited == null ? wanted.values() : List.of(waited.unseen());
    checkRoom(waited, outs.get(outs.size() - 1), set);
    List<Waiting> waits = new ArrayList<>();
    for (int one : wall.values()) {
      outs.forEach(out -> waits.add(new Waiting(out, one, hidden, draws(one))));
    }
    WaitWords words =
        new WaitWords(waited == null ? List.of() : waited.said(), draws == null && before == null);
    papers.give(waits.size() == 1 ? words.one(waits.get(0)) : words.range(waits), console);
    return Program.DONE;
  }

  private int draws(int left) {
    if (draws != null) {
      return draws;
    }
    return before == null ? new Wall(left).byFour() : new Wall(left).drawsAfter(before);
  }

  private void check(TileSet set) {
    ChancesDrawsLeftCommand.checkWall(wall, set.size());
    if ((tiles == null) == (wanted == null)) {
      throw new WrongInputException(
          "say what you wait for, either as tiles, as in \"5b 8b\", or as --wanted 5");
    } else if (tiles == null && seen != null) {
      throw new WrongInputException(
          "--seen goes with the tiles you wait for; with --wanted, count the unseen ones alone");
    } else if (draws != null && before != null) {
      throw new WrongInputException("take one of these: --draws or --before-me");
    } else if (before != null && before >= Wall.PLAYERS) {
      throw new WrongInputException("--before-me takes 0 to 3, not " + before);
    } else if (draws != null && draws > wall.lowest()) {
      throw new WrongInputException(
          "%s draws are more than the %s tiles in the wall".formatted(draws, wall.lowest()));
    } else if (hidden > MOST_HIDDEN) {
      throw new WrongInputException(
          "--hidden takes 0 to %s, as three racks hold no more, not %s"
              .formatted(MOST_HIDDEN, hidden));
    } else if (wanted != null && wanted.several() && wall.several()) {
      throw new WrongInputException("one range at a time: give one number for --wanted or --wall");
    }
  }

  /** What is unseen must have room where it may be, and what was seen must have been somewhere. */
  private void checkRoom(WaitedTiles waited, int outs, TileSet set) {
    if (outs > wall.lowest() + hidden) {
      throw new WrongInputException(
          "%s tiles you wait for cannot be among %s unseen ones (%s in the wall, %s in the racks of the others)"
              .formatted(outs, wall.lowest() + hidden, wall.lowest(), hidden));
    }
    int elsewhere = set.size() - wall.highest() - hidden;
    if (waited != null && waited.seen() > elsewhere) {
      throw new WrongInputException(
          "--seen has %s tiles, but with %s in the wall and %s in the racks of the others you have seen %s"
              .formatted(waited.seen(), wall.highest(), hidden, elsewhere));
    }
  }
}
