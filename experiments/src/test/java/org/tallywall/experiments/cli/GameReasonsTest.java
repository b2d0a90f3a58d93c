package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A game told with the reason of every choice is the same game. */
class GameReasonsTest {
  private static final Pattern REASON = Pattern.compile("^ {10,}.*");

  private static Typed game(String... more) {
    return deal(1, more);
  }

  private static Typed deal(int deal, String... more) {
    List<String> words =
        new ArrayList<>(
            List.of("game", "--card", "cards/saltmarsh-quay.json", "--seed", "3", "--deal"));
    words.addAll(List.of(String.valueOf(deal), "--players", "watchful,reckoner,nearest,watchful"));
    words.addAll(List.of(more));
    return Typed.run(words.toArray(new String[0]));
  }

  private static List<String> lines(Typed typed) {
    return typed.out().lines().toList();
  }

  @Test
  void reasons_leaveTheCourseAsItIs() {
    List<String> told = lines(game("--reasons"));

    assertThat(told.stream().filter(line -> !REASON.matcher(line).matches()).toList())
        .isEqualTo(lines(game()));
    assertThat(told).allMatch(line -> line.length() <= 100);
  }

  @Test
  void reasons_standUnderTheirEvents() {
    List<String> told = lines(game("--reasons"));
    int discards = 0;
    for (int at = 0; at < told.size() - 1; at++) {
      String line = told.get(at);
      if (line.matches("  [0-9 ]{2}  .* throws .*")) {
        String who = line.substring(6).replaceAll(" (draws|throws|calls|exchanges) .*", "");
        assertThat(told.get(at + 1)).startsWith("          " + who + ": ");
        discards++;
      }
    }
    assertThat(discards).isGreaterThan(20);
    assertThat(told.get(told.indexOf("First right") + 5)).startsWith("          East: ");
  }

  @Test
  void reasons_ofSeveralGames_areOfManyKinds() {
    StringBuilder told = new StringBuilder();
    for (int deal = 0; deal < 8; deal++) {
      told.append(deal(deal, "--reasons", "--spoken").out());
    }
    assertThat(told)
        .contains(
            " lets it go: heading for ",
            "a claim brings nothing nearer: ",
            "complete: ",
            " goes rather than ")
        .containsPattern("(bam|crak|dot|soap|red|green|flower) buys a joker");
  }

  @Test
  void reasons_spoken_nameTilesAsTheyAreCalled() {
    Typed typed = game("--reasons", "--spoken", "--names", "Ann,Bea,Cleo,Dot");

    assertThat(typed.out()).contains("          Ann: ", "          Dot: ");
    assertThat(typed.out()).doesNotContain("East");
  }
}
