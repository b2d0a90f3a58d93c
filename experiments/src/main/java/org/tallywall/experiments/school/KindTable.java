package org.tallywall.experiments.school;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.sheet.NotedPlayer;
import org.tallywall.experiments.run.Pulse;

/** A table at which games are played and every decision is heard. For one thread. */
final class KindTable {
  private final SchoolQuestion question;
  private final Pulse pulse;
  private final Heard heard;
  private Game game;

  KindTable(SchoolQuestion question, Pulse pulse, Heard heard) {
    this.question = question;
    this.pulse = pulse;
    this.heard = heard;
  }

  /** Hears a decision. */
  @FunctionalInterface
  interface Heard {
    void decision(
        Kind kind,
        org.tallywall.core.play.SeatView view,
        org.tallywall.core.sheet.Moment moment,
        org.tallywall.core.sheet.Move move);
  }

  private Game seated() {
    List<Player> four = new ArrayList<>();
    for (int seat = 0; seat < question.players().size(); seat++) {
      Supplier<Player> maker = question.players().get(seat).maker();
      four.add(
          new NotedPlayer(
              pulse.watched(maker.get(), seat),
              (view, moment, move) ->
                  Kind.of(view, moment, move)
                      .ifPresent(kind -> heard.decision(kind, view, moment, move))));
    }
    return new Game(question.setup(), four, GameListener.NONE);
  }

  /** Plays a deal. */
  void play(long deal) {
    if (game == null) {
      game = seated();
    }
    game.play(Deal.of(question.seed(), deal, question.setup().rules().tiles()));
  }
}
