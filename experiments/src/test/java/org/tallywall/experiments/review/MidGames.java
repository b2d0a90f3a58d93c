package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Turns in the middle of games, written down as sheets: one of each game, by the number of it. */
final class MidGames {
  private static final int FIRST_WALL = 30;
  private static final int WALLS = 40;

  private MidGames() {}

  /** The positions of so many games; fewer where a game ends before. */
  static List<PositionSheet> of(TableSetup setup, Seated player, int games) {
    List<PositionSheet> sheets = new ArrayList<>();
    for (int game = 0; game < games; game++) {
      List<String> written = new ArrayList<>();
      int wall = FIRST_WALL + game * 7 % WALLS;
      List<Player> four = new ArrayList<>();
      for (int seat = 0; seat < 4; seat++) {
        four.add(new Writes(player.maker().get(), wall, written));
      }
      new Game(setup, four, new GameListener() {})
          .play(Deal.of(20261201, game, setup.rules().tiles()));
      if (!written.isEmpty()) {
        sheets.add(PositionSheet.of("game " + game, written.get(0), setup));
      }
    }
    return sheets;
  }

  /** Writes down the first turn with so few tiles left in the wall that is not won. */
  private static final class Writes extends ForwardingPlayer {
    private final int wall;
    private final List<String> written;

    Writes(Player player, int wall, List<String> written) {
      super(player);
      this.wall = wall;
      this.written = written;
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      if (written.isEmpty()
          && view.wallLeft() <= wall
          && !view.complete()
          && view.drawn() != -1
          && view.exchangesThisTurn() == 0) {
        written.add(sheet(view));
      }
      return super.turn(view, random);
    }
  }

  private static String sheet(SeatView view) {
    Rack rack = new Rack();
    view.copyRack(rack);
    StringBuilder text =
        new StringBuilder(
            "seat %s\nmoment turn drew %s\nwall %s\nrack %s\n"
                .formatted(view.seat(), Tile.symbol(view.drawn()), view.wallLeft(), rack));
    for (int seat = 0; seat < 4; seat++) {
      if (!view.exposures(seat).isEmpty()) {
        text.append("exposed ").append(seat);
        view.exposures(seat).forEach(one -> text.append(' ').append(one));
        text.append('\n');
      }
    }
    return text
        + "discards in order "
        + IntStream.range(0, view.discards())
            .mapToObj(at -> view.discardSeat(at) + ":" + Tile.symbol(view.discardTile(at)))
            .collect(Collectors.joining(" "));
  }
}
