package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.school.Counts;
import org.tallywall.experiments.school.Judged;
import org.tallywall.experiments.school.School;
import org.tallywall.experiments.school.SchoolFile;
import org.tallywall.experiments.school.SchoolQuestion;
import org.tallywall.experiments.study.Patience;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says where players lose points. */
@Command(name = "school", description = "Says where players lose points.")
final class SchoolCommand implements Callable<Integer> {
  private final Console console;

  @Option(names = "--card", paramLabel = "FILE", required = true, description = "The card file.")
  private Path card;

  @Option(names = "--players", paramLabel = "NAMES", description = "Who plays.")
  private String players;

  @Option(names = "--games", paramLabel = "NUMBER", description = "Games.")
  private int games = 5_000;

  @Option(names = "--each", paramLabel = "NUMBER", description = "Decisions of each kind.")
  private int each = 40;

  @Option(names = "--worlds", paramLabel = "NUMBER", description = "Worlds.")
  private int worlds = 256;

  @Option(names = "--seed", paramLabel = "NUMBER", description = "The seed of all luck.")
  private long seed = 1;

  @Option(names = "--threads", paramLabel = "NUMBER", description = "How many threads play.")
  private Integer threads;

  @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "Where to.")
  private Path out;

  @Mixin private Roster roster;

  @Mixin private Trust trust;

  SchoolCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    Card read = CardFile.read(card).orThrow();
    ReviewPlayers seats =
        new ReviewPlayers(roster.catalog(JarTrust.ALL), roster.catalog(trust.named()), read);
    SchoolQuestion question =
        new SchoolQuestion(
            new TableSetup(new ConcreteHands(read), TableRules.STANDARD),
            seats.table(players),
            Guesses.USUAL,
            seed,
            games,
            each,
            worlds);
    School school =
        new School(
            question, RunLimits.of(Threads.of(threads), Patience.USUAL.decisionSeconds()));
    console.interrupts().begins(times -> school.stop());
    Counts counts = school.count(game -> {});
    Files.createDirectories(out);
    Path file = out.resolve("school.csv");
    List<Judged> done = Files.exists(file) ? SchoolFile.read(Files.readString(file)) : List.of();
    StringBuilder whole = new StringBuilder(SchoolFile.head());
    done.forEach(one -> whole.append(SchoolFile.line(one)));
    Files.writeString(file, whole);
    school.look(
        counts,
        done.size(),
        one -> {
          try {
            Files.writeString(
                file, SchoolFile.line(one), StandardCharsets.UTF_8, StandardOpenOption.APPEND);
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
    console.interrupts().over();
    return school.stopped() ? Program.STOPPED : Program.DONE;
  }
}
