package org.tallywall.experiments.design.arms;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.design.StudyGame;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.DesignJson;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Several ways of playing in the same seats on the same deals, each compared with one of them.
 *
 * @param arms the ways of playing, two or more
 * @param baseline which of them the others are compared with, from 0
 * @param others who sits in the other seats
 * @param seats where the studied player sits, in each deal, one after the other
 * @param streams whether the ways share the luck of their decisions
 */
public record ArmsDesign(
    List<Arm> arms, int baseline, PlayerSpec others, List<Integer> seats, Streams streams)
    implements Comparison {
  /** The field of a study file that asks for this design. */
  static final String NAME = "arms";

  /**
   * Copies the lists.
   *
   * @param arms the ways of playing
   * @param baseline which of them the others are compared with
   * @param others who sits in the other seats
   * @param seats where the studied player sits
   * @param streams whether the ways share their luck
   */
  public ArmsDesign {
    arms = List.copyOf(arms);
    seats = List.copyOf(seats);
  }

  @Override
  public ArmsDesign ways() {
    return this;
  }

  @Override
  public List<PlayerSpec> seated() {
    return Stream.concat(arms.stream().map(Arm::player), Stream.of(others)).toList();
  }

  @Override
  public Map<String, Object> fields(Function<PlayerSpec, Object> player) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put(NAME, DesignJson.named(arms, player));
    written.put("baseline", arms.get(baseline).name());
    written.putAll(common(player));
    return written;
  }

  /**
   * The fields of a study file that every comparison has.
   *
   * @param player writes a player
   * @return who sits with the studied player, where it sits, and whose luck it has
   */
  public Map<String, Object> common(Function<PlayerSpec, Object> player) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("others", player.apply(others));
    written.put("seats", DesignJson.seats(seats));
    written.put("streams", streams.text());
    return written;
  }

  /** Finds one game; way of playing and seat are null where none is said. */
  StudyGame game(String name, Integer seat) {
    List<String> names = arms.stream().map(arm -> Arm.plain(arm.name())).toList();
    if (name == null) {
      throw new WrongInputException(
          "--arm is missing; the study's ways of playing are: " + String.join(", ", names));
    }
    int arm = names.indexOf(Arm.plain(name));
    if (arm < 0) {
      throw new WrongInputException(
          "no way of playing is called \"%s\"%s".formatted(name, Nearest.advice(name, names)));
    }
    List<PlayerSpec> four = StudyGame.seated(arms.get(arm).player(), others, seat, seats);
    return new StudyGame(four, streams == Streams.OWN ? arm : 0);
  }
}
