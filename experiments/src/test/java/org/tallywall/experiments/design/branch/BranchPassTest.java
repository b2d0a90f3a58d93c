package org.tallywall.experiments.design.branch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Branches at a pass and at the stop: played once more by players that were put together here. */
@Tag("one-jdk")
class BranchPassTest {
  private static final int DEALS = 40;
  private static final int SEAT = 2;
  private static final String CARD =
      """
      { "card": "Fairlead test card", "families": [ { "family": "Ladders", "lines": [
        { "id": "A", "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 },
        { "id": "B", "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] } ] }
      """;
  private static final String KEEP =
      "{\"keep\": {\"player\": \"reckoner\", \"passes.keep-pairs\": true}, \"usual\": \"reckoner\"}";

  @TempDir private Path folder;

  /** Plays as one player does, but answers one pass, or the question whether to stop, otherwise. */
  private static final class Otherwise extends ForwardingPlayer {
    private final Player once;
    private final PassStep when;
    private final Boolean stop;

    Otherwise(Player usual, Player once, PassStep when, Boolean stop) {
      super(usual);
      this.once = once;
      this.when = when;
      this.stop = stop;
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      return step == when ? once.pass(view, step, random) : super.pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return stop == null ? super.stops(view, random) : stop;
    }
  }

  private Study study(String branch) throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Path file =
        Files.writeString(
            folder.resolve("study.json"),
            "{\"study\": \"s\", \"card\": \"card.json\", \"seed\": 12, \"deals\": 40,"
                + " \"primary\": \"points\", \"others\": \"nearest\", \"seats\": 2, \"branch\": {"
                + branch
                + ", \"player\": \"reckoner\"}}");
    return StudyFile.read(file, Changes.NONE, Catalog.standard());
  }

  private static StudyTally tally(Study study) {
    TableSetup setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    return new StudyPlayer(study, setup, new Pulse())
        .play(Block.of(0, DEALS, 500), new RunState(DEALS, 500, 0))
        .tally();
  }

  /** The points of the studied seat in every deal, with one way to answer there. */
  private static List<Integer> points(Study study, Player studied) {
    TableSetup setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    BranchDesign design = (BranchDesign) study.design();
    List<Player> four = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      four.add(seat == SEAT ? studied : design.others().make());
    }
    List<Integer> points = new ArrayList<>();
    for (long deal = 0; deal < DEALS; deal++) {
      points.add(
          new Game(setup, four, new GameListener() {})
              .play(Deal.of(study.extent().seed(), deal, setup.rules().tiles()))
              .points()
              .get(SEAT));
    }
    return points;
  }

  private static PlayerSpec base(Study study) {
    return ((BranchDesign) study.design()).player();
  }

  private static long sum(List<Integer> second, List<Integer> first) {
    long sum = 0;
    for (int at = 0; at < first.size(); at++) {
      sum += second.get(at) - first.get(at);
    }
    return sum;
  }

  @Test
  void passes_differFromThoseOfThePlayerBesides_inThatPassAlone() throws IOException {
    Study study =
        study("\"at\": \"pass\", \"when\": {\"pass\": [2]}, \"options\": %s".formatted(KEEP));
    PlayerSpec keep = ((BranchDesign) study.design()).options().get(0).player().orElseThrow();
    Player other = new Otherwise(base(study).make(), keep.make(), PassStep.ACROSS_1, null);

    List<Integer> usual = points(study, base(study).make());
    List<Integer> once = points(study, other);
    FiringTally firing = tally(study).firing(0);

    assertThat(once).isNotEqualTo(usual).isNotEqualTo(points(study, keep.make()));
    assertThat(firing.games()).isEqualTo(DEALS);
    assertThat(firing.effect(0).difference().value()).isEqualTo(sum(usual, once));
  }

  @Test
  void stops_differInThatAnswerAlone() throws IOException {
    Study study =
        study(
            "\"at\": \"stop\", \"when\": {\"jokers\": [0, 1]}, \"options\": [\"stop\", \"go-on\"]");
    List<Integer> stop = points(study, new Otherwise(base(study).make(), null, null, true));
    List<Integer> goOn = points(study, new Otherwise(base(study).make(), null, null, false));
    StudyTally tally = tally(study);
    long all = tally.firing(0).games() + tally.firing(1).games();

    assertThat(stop).isNotEqualTo(goOn);
    assertThat(all).isBetween(DEALS / 2L, (long) DEALS);
    assertThat(tally.firing(0).games()).isPositive();
    assertThat(tally.firing(1).games()).isPositive();
    Study any =
        study(
            "\"at\": \"stop\", \"when\": {\"jokers\": [0, 1, 2, 3, 4, 5, 6, 7, 8]}, \"options\":"
                + " [\"stop\", \"go-on\"]");
    StudyTally whole = tally(any);
    long difference = 0;
    for (int square = 0; square < 9; square++) {
      difference += whole.firing(square).effect(0).difference().value().longValueExact();
    }
    assertThat(difference).isEqualTo(sum(goOn, stop));
  }

  /** Two options that are the same player differ in nothing, at whatever moment they are asked. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"at\": \"pass\", \"when\": {\"pass\": [1, 3, 6], \"pairs\": [1, 2, 3]}",
        "\"at\": \"stop\", \"when\": {\"away\": [3, 4, 5, 6, 7, 8, 9]}",
        "\"at\": \"discard\", \"when\": {\"wall\": [80, 40]}",
        "\"at\": \"claim\", \"when\": {\"away\": [2, 3, 4, 5, 6]}"
      })
  void optionsThatAreAlike_differInNothing(String where) throws IOException {
    for (String player : List.of("\"reckoner\"", "\"bold\"", "\"random-legal\"")) {
      Study study =
          study("%s, \"options\": {\"one\": %s, \"two\": %s}".formatted(where, player, player));
      StudyTally tally = tally(study);
      long games = 0;
      for (int square = 0; square < ((BranchDesign) study.design()).cells().count(); square++) {
        FiringTally firing = tally.firing(square);
        games += firing.games();
        for (int measure = 0; measure < 7; measure++) {
          assertThat(firing.effect(measure).difference().value()).isZero();
          assertThat(firing.effect(measure).differenceSquared().value()).isZero();
        }
      }
      assertThat(games).as(where).isPositive();
    }
  }

  /** The studied player's own answer is what it would have played anyway, luck and all. */
  @Test
  void studiedPlayerAsAnOption_isTheGameAsItWasPlayed() throws IOException {
    Study study =
        study(
            "\"at\": \"pass\", \"when\": {\"pass\": [1]}, \"options\": {\"usual\": \"reckoner\","
                + " \"lot\": \"random-legal\"}");
    StudyTally tally = tally(study);
    Player lot =
        new Otherwise(
            base(study).make(),
            new PlayerSpec(Catalog.standard().find("random-legal"), Map.of()).make(),
            PassStep.RIGHT_1,
            null);

    assertThat(tally.firing(0).effect(0).difference().value())
        .isEqualTo(sum(points(study, lot), points(study, base(study).make())));
  }

  @Test
  void studyOfAPass_isWrittenAsItWasRead() throws IOException {
    Study study =
        study("\"at\": \"pass\", \"when\": {\"pass\": [1]}, \"options\": %s".formatted(KEEP));
    String written = StudyJson.text(study, folder);
    Path again = Files.writeString(folder.resolve("again.json"), written);

    assertThat(written).contains("\"keep\" : {", "\"at\" : \"pass\"", "\"pass\" : [ 1 ]");
    assertThat(StudyFile.read(again, Changes.NONE, Catalog.standard()).digest())
        .isEqualTo(study.digest());
  }

  @Test
  void optionsAndFeaturesThatDoNotFit_areRefused() {
    refused("\"at\" is one of discard, claim, pass, stop", "\"at\": \"passes\"", KEEP);
    refused("at a pass the options are players with names", "\"at\": \"pass\"", "[\"stop\", 1]");
    refused("two options are compared", "\"at\": \"pass\"", "{\"one\": \"reckoner\"}");
    refused("nothing is told apart by \"pass\"", "\"at\": \"stop\"", "[\"stop\", \"go-on\"]");
    refused(
        "\"stop\" means something else to the program",
        "\"at\": \"pass\"",
        "{\"stop\": \"reckoner\", \"b\": \"bold\"}");
    refused("the name \"a/b\" cannot be used", "\"at\": \"pass\"", "{\"a/b\": \"bold\", \"c\": 1}");
    refused("sees all tiles", "\"at\": \"pass\"", "{\"a\": \"open-tiles\", \"b\": \"bold\"}");
  }

  private void refused(String message, String at, String options) {
    assertThatThrownBy(
            () -> study("%s, \"when\": {\"pass\": [1]}, \"options\": %s".formatted(at, options)))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageContaining(message);
  }
}
