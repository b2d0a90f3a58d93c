package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.RecordJson;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.page.Commentary;
import org.tallywall.experiments.page.GamePage;
import org.tallywall.experiments.page.PageFile;
import org.tallywall.experiments.page.Rehearsal;
import org.tallywall.experiments.store.RecordWriter;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.experiments.story.GameStory;
import org.tallywall.experiments.story.Note;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.SpokenTiles;
import org.tallywall.experiments.story.TileWords;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays one deal and narrates it, or makes a page of it. */
@Command(
    name = "game",
    description = "Plays one deal and narrates it, ready to read aloud in class.",
    footer = {
      "Name a card, a seed and four players, or a study that names them:",
      "  tallywall game --card my-card.json --seed 7 --deal 3 --players nearest,nearest,nearest,nearest",
      "  tallywall game --study my-study.json --deal 3 --html deal.html"
    })
final class GameCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private OneGame.Words words;

  @Option(
      names = "--spoken",
      description = "Names tiles the way they are called at the table: five crak, red, soap.")
  private boolean spoken;

  @Option(
      names = "--names",
      paramLabel = "A,B,C,D",
      description = "What to call the players, East first.")
  private String names;

  @Option(
      names = "--record",
      paramLabel = "FILE",
      description = "Writes a record of the game to a new file, .jsonl or .jsonl.gz.")
  private Path record;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description =
          "Writes the game as a page to step through in a browser, instead of narrating it;"
              + " takes the place of an older such page.")
  private Path html;

  @Option(names = "--reasons", description = "Gives the reason for each choice of a player.")
  private boolean reasons;

  @Mixin private SheetOfStep sheet;

  @Mixin private Roster roster;

  @Mixin private Trust trust;

  GameCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SeatNames seats = names == null ? SeatNames.FROM_EAST : seats(names);
    boolean sheetOnly = sheet.wanted();
    refuseExisting(record);
    if (html != null) {
      PageFile.refuseOther(html);
    }
    if (html != null && record != null && html.toAbsolutePath().equals(record.toAbsolutePath())) {
      throw new WrongInputException("--record and --html name the same file; name two");
    }
    Catalog catalog = roster.catalog(words.ofStudy() ? trust.named() : JarTrust.ALL);
    OneGame game = OneGame.of(words, catalog, roster.catalog(trust.named()));
    List<Note> notes = new ArrayList<>();
    GameRecord played = reasons ? game.playAndNote(notes) : game.play();
    if (record != null) {
      write(played);
    }
    if (html != null) {
      ConcreteHands hands = new ConcreteHands(game.card());
      Commentary said = Rehearsal.of(played, hands, seats, catalog);
      PageFile.write(html, GamePage.text(played, hands, seats, said));
      console.say("Wrote " + html);
    }
    if (sheetOnly) {
      sheet.write(played, new ConcreteHands(game.card()), game.luck(), console);
    } else if (html == null) {
      tell(game, played, seats, notes);
    }
    return Program.DONE;
  }

  private void tell(OneGame game, GameRecord played, SeatNames seats, List<Note> notes) {
    console.say(
        "Deal %s, seed %s, %s"
            .formatted(
                played.header().deal(), played.header().seed(), played.header().card().card()));
    for (int seat = 0; seat < seats.names().size(); seat++) {
      PlayerSpec player = game.players().get(seat);
      String mark = player.mark().map(words -> " (" + words + ")").orElse("");
      console.say("  " + seats.of(seat) + ": " + player.type().id() + mark);
    }
    TileWords tiles = spoken ? new SpokenTiles() : new TypedTiles();
    GameStory.of(played, game.card(), seats, tiles, notes).forEach(this::say);
  }

  private static void refuseExisting(Path file) {
    if (file != null && Files.exists(file)) {
      throw new WrongInputException("\"" + file + "\" exists already; name a new file");
    }
  }

  private void say(String line) {
    String text = line.stripLeading();
    String indent = " ".repeat(line.length() - text.length());
    String further = indent.length() > 4 ? "  " : "    ";
    List<String> lines = Words.wrapped(text, indent, console.width() - further.length());
    console.say(lines.get(0).stripTrailing());
    lines.subList(1, lines.size()).forEach(rest -> console.say(further + rest));
  }

  private void write(GameRecord played) {
    boolean packed = record.getFileName().toString().endsWith(".gz");
    WholeFile.grow(
        record, part -> RecordWriter.write(part, packed, List.of(RecordJson.line(played))));
  }

  private static SeatNames seats(String names) {
    List<String> four = Arrays.stream(names.split(",", -1)).map(String::strip).toList();
    if (four.size() != 4 || four.stream().anyMatch(String::isEmpty)) {
      throw new WrongInputException(
          "--names takes four names with commas between, East first; not \""
              + Shown.word(names)
              + "\"");
    }
    return new SeatNames(four);
  }
}
