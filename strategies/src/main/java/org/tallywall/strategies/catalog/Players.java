package org.tallywall.strategies.catalog;

import java.util.List;
import org.tallywall.strategies.habit.OverlookHabit;
import org.tallywall.strategies.player.HabitPlayer;
import org.tallywall.strategies.player.KnowingPlayer;
import org.tallywall.strategies.player.NearestPlayer;
import org.tallywall.strategies.player.NewcomerPlayer;
import org.tallywall.strategies.player.OpenTilesPlayer;
import org.tallywall.strategies.player.RandomLegalPlayer;
import org.tallywall.strategies.player.RolloutPlayer;

/** The players that come with the project, weakest first. */
final class Players {
  static final List<PlayerType> ALL =
      List.of(
          new PlayerType(
              "random-legal",
              "plays any legal move, each as likely as the next; the weakest player, to measure others by",
              List.of(),
              RandomLegalPlayer::new),
          new PlayerType(
              "newcomer",
              "sees one way to make one line, calls whatever helps, and never defends",
              OverlookHabit.settings(),
              NewcomerPlayer::new),
          new PlayerType(
              "social",
              "knows a few families of the card, claims at once, overlooks calls and exchanges, and never gives up",
              HabitPlayer.social(),
              KnowingPlayer::habits),
          new PlayerType(
              "nearest",
              "heads for the line that is fewest tiles away and looks at nobody else",
              List.of(),
              NearestPlayer::new),
          new PlayerType(
              "reckoner",
              "judges its rack by the chance of each hand and what it pays, and looks at nobody else unless you set it to",
              HabitPlayer.reckoner(),
              KnowingPlayer::habits),
          new PlayerType(
              "steady",
              "keeps two lines in mind, holds back once three exposures are out, and overlooks little",
              HabitPlayer.steady(),
              KnowingPlayer::habits),
          new PlayerType(
              "bold",
              "plays like watchful, but gives up late",
              HabitPlayer.bold(),
              KnowingPlayer::habits),
          new PlayerType(
              "cautious",
              "plays like watchful, but holds back and gives up early",
              HabitPlayer.cautious(),
              KnowingPlayer::habits),
          new PlayerType(
              "watchful",
              "judges its rack, reads the exposures of the others, and defends step by step",
              HabitPlayer.watchful(),
              KnowingPlayer::habits),
          new PlayerType(
              "sharp",
              "plays like watchful, but judges every tile by all that can be seen, and its chances by what its rack is worth; takes a win in the way that pays most",
              HabitPlayer.sharp(),
              KnowingPlayer::habits),
          new PlayerType(
              "custom",
              "a mix of habits of your own; whatever you leave out is as in reckoner",
              HabitPlayer.reckoner(),
              KnowingPlayer::habits),
          new PlayerType(
              "rollout",
              "plays the rest of the game out in its head before it claims or discards; slow",
              RolloutPlayer.settings(),
              KnowingPlayer::rollout),
          new PlayerType(
              "open-tiles",
              "sees all racks and the wall; not a fair player, but it shows how much is luck",
              List.of(),
              true,
              values -> new OpenTilesPlayer()));

  private Players() {}
}
