package org.tallywall.experiments.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.tallywall.core.card.Card;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.CheckedRecords;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.page.GamePage;
import org.tallywall.experiments.page.Rehearsal;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.story.LineNames;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Design;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.results.ResultNames;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.words.Wording;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.jar.JarShelf;
import org.tallywall.strategies.jar.JarTrust;

/** Pages of the first games that a run kept. */
final class GamePages {
  /** How many games get a page; a page takes one to three hundred kilobytes. */
  static final int MOST = 20;

  private static final String FOLDER = "games";

  private final Results results;
  private final StudyCard card;
  private final boolean trustsJars;
  private final Map<String, String> jars;
  private final List<GameRecord> games = new ArrayList<>();
  private Optional<ConcreteHands> hands = Optional.empty();

  GamePages(Results results, StudyCard card, boolean trustsJars) {
    this.trustsJars = trustsJars;
    this.results = results;
    this.card = card;
    this.jars = Manifest.read(results.folder()).map(Manifest::jars).orElse(Map.of());
  }

  /**
   * Reads the games that get a page, and checks them against the rules; nothing is written before.
   *
   * @throws WrongInputException if the file of records is damaged
   * @throws FaultyFileException if it holds something else than games by the rules
   */
  void read() {
    if (records().isPresent() && card.card().isPresent()) {
      hands = Optional.of(new ConcreteHands(card.card().get()));
      games.addAll(games(records().get(), hands.get()));
    }
  }

  /** The file of kept games, if the run kept any. */
  Optional<Path> records() {
    for (String name : List.of("records.jsonl.gz", "records.jsonl")) {
      Path file = results.folder().resolve(name);
      if (Files.isRegularFile(file)) {
        return Optional.of(file);
      }
    }
    return Optional.empty();
  }

  /**
   * Writes the pages.
   *
   * @param writer writes each by its name in the results folder
   * @return ways to them from the report
   */
  List<Link> write(BiConsumer<String, String> writer) {
    List<Link> links = new ArrayList<>();
    if (hands.isEmpty()) {
      return links;
    }
    Catalog players = players();
    for (GameRecord game : games) {
      String name = "game-" + game.header().game() + ".html";
      String page =
          GamePage.text(
              game,
              hands.get(),
              SeatNames.FROM_EAST,
              Rehearsal.of(game, hands.get(), SeatNames.FROM_EAST, players));
      writer.accept(FOLDER + "/" + name, page);
      links.add(new Link(words(game, hands.get().card()), FOLDER + "/" + name));
    }
    return links;
  }

  /** Why some players say nothing on the pages, if that is so. */
  Optional<String> silent() {
    boolean hears = trustsJars || jars.isEmpty() || records().isEmpty();
    return hears
        ? Optional.empty()
        : Optional.of(
            "the pages of games say nothing of why players from jars chose as they did: a jar is a"
                + " program, and runs only with --trust-jars");
  }

  /** The players that there are, with those that the study took from jars, if they may run. */
  private Catalog players() {
    if (jars.isEmpty() || !trustsJars) {
      return Catalog.standard();
    }
    Catalog withJars = Catalog.standard().with(new JarShelf(JarTrust.only(jars)));
    Path file = results.folder().resolve(ResultNames.STUDY);
    try {
      Design design = StudyFile.read(file, Changes.NONE, withJars).design();
      return withJars.with(
          design.seated().stream()
              .map(PlayerSpec::type)
              .filter(type -> type.origin().isPresent())
              .toList());
    } catch (FaultyFileException gone) {
      return Catalog.standard();
    }
  }

  /** Ways to pages that were written before. */
  List<Link> links() {
    List<Link> links = new ArrayList<>();
    for (GameRecord game : games) {
      String target = FOLDER + "/game-" + game.header().game() + ".html";
      if (Files.isRegularFile(results.folder().resolve(target))) {
        links.add(new Link(words(game, card.card().get()), target));
      }
    }
    return links;
  }

  private static List<GameRecord> games(Path file, ConcreteHands hands) {
    List<GameRecord> games = new ArrayList<>();
    try (CheckedRecords records = CheckedRecords.open(file, hands)) {
      while (games.size() < MOST) {
        GameRecord game = records.next();
        if (game == null) {
          break;
        }
        games.add(game);
      }
    } catch (IOException broken) {
      throw new WrongInputException(
          "\"" + file + "\" is damaged: it breaks off or is not packed with gzip");
    }
    return games;
  }

  private static String words(GameRecord game, Card card) {
    GameRecord.Header header = game.header();
    String way = header.arm().isEmpty() ? "" : ", " + Wording.quoted(header.arm());
    String start = "Deal " + header.deal() + way + ": ";
    GameRecord.Win win = game.end().win();
    if (win == null) {
      return start + (game.end().how().equals("void") ? "void" : "a wall game");
    }
    return start
        + SeatNames.FROM_EAST.of(win.seat())
        + " wins with "
        + LineNames.of(card, win.line())
        + (win.from() < 0 ? ", self-picked" : " on a discard")
        + ", "
        + game.end().wall()
        + " tiles left";
  }
}
