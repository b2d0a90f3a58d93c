package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.school.Kind;
import org.tallywall.experiments.school.SchoolFolder;
import org.tallywall.experiments.school.SchoolQuestion;
import org.tallywall.experiments.study.RulesFile;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says where players lose points. */
@Command(
    name = "school",
    description =
        "Says where players lose points: draws decisions of every kind from simulated games, looks"
            + " at what else could have been done, and writes what that is worth into a folder.",
    footer = {
      "Every decision is stored as soon as it is looked at. Ctrl-C ends it; the same command goes",
      "on where it was. The usual numbers take half an hour and more; a quick look is",
      "  tallywall school --card my-card.json --decisions 4 --games 20 --worlds 4",
      "With the same seed and numbers, the results are the same on any machine."
    })
final class SchoolCommand implements Callable<Integer> {
  private static final long MOST_DECISIONS = 50_000;
  private static final long MOST_GAMES = 1_000_000;
  private static final long MOST_WORLDS = 100_000;

  private final Console console;

  @Option(names = "--card", paramLabel = "FILE", required = true, description = "The card file.")
  private Path card;

  @Option(names = "--rules", paramLabel = "FILE", description = "A file of table rules.")
  private Path rules;

  @Option(
      names = "--players",
      completionCandidates = Candidates.OfPlayers.class,
      paramLabel = "NAMES",
      description =
          "Who plays: one name, or four from East on with commas between; watchful unless given.")
  private String players;

  @Option(
      names = "--decisions",
      paramLabel = "NUMBER",
      defaultValue = "640",
      description =
          "How many decisions to look at, as many of each kind; ${DEFAULT-VALUE} unless given.")
  private long decisions;

  @Option(
      names = "--games",
      paramLabel = "NUMBER",
      defaultValue = "5000",
      description =
          "How many games to draw them from, and to count how many of each kind a game has;"
              + " ${DEFAULT-VALUE} unless given.")
  private long games;

  @Option(
      names = "--worlds",
      paramLabel = "NUMBER",
      defaultValue = "256",
      description =
          "In how many guesses of the hidden tiles the choice made meets another, and again in"
              + " twice as many fresh ones; ${DEFAULT-VALUE} unless given.")
  private long worlds;

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

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the results go; results/school unless given.")
  private Path out = Path.of("results", "school");

  @Mixin private Roster roster;

  @Mixin private Trust trust;

  SchoolCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    int workers = Threads.of(threads);
    int kinds = Kind.values().length;
    int each = (number("--decisions", decisions, MOST_DECISIONS) + kinds - 1) / kinds;
    int counted = number("--games", games, MOST_GAMES);
    int guesses = number("--worlds", worlds, MOST_WORLDS);
    MixedUp.wantsCard(card);
    Card read = CardFile.read(card).orThrow();
    TableRules table = rules == null ? TableRules.STANDARD : RulesFile.read(rules);
    ReviewPlayers seats =
        new ReviewPlayers(roster.catalog(JarTrust.ALL), roster.catalog(trust.named()), read);
    List<Seated> four = seats.table(players);
    SchoolQuestion question =
        new SchoolQuestion(
            new TableSetup(new ConcreteHands(read), table),
            four,
            Guesses.USUAL,
            seed,
            counted,
            each,
            guesses);
    SchoolFolder folder = new SchoolFolder(out, question, seats.written(players));
    folder.check();
    return new SchoolRun(console, question, folder, workers).run();
  }

  private static int number(String option, long given, long most) {
    if (given < 1 || given > most) {
      throw new WrongInputException(
          "%s takes a number from 1 to %s, not %s"
              .formatted(option, Words.grouped(most), Words.grouped(given)));
    }
    return (int) given;
  }
}
