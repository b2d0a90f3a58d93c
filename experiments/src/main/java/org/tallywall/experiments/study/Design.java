package org.tallywall.experiments.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.tallywall.core.card.Card;
import org.tallywall.strategies.catalog.PlayerSpec;

/** How the games of a study are laid out, as far as its file has to say. */
public interface Design {
  /** The studied player takes each seat of every deal. */
  List<Integer> ROTATE = IntStream.range(0, 4).boxed().toList();

  /**
   * All who play.
   *
   * @return every player that the study names
   */
  List<PlayerSpec> seated();

  /**
   * The design as a study file has it, with every default in place.
   *
   * @param player writes a player
   * @return the fields of the file
   */
  Map<String, Object> fields(Function<PlayerSpec, Object> player);

  /**
   * How the results are to be told: fields that stand in the study file of a results folder but
   * change nothing that is played, so they are no part of the digest by which a run is known again,
   * and a run that is not complete may go on with others.
   *
   * @param card the card, on which a default may depend
   * @return the fields of the file, with every default in place
   */
  default Map<String, Object> telling(Card card) {
    return Map.of();
  }

  /**
   * Deals in a block.
   *
   * @return 1 or more
   */
  default int blockSize() {
    return Extent.BLOCK;
  }

  /**
   * How many deals are played where a study asks for a number.
   *
   * @param asked the deals asked for
   * @return as many, or the next number that treats all players alike
   */
  default long deals(long asked) {
    return asked;
  }

  /**
   * Whether the design can be played on a card.
   *
   * @param card the card
   * @return what is wrong; empty where nothing is
   */
  default Optional<String> unfit(Card card) {
    return Optional.empty();
  }
}
