package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.guide.SheetToFill;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.review.Shortlist;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what each choice in a position is worth. */
@Command(
    name = "review",
    description =
        "Plays games on from a position that you typed and says what each choice is worth.",
    footer = {
      "A position is typed as for: tallywall help ask",
      "Choices of your own, in the words of a sheet:",
      "  --options \"throw 9c; redeem 8c seat 2 then throw E\"",
      "The costliest decisions of East in a recorded game, as a page:",
      "  tallywall review results/my-study/records.jsonl.gz --game 0 --seat 0 --seconds 20"
          + " --html my.html",
      "With the same seed and number of games, the answer is the same on any machine."
    })
final class ReviewCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(
      arity = "0..*",
      paramLabel = "SHEET",
      description = "The position's file; - reads it from standard input.")
  private List<Path> sheets;

  @Option(
      names = "--new",
      completionCandidates = Candidates.OfQuestions.class,
      paramLabel = "QUESTION",
      description = "Prints a position to fill in, as in --new turn.")
  private String toFill;

  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "The card file; card.json beside the position unless given.")
  private Path card;

  @Option(names = "--rules", paramLabel = "FILE", description = "A file of table rules.")
  private Path rules;

  @Option(
      names = "--player",
      completionCandidates = Candidates.OfPlayers.class,
      paramLabel = "NAME",
      defaultValue = "watchful",
      description =
          "Who is asked first: a player's name, or a .json file as a study would write it;"
              + " ${DEFAULT-VALUE} unless given.")
  private String player;

  @Option(
      names = "--players",
      paramLabel = "NAMES",
      description =
          "Who plays on: one name, or four from East on with commas between; watchful unless given."
              + " Lines \"plays\" of a sheet override this.")
  private String players;

  @Option(
      names = "--among",
      paramLabel = "NAMES",
      description =
          "Reviews once at each table of four alike, side by side, as in"
              + " reckoner,watchful,newcomer; time and games are split between them.")
  private String among;

  @Option(
      names = "--options",
      paramLabel = "CHOICES",
      description = "Choices of your own to look at as well, with semicolons between.")
  private String options;

  @Option(
      names = "--seconds",
      paramLabel = "NUMBER",
      description = "How long to play at most; 20 unless given; no limit if --playouts is given.")
  private Long seconds;

  @Option(
      names = "--playouts",
      paramLabel = "NUMBER",
      description = "How many games to play at most, over all choices; one for each at least.")
  private Long playouts;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "The seed of all luck; ${DEFAULT-VALUE} unless given.")
  private long seed;

  @Option(
      names = "--threads",
      paramLabel = "NUMBER",
      description = "How many threads play; one for each processor unless given.")
  private Integer threads;

  @Mixin private ReviewGame game;

  @Mixin private ReviewPapers papers;

  @Mixin private Roster roster;

  @Mixin private Trust trust;

  ReviewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (toFill != null) {
      console.out().print(SheetToFill.of(toFill).text());
      return Program.DONE;
    } else if (sheets == null) {
      throw new WrongInputException(
          "name the position's file; tallywall review --new turn prints one to fill in");
    }
    papers.check();
    if (game.wanted()) {
      return wholeGame();
    }
    ReviewEffort effort = ReviewEffort.of(seconds, playouts, Threads.of(threads));
    if (players != null && among != null) {
      throw new WrongInputException("give either --players or --among, not both");
    }
    List<String> own = options == null ? List.of() : List.of(options.split(";", -1));
    if (own.size() > Shortlist.MOST_NAMED) {
      throw new WrongInputException(
          "--options takes %s choices at most, not %s".formatted(Shortlist.MOST_NAMED, own.size()));
    }
    SheetFiles files = new SheetFiles(sheets, card, console.in());
    TableSetup setup = files.setup(rules);
    ReviewPlayers seats =
        new ReviewPlayers(
            roster.catalog(JarTrust.ALL), roster.catalog(trust.named()), setup.hands().card());
    List<PositionSheet> read = files.read(setup);
    List<ReviewPrinter> printers = new ArrayList<>();
    for (int at = 0; at < read.size(); at++) {
      printers.add(
          new ReviewPrinter(
              console,
              sheets.get(at).toString(),
              read.get(at),
              seats.asked(player),
              seats.tables(players, among, read.get(at)),
              own));
    }
    printers.forEach(ReviewPrinter::prepare);
    boolean stopped = false;
    for (int at = 0; at < printers.size() && !stopped; at++) {
      if (at > 0) {
        console.say("");
      }
      stopped = printers.get(at).review(effort, seed, papers.brief());
    }
    papers.write(
        printers.stream().flatMap(printer -> printer.reviewed().stream()).toList(), console);
    return stopped ? Program.STOPPED : Program.DONE;
  }

  private int wholeGame() {
    if (among != null || options != null || rules != null || papers.ofPositions()) {
      throw new WrongInputException(
          "--among, --options, --rules, --md and --short belong to sheets, not to --game");
    } else if (sheets.size() > 1) {
      throw new WrongInputException("--game takes one file of records, not " + sheets.size());
    }
    Path file = sheets.get(0);
    ReviewEffort effort =
        ReviewEffort.of(ReviewGame.seconds(seconds, playouts), playouts, Threads.of(threads));
    ConcreteHands hands = ReviewGame.hands(file, card);
    Catalog inFiles = roster.catalog(trust.named());
    ReviewPlayers seats = new ReviewPlayers(roster.catalog(JarTrust.ALL), inFiles, hands.card());
    PlayerSpec asked = seats.asked(player);
    List<Seated> table = seats.table(players);
    boolean stopped =
        game.review(
            new ReviewGame.Asked(
                game.read(file, hands), hands, ReviewPrinter.lister(asked), table, seed, inFiles),
            effort,
            papers.html(),
            console);
    return stopped ? Program.STOPPED : Program.DONE;
  }
}
