package org.tallywall.core.record;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.text.FaultyFileException;

/**
 * Reads a file of records and replays each one: what comes out is a game that the rules allow, from
 * the wall that its seed gives. Whoever tells, shows or counts games that are read from a file
 * takes them from here and need not mistrust them.
 */
public final class CheckedRecords implements Closeable {
  private final RecordFile records;
  private final ConcreteHands hands;

  private CheckedRecords(RecordFile records, ConcreteHands hands) {
    this.records = records;
    this.hands = hands;
  }

  /**
   * Opens a file.
   *
   * @param file the file
   * @param hands the card with which the games were played
   * @return the open file
   * @throws IOException if it cannot be read
   * @throws FaultyFileException if it is a folder, a device or a pipe
   */
  public static CheckedRecords open(Path file, ConcreteHands hands) throws IOException {
    return new CheckedRecords(RecordFile.open(file), hands);
  }

  /**
   * The next game.
   *
   * @return its record, or null at the end
   * @throws IOException if the file cannot be read on
   * @throws FaultyFileException if the line is no record, or breaks the rules
   */
  public GameRecord next() throws IOException {
    GameRecord game = records.next();
    if (game != null) {
      Optional<Breach> breach = Replay.checkDealt(hands, game);
      if (breach.isPresent()) {
        throw new FaultyFileException(records.place(), said(game, breach.get()));
      }
    }
    return game;
  }

  private static String said(GameRecord game, Breach breach) {
    String where = breach.event() < 0 ? "" : ", event " + breach.event();
    return "game "
        + game.header().game()
        + " (deal "
        + game.header().deal()
        + ")"
        + where
        + " breaks the rules: "
        + breach.message();
  }

  @Override
  public void close() throws IOException {
    records.close();
  }
}
