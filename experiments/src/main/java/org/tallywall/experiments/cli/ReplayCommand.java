package org.tallywall.experiments.cli;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.zip.ZipException;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.Breach;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.RecordFile;
import org.tallywall.core.record.Replay;
import org.tallywall.core.text.TextFile;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.page.Commentary;
import org.tallywall.experiments.page.GamePage;
import org.tallywall.experiments.page.PageFile;
import org.tallywall.experiments.page.Rehearsal;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.Catalog;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks recorded games against the rules. */
@Command(
    name = "replay",
    description =
        "Replays recorded games from their walls and checks every event against the rules.",
    footer = "Exit code: 0 if all games agree with the rules, 1 at the first that does not.")
final class ReplayCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "FILE", description = "The records, .jsonl or .jsonl.gz.")
  private Path file;

  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "The card; unless given, the one that study.json beside the records names.")
  private Path card;

  @Option(
      names = "--html",
      paramLabel = "PAGE",
      description =
          "Writes one game as a page to step through in a browser; takes the place of an older"
              + " such page.")
  private Path html;

  @Option(
      names = "--game",
      paramLabel = "NUMBER",
      description =
          "Which game of the file --html or --sheet takes, from 0; the first unless given.")
  private Long number;

  @Mixin private SheetOfStep sheet;

  @Mixin private Roster roster;

  @Mixin private Trust trust;

  ReplayCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (Files.isDirectory(file)) {
      throw new WrongInputException("\"" + file + "\" is a folder; name a file of records in it");
    }
    requireRegular();
    refuseIncompleteRun();
    boolean wanted = sheet.wanted() || html != null;
    if (!wanted && number != null) {
      throw new WrongInputException(
          "--game says which game is shown; write --html PAGE or --sheet FILE too");
    }
    if (html != null) {
      PageFile.refuseOther(html);
    }
    ConcreteHands hands =
        new ConcreteHands(CardFile.read(card == null ? RecordCard.of(file) : card).orThrow());
    String digest = hands.card().digest();
    long agreed = 0;
    Optional<GameRecord> shown = Optional.empty();
    try (RecordFile records = RecordFile.open(file)) {
      for (GameRecord game = records.next(); game != null; game = records.next()) {
        if (!game.header().card().digest().equals(digest)) {
          throw otherCard(game);
        }
        Optional<Breach> breach = Replay.checkDealt(hands, game);
        if (breach.isPresent()) {
          console.say(breach(game, breach.get()));
          console.say(
              Words.count(agreed, "game before it agrees", "games before it agree")
                  + " with the rules");
          return Program.FAILED;
        }
        if (wanted && game.header().game() == wanted()) {
          shown = Optional.of(game);
        }
        agreed++;
      }
    } catch (IOException broken) {
      throw unreadable(broken, agreed);
    }
    if (agreed == 0) {
      throw new WrongInputException("\"" + file + "\" holds no games");
    }
    if (wanted && shown.isEmpty()) {
      throw new WrongInputException(
          "\"%s\" holds no game %s; it has %s"
              .formatted(file, wanted(), Words.count(agreed, "game", "games")));
    }
    shown.ifPresent(game -> show(game, hands));
    console.say(Words.count(agreed, "game agrees", "games agree") + " with the rules");
    return Program.DONE;
  }

  private void requireRegular() {
    try {
      TextFile.requireRegular(file);
    } catch (IOException missing) {
      throw new WrongInputException("there is no file \"" + file + "\"; check its name and folder");
    }
  }

  private void show(GameRecord game, ConcreteHands hands) {
    if (sheet.wanted()) {
      sheet.write(game, hands, 0, console);
    }
    if (html != null) {
      page(game, hands);
    }
  }

  private void page(GameRecord game, ConcreteHands hands) {
    Catalog catalog = roster.catalog(trust.named());
    Commentary aims = Rehearsal.of(game, hands, SeatNames.FROM_EAST, catalog);
    PageFile.write(html, GamePage.text(game, hands, SeatNames.FROM_EAST, aims));
    console.say("Wrote " + html);
  }

  private long wanted() {
    return number == null ? 0 : number;
  }

  private static String breach(GameRecord game, Breach breach) {
    String where = breach.event() < 0 ? "" : ", event " + breach.event();
    return "game %s (deal %s)%s: %s"
        .formatted(game.header().game(), game.header().deal(), where, breach.message());
  }

  private WrongInputException otherCard(GameRecord game) {
    return new WrongInputException(
        "game %s was played on another card than this: \"%s\" with the digest %s; name that card with --card"
            .formatted(
                game.header().game(), game.header().card().card(), game.header().card().digest()));
  }

  private WrongInputException unreadable(IOException broken, long agreed) {
    String why =
        broken instanceof EOFException
            ? "it breaks off"
            : broken instanceof ZipException
                ? "it is not a gzip file, or it is damaged"
                : "it cannot be read";
    return new WrongInputException(
        "\"%s\": %s; %s before that agree with the rules"
            .formatted(file, why, Words.count(agreed, "game", "games")));
  }

  /** Records beside the manifest of a run that has not come to its end are no results yet. */
  private void refuseIncompleteRun() {
    Path folder = file.toAbsolutePath().getParent();
    boolean incomplete =
        Manifest.read(folder)
            .filter(manifest -> manifest.state() != Manifest.State.COMPLETE)
            .isPresent();
    if (incomplete) {
      throw new WrongInputException(
          "the run in \"" + folder + "\" is not complete; go on with it by --on-existing resume");
    }
  }
}
