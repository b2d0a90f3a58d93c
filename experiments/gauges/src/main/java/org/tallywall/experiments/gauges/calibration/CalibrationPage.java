package org.tallywall.experiments.gauges.calibration;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.gauges.MarkedPage;
import org.tallywall.strategies.read.ReadSettings;

/**
 * Plays games and writes the tables of {@code strategies/CALIBRATION.md}: how often what the
 * players say came true. The same seed and number of games give the same bytes.
 */
public final class CalibrationPage {
  private static final ReadSettings USUAL = ReadSettings.USUAL;

  /** The usual evidence first, then each kind of it turned over, then none. */
  static final List<RiskTally.Way> WAYS =
      List.of(
          new RiskTally.Way("usual", USUAL),
          new RiskTally.Way(
              "no exposures",
              new ReadSettings(false, USUAL.discards(), USUAL.passes(), USUAL.blind())),
          new RiskTally.Way(
              "no discards",
              new ReadSettings(USUAL.exposures(), false, USUAL.passes(), USUAL.blind())),
          new RiskTally.Way(
              "no passes",
              new ReadSettings(USUAL.exposures(), USUAL.discards(), false, USUAL.blind())),
          new RiskTally.Way(
              "blind passes too, 0.1 a tile",
              new ReadSettings(USUAL.exposures(), USUAL.discards(), USUAL.passes(), 0.1)),
          new RiskTally.Way("none of it", new ReadSettings(false, false, false, 0)),
          new RiskTally.Way("all that can be seen", new ReadSettings(true, true, true, 0, true)));

  /** The way that reads all that can be seen. */
  static final int ALL = WAYS.size() - 1;

  private final ConcreteHands card;
  private final StringBuilder page = new StringBuilder();
  private final long seed;
  private final int games;

  private CalibrationPage(ConcreteHands card, long seed, int games) {
    this.card = card;
    this.seed = seed;
    this.games = games;
  }

  /**
   * Plays and writes.
   *
   * @param args the page, the file of the card, the seed, and how many games of each kind
   * @throws IOException if the page cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    MarkedPage marked = new MarkedPage(Path.of(args[0]), "calibration");
    ConcreteHands card = card(Path.of(args[1]));
    marked.write(
        new CalibrationPage(card, Long.parseLong(args[2]), Integer.parseInt(args[3])).text());
  }

  /** The hands of a card. */
  static ConcreteHands card(Path file) {
    return new ConcreteHands(CardFile.read(file).orThrow());
  }

  private String text() {
    page.append(
        String.format(
            Locale.ROOT,
            "Seed %d, deals 0 to %d, %,d games of each kind; card “%s”%n(digest %.19s), usual rules,"
                + " usual settings; random streams of version %d.%n%n",
            seed,
            games - 1,
            games,
            card.card().name(),
            card.card().digest(),
            StreamKey.STREAM_VERSION));
    alone();
    together("reckoner");
    together("watchful");
    return page.toString().replace("\r", "");
  }

  private void alone() {
    CalibrationGames played = new CalibrationGames(card, "reckoner", seed, games);
    HandTally hands = played.hands();
    played.alone(hands);
    say("## The model alone: one `reckoner`, the others never declare");
    String made = "made that very hand";
    page.append(chances(made, hands.that()));
    page.append(chances("won with any hand", hands.any()));
    page.append(CalibrationTables.bins("tiles away", row -> whole(row, 5), made, hands.byAway()));
    page.append(
        CalibrationTables.bins("tiles in the wall", CalibrationPage::range, made, hands.byWall()));
  }

  private void together(String player) {
    CalibrationGames played = new CalibrationGames(card, player, seed, games);
    HandTally hands = played.hands();
    RiskTally risks = new RiskTally(WAYS);
    HopeTally hopes = played.hopes();
    played.together(hands, risks, hopes);
    say("## Four `" + player + "`");
    say("### Hands");
    page.append(chances("made that very hand", hands.that()));
    page.append(chances("won with any hand", hands.any()));
    say("### Winning, by what the rest of the rack is worth");
    page.append(chances("won the game", hopes.won()));
    say("### Wins on a tile thrown");
    page.append(chances("won on it", risks.winBins(0)));
    say("### Wins on a tile thrown, by all that can be seen");
    page.append(chances("won on it so read", risks.winBins(ALL)));
    page.append(CalibrationTables.scores(risks.ways(), risks.winScores()));
    say("### Exposures with a tile thrown");
    page.append(chances("laid it open", risks.claimBins()));
    page.append(CalibrationTables.scores(risks.ways(), risks.claimScores()));
  }

  private static String chances(String what, Bins bins) {
    return CalibrationTables.bins(
        "said between",
        row -> InHundred.plain(100 * row.from()) + " to " + InHundred.plain(100 * row.to()),
        what,
        bins);
  }

  private static String range(Bins.Row row) {
    return row.to() <= 1 ? InHundred.plain(row.from()) + " or more" : within(row);
  }

  private static String within(Bins.Row row) {
    return InHundred.plain(row.from()) + " to " + InHundred.plain(row.to() - 1);
  }

  private static String whole(Bins.Row row, int most) {
    return InHundred.plain(row.from()) + (row.from() >= most ? " or more" : "");
  }

  private void say(String paragraph) {
    page.append(paragraph).append("\n\n");
  }
}
