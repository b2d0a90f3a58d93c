package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.TextFile;
import org.tallywall.experiments.club.ClubAnswer;
import org.tallywall.experiments.club.ClubTally;
import org.tallywall.experiments.club.ClubWords;
import org.tallywall.experiments.club.TablePlay;
import org.tallywall.experiments.club.TallySheet;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.study.RulesFile;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.text.Lettering;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which table of programmed players is most like a club's. */
@Command(
    name = "club",
    description =
        "Says which table of programmed players is most like your club's, by what you counted there.",
    footer = {
      "Print a tally to fill in, then compare it:",
      "  tallywall club --new --card my-card.json",
      "  tallywall club my-tally.csv --card my-card.json --among social,steady --games 200"
    })
final class ClubCommand implements Callable<Integer> {
  private static final int MOST_GAMES = 100_000;

  private final Console console;

  @Parameters(arity = "0..1", paramLabel = "TALLY", description = "What you counted.")
  private Path tally;

  @Option(names = "--new", description = "Prints a tally to fill in, for the families of the card.")
  private boolean fresh;

  @Option(names = "--card", paramLabel = "FILE", required = true, description = "The card file.")
  private Path card;

  @Option(names = "--rules", paramLabel = "FILE", description = "A file of table rules.")
  private Path rules;

  @Option(
      names = "--among",
      paramLabel = "A,B",
      defaultValue = "newcomer,social,nearest,steady,reckoner,bold,cautious,watchful",
      description = "The players to try, four of each at a table; ${DEFAULT-VALUE} unless given.")
  private String among;

  @Option(
      names = "--games",
      paramLabel = "NUMBER",
      defaultValue = "2000",
      description = "Games to play at each table; ${DEFAULT-VALUE} unless given.")
  private int games;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "The same seed gives the same answer; ${DEFAULT-VALUE} unless given.")
  private long seed;

  @Option(
      names = "--threads",
      paramLabel = "NUMBER",
      description = "How many games are played at a time; all processors unless given.")
  private Integer threads;

  @Option(names = "--md", paramLabel = "FILE", description = "Writes the answer as Markdown, too.")
  private Path markdown;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Writes the tables tried for a spreadsheet, too, with every digit.")
  private Path csv;

  @Option(names = "--html", paramLabel = "FILE", description = "Writes a page, too.")
  private Path html;

  ClubCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (fresh == (tally != null)) {
      throw new WrongInputException(
          "name the file of your tally, or have one printed to fill in with --new");
    }
    Card read = CardFile.read(card).orThrow();
    if (fresh) {
      console.out().print(TallySheet.toFill(read));
      return Program.DONE;
    }
    checkFiles();
    if (games < 100 || games > MOST_GAMES) {
      throw new WrongInputException("--games takes a number from 100 to 100,000, not " + games);
    }
    int at = Threads.of(threads);
    LinkedHashMap<String, PlayerSpec> kinds = kinds(read);
    ClubTally counted =
        TallySheet.read(tally.toString(), TextFile.read(tally, "save it as CSV (UTF-8)"), read);
    TableRules table = rules == null ? TableRules.STANDARD : RulesFile.read(rules);
    TablePlay play = new TablePlay(new TableSetup(new ConcreteHands(read), table), seed, games, at);
    ClubWords words = new ClubWords(ClubAnswer.of(counted, kinds, play, seed, kind -> {}), read);
    give(words);
    return Program.DONE;
  }

  private LinkedHashMap<String, PlayerSpec> kinds(Card read) {
    List<String> names = Arrays.stream(among.split(",", -1)).map(String::strip).toList();
    if (names.size() < 2 || new TreeSet<>(names).size() < names.size()) {
      throw new WrongInputException("--among takes two or more players, each once");
    }
    Catalog catalog = Catalog.standard();
    LinkedHashMap<String, PlayerSpec> kinds = new LinkedHashMap<>();
    for (String name : names) {
      PlayerSpec kind = PlayerWord.read(name, catalog, catalog, read);
      if (kind.type().seesEverything()) {
        throw new WrongInputException(
            "\"%s\" sees all racks and the wall, as nobody at a club does; leave it out"
                .formatted(kind.type().id()));
      }
      kinds.put(name, kind);
    }
    return kinds;
  }

  private void checkFiles() {
    List<Path> files = new ArrayList<>();
    for (Path file : new Path[] {markdown, csv, html}) {
      if (file != null) {
        NewFile.refuseExisting(file);
        files.add(file.toAbsolutePath().normalize());
      }
    }
    if (new TreeSet<>(files).size() < files.size()) {
      throw new WrongInputException("two options name the same file; give each its own");
    }
  }

  private void give(ClubWords words) {
    Document document = words.document();
    console
        .out()
        .print(
            ConsoleWriter.text(
                document, figure -> Optional.empty(), console.width(), Lettering.UNICODE));
    if (markdown != null) {
      NewFile.write(markdown, DocumentWriter.text(document, figure -> Optional.empty()), console);
    }
    if (csv != null) {
      NewFile.write(csv, CsvWriter.text(words.tables()), console);
    }
    if (html != null) {
      NewFile.write(html, PageWriter.text(document), console);
    }
  }
}
