package org.tallywall.experiments.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.core.sheet.Asking;
import org.tallywall.core.sheet.Choice;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;

/**
 * What a player answers to one position, asked again with other random numbers.
 *
 * @param sheet the position
 * @param counts each answer with the number of seeds that gave it, in the order first given
 */
public record SceneAnswers(PositionSheet sheet, Map<List<Move>, Integer> counts) {
  /**
   * Keeps the order of the answers.
   *
   * @param sheet the position
   * @param counts how often each answer was given
   */
  public SceneAnswers {
    counts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(counts));
  }

  /**
   * Asks a new player with each seed.
   *
   * @param sheet the position
   * @param player makes a player
   * @param seeds how many seeds, from 0 on
   * @return all answers
   */
  public static SceneAnswers of(PositionSheet sheet, Supplier<Player> player, int seeds) {
    Map<List<Move>, Integer> counts = new LinkedHashMap<>();
    for (int seed = 0; seed < seeds; seed++) {
      counts.merge(Asking.put(sheet, player.get(), seed, (view, move) -> {}), 1, Integer::sum);
    }
    return new SceneAnswers(sheet, counts);
  }

  /**
   * How many seeds gave an expected answer.
   *
   * @return 0 to the number of seeds; all of them where nothing is expected
   */
  public int expected() {
    return sheet.expect().isEmpty()
        ? seeds()
        : count(answer -> sheet.expect().stream().anyMatch(choice -> choice.matches(answer)));
  }

  /**
   * How many seeds gave an answer that is ruled out.
   *
   * @return 0 to the number of seeds
   */
  public int ruledOut() {
    return count(answer -> sheet.never().stream().anyMatch(choice -> choice.matches(answer)));
  }

  /**
   * How many seeds gave one choice.
   *
   * @param choice the choice
   * @return 0 to the number of seeds
   */
  public int gave(Choice choice) {
    return count(choice::matches);
  }

  /**
   * How many seeds there were.
   *
   * @return 1 or more
   */
  public int seeds() {
    return count(answer -> true);
  }

  /**
   * Whether every seed gave an expected answer and none that is ruled out.
   *
   * @return true if so
   */
  public boolean right() {
    return expected() == seeds() && ruledOut() == 0;
  }

  /**
   * The answers in words, the first given first.
   *
   * @return as in {@code exchange 8c seat 2 then discard E}
   */
  public List<String> texts() {
    List<String> texts = new ArrayList<>();
    counts.keySet().forEach(answer -> texts.add(text(answer)));
    return texts;
  }

  /**
   * An answer in the words of a sheet.
   *
   * @param answer its moves
   * @return the moves with "then" between
   */
  public static String text(List<Move> answer) {
    return String.join(" then ", answer.stream().map(Move::text).toList());
  }

  private int count(java.util.function.Predicate<List<Move>> wanted) {
    return counts.entrySet().stream()
        .filter(entry -> wanted.test(entry.getKey()))
        .mapToInt(Map.Entry::getValue)
        .sum();
  }
}
