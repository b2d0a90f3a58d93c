package org.tallywall.strategies.catalog;

import java.util.List;
import org.tallywall.strategies.habit.OverlookHabit;
import org.tallywall.strategies.player.HabitPlayer;
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
              "plays any legal move, all equally likely; the yardstick at the lower end",
              List.of(),
              RandomLegalPlayer::new),
          new PlayerType(
              "newcomer",
              "sees one way to make one line, calls whatever helps and never defends",
              OverlookHabit.settings(),
              NewcomerPlayer::new),
          new PlayerType(
              "nearest",
              "heads for the line that is fewest tiles away and looks at nobody else",
              List.of(),
              NearestPlayer::new),
          new PlayerType(
              "reckoner",
              "judges what its rack is worth by chances and payment, and looks at nobody else",
              HabitPlayer.reckoner(),
              HabitPlayer::new),
          new PlayerType(
              "bold",
              "a watchful player at the bold end: reads the others, but gives up late",
              HabitPlayer.bold(),
              HabitPlayer::new),
          new PlayerType(
              "cautious",
              "a watchful player at the cautious end: holds back and gives up early",
              HabitPlayer.cautious(),
              HabitPlayer::new),
          new PlayerType(
              "watchful",
              "judges its rack, reads the exposures of the others and defends step by step",
              HabitPlayer.watchful(),
              HabitPlayer::new),
          new PlayerType(
              "custom",
              "a mix of habits of your own; what is not set is as in a reckoner",
              HabitPlayer.reckoner(),
              HabitPlayer::new),
          new PlayerType(
              "rollout",
              "plays the rest of the game out from guessed hidden tiles before it claims or"
                  + " discards; slow",
              RolloutPlayer.settings(),
              RolloutPlayer::new),
          new PlayerType(
              "open-tiles",
              "sees all racks and the wall: no way of playing, but an upper bound that shows how"
                  + " much is luck",
              List.of(),
              true,
              values -> new OpenTilesPlayer()));

  private Players() {}
}
