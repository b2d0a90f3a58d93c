package org.tallywall.experiments.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.experiments.design.arms.ArmsDesign;
import org.tallywall.experiments.design.arms.Streams;
import org.tallywall.experiments.design.branch.BranchDesign;
import org.tallywall.experiments.design.branch.Cells;
import org.tallywall.experiments.design.roundrobin.RoundRobinTables;
import org.tallywall.experiments.design.sweep.SweepDesign;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.Catalog;

/** Four designs besides the fixed table: read whole, refused with reasons, written out and back. */
class DesignsTest {
  private static final String CARD =
      """
      { "card": "Mooring test card", "families": [ { "family": "Ladders", "lines": [
        { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 } ] } ] }
      """;
  private static final String ARMS =
      """
      { "study": "s", "card": "card.json", "seed": 3, "deals": 40, "primary": "points",
        "secondary": ["win-rate"],
        "arms": { "a": "reckoner", "b": {"player": "reckoner", "defense": {"hold-back": true}} },
        "baseline": "a", "others": "nearest", "seats": 2 }
      """;
  private static final String SWEEP =
      """
      { "study": "s", "card": "card.json", "seed": 3, "primary": "win-rate",
        "until": {"rule": "sprt", "difference": 0.01, "at-most": 3000},
        "sweep": {"player": "watchful", "setting": "defense.hold-back.away-at-least",
                  "values": [1, 2, 3], "baseline": 2}, "others": "watchful" }
      """;
  private static final String ROUND =
      """
      { "study": "s", "card": "card.json", "seed": 3, "deals": 31,
        "round-robin": { "a": "reckoner", "b": "nearest", "c": "watchful", "d": "random-legal",
                         "e": {"player": "reckoner", "aim.targets": 1} } }
      """;
  private static final String BRANCH =
      """
      { "study": "s", "card": "card.json", "seed": 3, "deals": 40, "primary": "points",
        "branch": {"at": "discard", "when": {"exposures-on-one-rack": [2], "away": [2, 3],
                   "wall": [15, 60, 30]},
                   "options": ["own-need", "safest"], "player": "watchful"} }
      """;

  @TempDir Path folder;

