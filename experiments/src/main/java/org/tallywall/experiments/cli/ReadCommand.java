package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.paper.ReadingPaper;
import org.tallywall.experiments.reading.Draws;
import org.tallywall.experiments.reading.PositionReader;
import org.tallywall.experiments.reading.Reading;
import org.tallywall.experiments.reading.ReadingParts;
import org.tallywall.experiments.reading.ReadingWords;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.words.Listed;
import org.tallywall.strategies.jar.JarTrust;
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
      "  tallywall read my-turn.txt --card my-card.json",
      "  tallywall read my-turn.txt --card my-card.json --html reading.html",
      "A position is typed as for: tallywall help ask",
      "It is a turn or a discard on offer. What others hold is guessed; what is called a fact holds",
      "whatever they hold."
    })
final class ReadCommand implements Callable<Integer> {
  private static final int FEWEST = 100;
  private static final int MOST = 100_000;

  /** In as many guesses players are asked, which takes most of the time. */
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

  @Option(names = "--rules", paramLabel = "FILE", description = "A file of table rules.")
  private Path rules;

  @Option(
      names = "--players",
      paramLabel = "NAMES",
      description =
          "Who sits there: one name for all four seats, or four from East on with commas between;"
              + " watchful unless given. Lines \"plays\" of a sheet override this.")
  private String players;

  @Option(
      names = "--worlds",
      paramLabel = "NUMBER",
      defaultValue = "4000",
      description = "How many guesses of the hidden tiles; ${DEFAULT-VALUE} unless given.")
  private long worlds;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "The seed of the guesses; ${DEFAULT-VALUE} unless given.")
  private Long seed;

  @Option(
      names = "--short",
      description = "Prints three sentences to paste into a message, and no tables.")
  private boolean brief;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description =
          "Also writes a page with the position drawn and a chart of the tiles; takes the place of"
              + " an older such page.")
  private Path html;

  @Option(
      names = "--md",
      paramLabel = "FILE",
      description = "Also writes the same as Markdown to a new file, with its chart beside it.")
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
    papers().check();
    SheetFiles files = new SheetFiles(List.of(sheet), card, console.in());
    TableSetup setup = files.setup(rules);
    PositionSheet position = files.read(setup).get(0);
    if (!position.moment().inPlay()) {
      throw new WrongInputException(
          "read looks at a turn or at a discard on offer; in the passes nobody has shown or thrown"
              + " anything, so each tile that this player cannot see is as likely on one rack as on"
              + " another");
    }
    List<Seated> four =
        new ReviewPlayers(
                roster.catalog(JarTrust.ALL), roster.catalog(trust.named()), setup.hands().card())
            .tables(players, null, position)
            .get(0);
    tell(position, read(position, four), four);
    return Program.DONE;
  }

  private Reading read(PositionSheet position, List<Seated> four) {
    List<Supplier<Player>> makers = four.stream().map(Seated::maker).toList();
    Draws draws = new Draws(seed, (int) worlds, Math.min((int) worlds, TRIED));
    return PatientAsk.ask(
        "one of the players (" + inWords(four) + ")",
        pulse ->
            PositionReader.of(
                position.view(),
                Guesses.USUAL.of(makers, four.stream().map(Seated::kind).toList()),
                pulse.watched(makers.stream().map(Supplier::get).toList()),
                draws));
  }

  /** Who is thought to sit there: one name where all are alike, else each with its seat. */
  private static String inWords(List<Seated> four) {
    List<String> names = four.stream().map(Seated::name).toList();
    if (names.stream().distinct().count() == 1) {
      return names.get(0);
    }
    List<String> seated = new ArrayList<>();
    for (int seat = 0; seat < names.size(); seat++) {
      seated.add(names.get(seat) + " (" + SeatNames.BY_NUMBER.of(seat) + ")");
    }
    return Listed.and(seated);
  }

  private void tell(PositionSheet position, Reading reading, List<Seated> four) {
    ReadingWords words = new ReadingWords(reading, SeatNames.BY_NUMBER, inWords(four));
    ReadingParts parts = new ReadingParts(reading, words, SeatNames.BY_NUMBER);
    String title = "What the others may hold: " + name(position);
    if (brief) {
      String three = String.join(" ", words.first(), words.tiles(), words.basis());
      Words.wrapped(three, "", console.width()).forEach(console::say);
    } else {
      print(title, position, parts);
    }
    ReadingPaper paper = new ReadingPaper(title, position, parts);
    papers().write(paper::page, paper::document, paper::figures, console);
  }

  private PositionPapers papers() {
    return new PositionPapers(html, markdown, ReadingPaper.MAKER);
  }

  private String name(PositionSheet position) {
    String file = String.valueOf(sheet.getFileName());
    return !position.scene().isEmpty()
        ? position.scene()
        : file.equals("-") ? "standard input" : file;
  }

  private void print(String title, PositionSheet position, ReadingParts parts) {
    List<Part> all = new ArrayList<>(List.of(parts.answer()));
    all.add(
        Part.Paragraph.of(
            "Seen from seat %s, %s in the wall: %s."
                .formatted(
                    position.seat(),
                    Words.count(position.view().wallLeft(), "tile", "tiles"),
                    AskedTiles.of(position.view()))));
    all.addAll(ReadingPaper.leftOut(position));
    all.addAll(parts.rest());
    String text =
        ConsoleWriter.text(
            new Document(title, all), none -> Optional.empty(), console.width(), Lettering.UNICODE);
    console.out().print(console.called().in(text));
  }
}
