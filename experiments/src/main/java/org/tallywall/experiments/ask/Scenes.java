package org.tallywall.experiments.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.SuitExchange;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;

/**
 * Scenes on one card by which players are marked: positions in which sound players would not
 * disagree. Each is put to a player with several seeds, as it is and with its suits exchanged in
 * every way, on the card and in the scene alike; the choice must follow.
 */
public final class Scenes {
  /** With how many seeds a scene is put. */
  public static final int SEEDS = 20;

  private final List<TableSetup> tables = new ArrayList<>();
  private final List<PositionSheet> sheets;

  /**
   * Scenes on one card.
   *
   * @param card the card
   * @param files the sheets
   */
  public Scenes(Card card, List<Path> files) {
    for (SuitExchange suits : SuitExchange.ALL) {
      tables.add(new TableSetup(new ConcreteHands(suits.card(card)), TableRules.STANDARD));
    }
    sheets = files.stream().map(file -> PositionSheet.read(file, tables.get(0))).toList();
  }

  /**
   * All sheets of a folder.
   *
   * @param card the card
   * @param folder holds sheets whose names end in {@code .txt}
   * @return the scenes in the order of their file names
   */
  public static Scenes of(Card card, Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return new Scenes(
          card, files.filter(file -> file.toString().endsWith(".txt")).sorted().toList());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /**
   * The scenes.
   *
   * @return the sheets in their order
   */
  public List<PositionSheet> sheets() {
    return sheets;
  }

  /**
   * Marks a player in every scene, those too that do not name it.
   *
   * @param player makes a player
   * @return a mark for each scene, in their order
   */
  public List<SceneMark> mark(Supplier<Player> player) {
    return sheets.stream().map(sheet -> mark(sheet, player)).toList();
  }

  /**
   * How many scenes a player passes.
   *
   * @param player makes a player
   * @return 0 to the number of scenes
   */
  public int score(Supplier<Player> player) {
    return (int) mark(player).stream().filter(SceneMark::passed).count();
  }

  private SceneMark mark(PositionSheet sheet, Supplier<Player> player) {
    boolean ruledOut = false;
    String slip = "";
    for (int at = 0; at < tables.size(); at++) {
      SuitExchange suits = SuitExchange.ALL.get(at);
      SceneAnswers answers = SceneAnswers.of(sheet.exchanged(suits, tables.get(at)), player, SEEDS);
      ruledOut |= answers.ruledOut() > 0;
      if (!answers.right() && slip.isEmpty()) {
        slip = slip(answers) + " (" + suits + ")";
      }
    }
    return new SceneMark(sheet.scene(), slip.isEmpty(), ruledOut, slip);
  }

  /** The first answer that is not right. */
  private static String slip(SceneAnswers answers) {
    PositionSheet sheet = answers.sheet();
    return answers.counts().keySet().stream()
        .filter(
            answer ->
                sheet.never().stream().anyMatch(choice -> choice.matches(answer))
                    || sheet.expect().stream().noneMatch(choice -> choice.matches(answer)))
        .findFirst()
        .map(SceneAnswers::text)
        .orElse("");
  }
}
