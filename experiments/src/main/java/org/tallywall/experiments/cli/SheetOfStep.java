package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.decisions.Decision;
import org.tallywall.experiments.decisions.Decisions;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.page.StepNumbers;
import picocli.CommandLine.Option;

/** Writes what a player knew at a step of a game as a position sheet. */
final class SheetOfStep {
  /** What to say of a game that takes another course. */
  static final String OTHER_LUCK =
      "the game cannot be gone through again from its record; it was played with luck that the"
          + " record does not tell";

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = {
        "Writes what the player knew who decides after a step of the game, as a position to ask or",
        "to review; needs --step."
      })
  private Path file;

  @Option(
      names = "--step",
      paramLabel = "NUMBER",
      description = "The step for --sheet, by its number in the address of the game's page.")
  private Integer step;

  @Option(
      names = "--asked",
      paramLabel = "SEAT",
      description = "Whose knowledge --sheet writes, where several players decide: 0 (East) to 3.")
  private Integer asked;

  /** Whether a sheet is wanted. Refuses what does not go together before any work is done. */
  boolean wanted() {
    if (file == null && (step != null || asked != null)) {
      throw new WrongInputException(
          (step == null ? "--asked" : "--step") + " belongs to --sheet; write --sheet FILE too");
    } else if (file != null && step == null) {
      throw new WrongInputException(
          "--sheet needs --step NUMBER, the step's number in the address of the game's page");
    } else if (asked != null && (asked < 0 || asked >= Seats.COUNT)) {
      throw new WrongInputException("--asked takes a seat from 0 (East) to 3, not " + asked);
    }
    return file != null;
  }

  /** Writes the sheet. */
  void write(GameRecord game, ConcreteHands hands, int luck, Console console) {
    List<Decision> all =
        Decisions.of(game, hands, luck).orElseThrow(() -> new WrongInputException(OTHER_LUCK));
    Decision decision = decision(game, all);
    NewFile.write(file, text(game, decision), console);
    console.say(
        "What seat %s knew after step %s, asked: %s. In the game: %s."
            .formatted(decision.seat(), step, decision.moment().text(), chosen(decision)));
  }

  private Decision decision(GameRecord game, List<Decision> all) {
    StepNumbers steps = new StepNumbers(game);
    if (step < 1 || step > steps.last()) {
      throw new WrongInputException(
          "--step takes a number from 1 to %s in this game, not %s".formatted(steps.last(), step));
    }
    List<Decision> here = all.stream().filter(one -> steps.after(one.events()) == step).toList();
    List<Decision> meant =
        here.stream().filter(one -> asked == null || one.seat() == asked).toList();
    if (here.isEmpty() || meant.isEmpty()) {
      throw new WrongInputException(nobody(steps, all));
    }
    List<Integer> seats = meant.stream().map(Decision::seat).distinct().toList();
    if (seats.size() > 1) {
      throw new WrongInputException(
          "several decide after step %s; write --asked and one of these seats: %s"
              .formatted(step, listed(seats)));
    }
    return meant.get(0);
  }

  /** Nobody, or not the seat that was named, decides here; says where it does. */
  private String nobody(StepNumbers steps, List<Decision> all) {
    TreeSet<Integer> places = new TreeSet<>();
    all.stream()
        .filter(one -> asked == null || one.seat() == asked)
        .forEach(one -> places.add(steps.after(one.events())));
    String who = asked == null ? "nobody decides" : "seat " + asked + " does not decide";
    return "%s after step %s; steps with a decision: %s".formatted(who, step, listed(places));
  }

  private static String listed(Collection<Integer> numbers) {
    return String.join(", ", numbers.stream().map(String::valueOf).toList());
  }

  private String text(GameRecord game, Decision decision) {
    List<String> lines = new ArrayList<>();
    GameRecord.Header header = game.header();
    String deal = "Deal %s, seed %s".formatted(header.deal(), header.seed());
    lines.add("// " + deal + ", step " + step + ", card " + Shown.word(header.card().card()));
    lines.add("// In the game: " + chosen(decision));
    if (!header.rules().equals(TableRules.STANDARD.switches())) {
      lines.add("// Played by other rules than the usual ones; name them with --rules");
    }
    StringBuilder text = new StringBuilder(String.join("\n", lines)).append('\n');
    text.append(decision.sheet());
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (header.players().get(seat) instanceof String name && name.matches("[a-z-]{1,40}")) {
        text.append("plays    ").append(seat).append(' ').append(name).append('\n');
      }
    }
    return text.toString();
  }

  private static String chosen(Decision decision) {
    return decision.lost() ? "a claim that lost to another" : decision.move().text();
  }
}