  private Study read(String text) throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Path file = Files.writeString(folder.resolve("study.json"), text);
    return StudyFile.read(file, Changes.NONE, Catalog.standard());
  }

  @Test
  void arms_allFields_areRead() throws IOException {
    ArmsDesign arms = (ArmsDesign) read(ARMS).design();

    assertThat(arms.arms()).extracting(Arm::name).containsExactly("a", "b");
    assertThat(arms.baseline()).isZero();
    assertThat(arms.seats()).containsExactly(2);
    assertThat(arms.streams()).isEqualTo(Streams.SAME);
    assertThat(arms.arms().get(1).player().changed()).containsEntry("defense.hold-back", true);
  }

  @Test
  void sweep_everyValue_isAWayOfPlaying() throws IOException {
    Study study = read(SWEEP);
    SweepDesign sweep = (SweepDesign) study.design();

    assertThat(sweep.ways().arms()).extracting(Arm::name).containsExactly("1", "2", "3");
    assertThat(sweep.ways().baseline()).isEqualTo(1);
    assertThat(sweep.ways().seats()).hasSize(4);
    assertThat(study.extent().deals()).isEqualTo(3000);
    assertThat(study.extent().until().orElseThrow().test().orElseThrow().miss()).isEqualTo(0.1);
  }

  @Test
  void roundRobin_deals_areRoundedUpToWholeRounds() throws IOException {
    Study study = read(ROUND);

    assertThat(study.extent().deals()).isEqualTo(60);
    assertThat(study.extent().blockSize()).isEqualTo(600);
  }

  @Test
  void branch_wallEdges_reachDownToTheNext() throws IOException {
    Cells cells = ((BranchDesign) read(BRANCH).design()).cells();

    assertThat(cells.count()).isEqualTo(6);
    assertThat(cells.at(cells.of(new int[] {2, 3, 60}))).containsExactly(2, 3, 60);
    assertThat(cells.at(cells.of(new int[] {2, 3, 31}))).containsExactly(2, 3, 60);
    assertThat(cells.at(cells.of(new int[] {2, 2, 30}))).containsExactly(2, 2, 30);
    assertThat(cells.at(cells.of(new int[] {2, 2, 0}))).containsExactly(2, 2, 15);
    assertThat(cells.of(new int[] {2, 2, 61})).isEqualTo(Cells.NONE);
    assertThat(cells.of(new int[] {1, 2, 20})).isEqualTo(Cells.NONE);
    assertThat(cells.of(new int[] {2, 4, 20})).isEqualTo(Cells.NONE);
  }

  @ParameterizedTest
  @ValueSource(strings = {ARMS, SWEEP, ROUND, BRANCH})
  void study_writtenOutAndReadAgain_isTheSameStudy(String text) throws IOException {
    Study study = read(text);

    Study again = read(StudyJson.text(study, folder));

    assertThat(again.digest()).isEqualTo(study.digest());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "\"baseline\": \"a\" ! \"baseline\": \"c\" ! no way of playing is called \"c\"; did you mean",
        "\"baseline\": \"a\", ! ! the field \"baseline\" is missing",
        "\"others\": \"nearest\", ! ! the field \"others\" is missing",
        "\"seats\": 2 ! \"seats\": 4 ! \"seats\" is \"rotate\" or the number of one seat",
        "\"seats\": 2 ! \"streams\": \"mine\" ! \"streams\" is \"same\" or \"own\", not \"mine\"",
        "\"primary\": \"points\", ! ! the field \"primary\" is missing",
        "[\"win-rate\"] ! [\"points\"] ! the measure \"points\" is named twice",
        "\"deals\": 40, ! \"deals\": 40, \"until\": {\"rule\": \"always-valid\", \"half-width\": 1, \"at-most\": 9}, ! either \"deals\" or \"until\"",
        "\"deals\": 40, ! \"until\": {\"rule\": \"always-vlaid\", \"half-width\": 1, \"at-most\": 9}, ! unknown rule \"always-vlaid\"; did you mean \"always-valid\"?",
        "\"deals\": 40, ! \"until\": {\"rule\": \"always-valid\", \"at-most\": 9}, ! say what is to be reached",
        "\"deals\": 40, ! \"until\": {\"rule\": \"always-valid\", \"half-width\": 1}, ! the field \"at-most\" is missing",
        "\"deals\": 40, ! \"until\": {\"rule\": \"sprt\", \"difference\": 0.1, \"at-most\": 9}, ! takes a primary measure that counts games",
        "\"deals\": 40, ! \"until\": {\"rule\": \"always-valid\", \"clear\": true, \"at-most\": 9, \"expected-discordance\": 0.1}, ! write \"expected-sd\" instead"
      })
  void arms_slip_isNamedWithItsRemedy(String good, String bad, String words) {
    complains(ARMS, good, bad, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "away-at-least ! away-at-lest ! has no setting \"defense.hold-back.away-at-lest\"; did you mean",
        "[1, 2, 3] ! [1, 2, 30] ! the setting \"defense.hold-back.away-at-least\" is",
        "[1, 2, 3] ! [1, 2, 2] ! the value 2 stands twice",
        "[1, 2, 3] ! [2] ! a sweep takes two values or more",
        "\"baseline\": 2 ! \"baseline\": 4 ! must be one of \"values\"",
        "\"baseline\": 2 ! \"baselime\": 2 ! unknown field \"baselime\" in \"sweep\"",
        "\"others\": \"watchful\" ! \"baseline\": \"x\", \"others\": \"watchful\" ! \"baseline\" has no meaning for a \"sweep\"",
        "0.01 ! 1.5 ! a number between 0 and 1, not 1.5"
      })
  void sweep_slip_isNamedWithItsRemedy(String good, String bad, String words) {
    complains(SWEEP, good, bad, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "\"discard\" ! \"discrad\" ! \"at\" is one of discard, claim, pass, stop, not \"discrad\"; did you mean",
        "\"safest\" ! \"safets\" ! no option of a discard is called \"safets\"; did you mean \"safest\"?",
        "\"safest\" ! \"nothing\" ! no option of a discard is called \"nothing\"",
        "\"safest\" ! \"own-need\" ! the option \"own-need\" stands twice",
        "\"away\": ! \"awya\": ! unknown field \"awya\" in \"when\"; did you mean \"away\"?",
        "[2, 3] ! [2, 15] ! \"away\" takes whole numbers from 0 to 14",
        "[2, 3] ! [2, 2] ! the value 2 stands twice",
        "\"at\": \"discard\" ! \"at\": \"discard\", \"line\": \"L9\" ! the card has no line \"L9\"; did you mean",
        "\"player\": \"watchful\" ! \"player\": \"open-tiles\" ! the player \"open-tiles\" sees all tiles",
        "[2, 3] ! [] ! \"away\" takes one value or more"
      })
  void branch_slip_isNamedWithItsRemedy(String good, String bad, String words) {
    complains(BRANCH, good, bad, words);
  }

  @Test
  void roundRobin_threePlayers_isRefused() {
    String three = ROUND.replaceAll("(?s)\"c\".*\\}\\s*\\}\\s*\\}", "\"c\": \"watchful\" } }");

    assertThat(catchThrowable(() -> read(three)))
        .hasMessageContaining("everyone against everyone takes four players or more");
  }

  private void complains(String study, String good, String bad, String words) {
    String text = study.replace(good, bad == null ? "" : bad);
    assertThat(text).isNotEqualTo(study);

    assertThat(catchThrowable(() -> read(text)))
        .hasMessageContaining(words)
        .hasMessageContaining("study.json:");
  }

  @Test
  void seatings_allSixOrders_giveEveryOrderedPairOfNeighborsEightGames() {
    Map<List<Integer>, Integer> neighbors = new HashMap<>();
    for (long deal = 0; deal < RoundRobinTables.ORDERS; deal++) {
      for (int game = 0; game < 4; game++) {
        int[] seats = RoundRobinTables.seating(deal, game);
        for (int seat = 0; seat < 4; seat++) {
          neighbors.merge(List.of(seats[seat], seats[(seat + 1) % 4]), 1, Integer::sum);
        }
      }
    }

    assertThat(neighbors).hasSize(12).allSatisfy((pair, games) -> assertThat(games).isEqualTo(8));
  }

  @Test
  void seatings_fourGamesOfADeal_putEverybodyInEverySeatOnce() {
    for (long deal = 0; deal < RoundRobinTables.ORDERS; deal++) {
      for (int seat = 0; seat < 4; seat++) {
        int sat = 0;
        for (int game = 0; game < 4; game++) {
          sat |= 1 << RoundRobinTables.seating(deal, game)[seat];
        }
        assertThat(sat).isEqualTo(15);
      }
    }
  }
}
