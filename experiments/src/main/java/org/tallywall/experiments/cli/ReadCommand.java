package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.reading.Draws;
import org.tallywall.experiments.reading.HiddenTiles;
import org.tallywall.experiments.reading.PositionReader;
import org.tallywall.experiments.reading.Reading;
import org.tallywall.experiments.reading.ReadingPaper;
import org.tallywall.experiments.reading.ReadingWords;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunEndingPlayerException;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.study.Patience;
import org.tallywall.experiments.study.RulesFile;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.text.Lettering;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.WrongPlayerException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what the others may hold in a position. */
@Command(
    name = "read",
    description =
        "Says what the others may hold in a position that you typed, and what each of your tiles"
            + " would risk.",
    footer = {
      "Examples:",
      "  tallywall read my-position.txt --card my-card.json",
      "  tallywall read my-position.txt --card my-card.json --html reading.html",
      "A position is typed as for ask, with \"moment turn\" or \"moment offer\". What others hold is",
      "guessed; what is called a fact holds whatever they hold."
    })
final class ReadCommand implements Callable<Integer> {
  private static final SeatNames SEATS =
      new SeatNames(List.of("seat 0", "seat 1", "seat 2", "seat 3"));

  private static final int FEWEST = 100;
  private static final int MOST = 100_000;

  /** In as many guesses the supposed players are asked, which takes most of the time. */
  private static final int TRIED = 1_000;

  private final Console console;

  @Parameters(
      paramLabel = "SHEET",
      description = "The position's file; - reads it from standard input.")
  private Path sheet;

  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "The card file; card.json beside the position unless given.")
  private Path card;

  @Option(
      names = "--players",
      completionCandidates = Candidates.OfPlayers.class,
      paramLabel = "A,B,C,D",
      defaultValue = "watchful",
      description =
          "Who is supposed to sit there, East first, or one player for all seats;"
              + " ${DEFAULT-VALUE} unless given. \"plays\" lines of the sheet come first.")
  private String players;

  @Option(
      names = "--worlds",
      paramLabel = "NUMBER",
      defaultValue = "4000",
      description = "How many guesses of the hidden tiles; ${DEFAULT-VALUE} unless given.")
  private int worlds;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "The seed of the guesses; ${DEFAULT-VALUE} unless given.")
  private Long seed;

  @Option(names = "--rules", paramLabel = "FILE", description = "A file of table rules.")
  private Path rules;

  @Option(names = "--short", description = "Prints three sentences to paste, and nothing else.")
  private boolean inShort;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Writes the answer as a page for a browser, a new file.")
  private Path html;

  @Option(
      names = "--md",
      paramLabel = "FILE",
      description = "Writes the answer as Markdown, a new file.")
  private Path markdown;

  @Mixin private Roster roster;

  @Mixin private Trust trust;

  ReadCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (worlds < FEWEST || worlds > MOST) {
      throw new WrongInputException("--worlds takes a number from 100 to 100,000, not " + worlds);
    }
    SheetFiles files = new SheetFiles(List.of(sheet), card, console.in());
    TableRules table = rules == null ? TableRules.STANDARD : RulesFile.read(rules);
    TableSetup setup = new TableSetup(new ConcreteHands(files.readCard()), table);
    PositionSheet position = files.read(setup).get(0);
    if (!position.moment().inPlay()) {
      throw new WrongInputException(
          "read looks at a turn or at a discard on offer; in the passes nobody has shown or thrown"
              + " anything, so each tile that this player cannot see is as likely on one rack as on"
              + " another");
    }
    List<PlayerSpec> four = Supposed.read(players, position, roster, trust, setup.hands().card());
    NewFile.refuse(html);
    NewFile.refuse(markdown);
    tell(position, read(position, four), four);
    return Program.DONE;
  }

  private Reading read(PositionSheet position, List<PlayerSpec> four) {
    Pulse pulse = new Pulse();
    List<Supplier<Player>> makers = new ArrayList<>();
    four.forEach(spec -> makers.add(spec::make));
    Draws draws = new Draws(seed, worlds, Math.min(worlds, TRIED));
    try {
      return Patient.wait(
          pulse,
          RunLimits.of(1, Patience.USUAL.decisionSeconds()),
          () ->
              PositionReader.of(
                  position.view(),
                  HiddenTiles.guess(makers),
                  pulse.watched(makers.stream().map(Supplier::get).toList()),
                  draws));
    } catch (IllegalMoveException illegal) {
      throw new FailedException(
          who(four, illegal.seat()) + " answered with " + illegal.getMessage(), illegal);
    } catch (WrongPlayerException told) {
      throw told;
    } catch (RunEndingPlayerException end) {
      throw new FailedException(who(four, end.seat()) + " " + end.getMessage(), end);
    } catch (Throwable broken) {
      throw new FailedException(
          who(four, pulse.seat()) + " broke down; --debug shows where", broken);
    }
  }

  private static String who(List<PlayerSpec> four, int seat) {
    return "the player \"" + four.get(seat).type().id() + "\" at seat " + seat;
  }

  private void tell(PositionSheet position, Reading reading, List<PlayerSpec> four) {
    ReadingWords words = new ReadingWords(reading, SEATS, Supposed.inWords(four));
    Document document =
        new ReadingPaper(reading, words, SEATS).document(title(position), position(position));
    if (html != null) {
      NewFile.write(html, PageWriter.text(document), console);
    }
    if (markdown != null) {
      NewFile.write(markdown, DocumentWriter.text(document, figure -> Optional.empty()), console);
    }
    if (inShort) {
      String three = String.join(" ", words.first(), words.tiles(), words.basis());
      Words.wrapped(three, "", console.width()).forEach(console::say);
    } else if (html == null && markdown == null) {
      String text =
          ConsoleWriter.text(
              document, figure -> Optional.empty(), console.width(), Lettering.UNICODE);
      console.out().print(console.called().in(text));
    }
  }

  private String title(PositionSheet position) {
    return "What the others may hold: "
        + (position.scene().isEmpty() ? sheet.getFileName() : position.scene());
  }

  private static List<String> position(PositionSheet position) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Seen from seat %s, %s in the wall: %s."
            .formatted(
                position.seat(),
                Words.count(position.view().wallLeft(), "tile", "tiles"),
                AskedTiles.of(position.view())));
    if (position.discardsLeftOut() > 0) {
      sentences.add(
          "The sheet leaves out "
              + Words.count(position.discardsLeftOut(), "discard", "discards")
              + "; they count as unseen.");
    }
    return sentences;
  }
}
