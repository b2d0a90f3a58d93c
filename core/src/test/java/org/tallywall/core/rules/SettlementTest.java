package org.tallywall.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.core.TestCards;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.Line;

/** Who pays what, by section 8 of the rules and the switches of scores. */
class SettlementTest {
  private static final int NOBODY = -1;
  private static final Settlement STANDARD = new Settlement(TableRules.STANDARD);

  private static Settlement with(String key, Object value) {
    return new Settlement(TableRules.of(Map.of(key, value)));
  }

  private static Line line(String id) {
    return TestCards.testCard().line(id).orElseThrow();
  }

  private static Line line(String tiles, String jokerless) {
    String card =
        """
        {"card": "One", "families": [{"family": "A", "lines": [
          {"id": "A", "tiles": "%s", "value": 25 %s}]}]}
        """
            .formatted(tiles, jokerless);
    return CardFile.json("one.json", card).orThrow().line("A").orElseThrow();
  }

  /** The table of payments: v = 30, South throws, West wins. */
  @ParameterizedTest
  @CsvSource({
    "DISCARD, 30, -30, -60, 120, -30",
    "DISCARD, 60, -60, -120, 240, -60",
    "SELF_DRAWN, 30, -60, -60, 180, -60",
    "SELF_DRAWN, 60, -120, -120, 360, -120",
    "EXCHANGE, 30, -60, -60, 180, -60",
    "DISCARD_PAYING_ALL, 30, 0, -120, 120, 0"
  })
  void win_isPaidByTheTable(
      Settlement.Way way, int unit, int east, int south, int west, int north) {
    int discarder = way.name().startsWith("DISCARD") ? 1 : NOBODY;
    assertThat(STANDARD.win(2, discarder, way, unit, false))
        .containsExactly(east, south, west, north);
  }

  @ParameterizedTest
  @EnumSource(Settlement.Way.class)
  void win_ofAnyKindAtAnySeat_sumsToZero(Settlement.Way way) {
    for (int winner = 0; winner < 4; winner++) {
      for (int discarder = 0; discarder < 4; discarder++) {
        if (discarder != winner) {
          int[] points = STANDARD.win(winner, discarder, way, 35, true);
          assertThat(Arrays.stream(points).sum()).isZero();
          assertThat(points[winner]).isPositive();
        }
      }
    }
  }

  @Test
  void switchesOfScores_changeWhatTheySay() {
    Settlement.Way discard = Settlement.Way.DISCARD;
    Settlement.Way drawn = Settlement.Way.SELF_DRAWN;
    assertThat(with("score.discarder", 4).win(2, 1, discard, 30, false))
        .containsExactly(-30, -120, 180, -30);
    assertThat(with("score.othersOnDiscard", 0).win(2, 1, discard, 30, false))
        .containsExactly(0, -60, 60, 0);
    assertThat(with("score.selfDrawn", 1).win(2, NOBODY, drawn, 30, false))
        .containsExactly(-30, -30, 90, -30);
    assertThat(with("score.discarder", 3).win(2, 1, Settlement.Way.DISCARD_PAYING_ALL, 10, false))
        .containsExactly(0, -50, 50, 0);
  }

  @Test
  void exchangePaidSingly_leavesOtherSelfDrawnWinsDouble() {
    Settlement single = with("win.exchangePaidAs", "SINGLE");
    assertThat(single.win(2, NOBODY, Settlement.Way.EXCHANGE, 30, false))
        .containsExactly(-30, -30, 90, -30);
    assertThat(single.win(2, NOBODY, Settlement.Way.SELF_DRAWN, 30, false))
        .containsExactly(-60, -60, 180, -60);
  }

  @Test
  void doubleDice_doubleOnlyWithTheSwitch() {
    Settlement doubled = with("score.diceDoubles", true);
    Settlement.Way drawn = Settlement.Way.SELF_DRAWN;
    assertThat(doubled.win(0, NOBODY, drawn, 30, true)).containsExactly(360, -120, -120, -120);
    assertThat(doubled.win(0, NOBODY, drawn, 30, false)).containsExactly(180, -60, -60, -60);
    assertThat(STANDARD.win(0, NOBODY, drawn, 30, true)).containsExactly(180, -60, -60, -60);
  }

  @Test
  void wallGame_paysNothingUnlessTheTableSaysSo() {
    boolean[] live = {true, false, true, true};
    assertThat(STANDARD.wallGame(live)).containsExactly(0, 0, 0, 0);
    assertThat(with("score.wallGame", 5).wallGame(live)).containsExactly(5, 0, 5, 5);
    assertThat(with("score.wallGame", -5).wallGame(live)).containsExactly(-5, 0, -5, -5);
  }

  /** 8.3: no joker among the 14 tiles at the moment of declaring. */
  @Test
  void jokerless_needsNoJokerAtAll() {
    assertThat(STANDARD.jokerless(line("T2"), 0)).isTrue();
    assertThat(STANDARD.jokerless(line("T2"), 1)).isFalse();
    assertThat(STANDARD.unit(line("T2"), 0)).isEqualTo(60);
    assertThat(STANDARD.unit(line("T2"), 1)).isEqualTo(30);
    assertThat(with("score.jokerless", 1).unit(line("T2"), 0)).isEqualTo(30);
  }

  /**
   * 8.4: which hands are left out, for lines with and without large groups and the card's field.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          FF 222b 555c 888d WWW | | true | true | true
          FF 222b 555c 888d WWW | , "jokerless": false | false | false | true
          11d 33d 44c 66c 88b 99b EE | | false | false | true
          11d 33d 44c 66c 88b 99b EE | , "jokerless": true | false | true | true
          """)
  void jokerless_leavesOutWhatTheSwitchSays(
      String tiles, String field, boolean standard, boolean byCard, boolean any) {
    Line line = line(tiles, field == null ? "" : field);
    assertThat(STANDARD.jokerless(line, 0)).isEqualTo(standard);
    assertThat(with("score.jokerlessExcludes", "CARD_FLAG").jokerless(line, 0)).isEqualTo(byCard);
    assertThat(with("score.jokerlessExcludes", "NONE").jokerless(line, 0)).isEqualTo(any);
    assertThat(with("score.jokerlessExcludes", "NONE").jokerless(line, 1)).isFalse();
  }
}
