package org.tallywall.core.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.core.tile.TileSet;

/** Every switch: its default, its values, what it becomes, and what is said about others. */
class TableRulesTest {
  /** The switches as the rules of the table list them, with their defaults, in order. */
  private static final String DEFAULTS =
      """
      tiles.flowers 8
      tiles.jokers 8
      tiles.blanks 0
      deal.rotateEast RIGHT_EVERY_GAME
      wall.lastSegment DICE
      wall.hot OFF
      wall.hotFlowerNeeds 7
      wall.cold OFF
      wall.finalDiscard.claim ANY
      charleston.first COMPULSORY
      charleston.second ANY_PLAYER_MAY_STOP
      charleston.stopTiming AFTER_SEEING_FIRST_LEFT
      charleston.stopReveal FIRST_STOPPER
      charleston.blind FIRST_LEFT_AND_LAST_RIGHT
      charleston.blindMax 3
      charleston.courtesy LOWER_NUMBER
      charleston.courtesyReveal BOTH_NUMBERS
      charleston.jokersMayPass false
      charleston.pool OFF
      east.heavenly true
      east.earthlyBetweenRounds true
      claims.priority MAHJONG_THEN_TURN_ORDER
      claims.firstExposedKeeps NOT_APPLICABLE
      claims.mahjongViaExchange false
      claims.losingClaimsPublic true
      claims.lineFit STRICT
      claims.minNaturalsFromRack 0
      exposure.selfDrawn FORBIDDEN
      exposure.promote FORBIDDEN
      joker.exchange ON
      joker.exchangePerTurn UNLIMITED
      joker.exchangeAfterClaim true
      joker.discardClaimable false
      win.exchangePaidAs SELF_DRAWN
      win.multiple ONE_NEAREST
      win.autoBestLine true
      win.mayDecline true
      dead.calls OFF
      dead.threeDead VOID
      score.discarder 2
      score.othersOnDiscard 1
      score.selfDrawn 2
      score.jokerless 2
      score.jokerlessExcludes NO_GROUP_OF_3_PLUS
      score.oneHandRule false
      score.wallGame 0
      score.kitty 0
      score.doubleAfterWall false
      score.diceDoubles false
      score.pieLimit NONE
      players 4
      """;

  @Test
  void standardRules_haveEverySwitchAtItsDefault() {
    StringBuilder text = new StringBuilder();
    TableRules.STANDARD
        .switches()
        .forEach((key, value) -> text.append(key).append(' ').append(value).append('\n'));
    assertThat(text.toString()).isEqualTo(DEFAULTS);
  }

  /** One change of one switch, and where it must show in the typed rules. */
  record Change(String key, Object value, Function<TableRules, Object> shows, Object as) {
    @Override
    public String toString() {
      return key + " = " + value;
    }
  }

  private static Change change(
      String key, Object value, Function<TableRules, Object> shows, Object as) {
    return new Change(key, value, shows, as);
  }

  private static Change change(String key, Object value, Function<TableRules, Object> shows) {
    return change(key, value, shows, value);
  }

  static List<Change> changes() {
    return List.of(
        change("tiles.flowers", 4, rules -> rules.tiles().flowers()),
        change("tiles.flowers", 16, rules -> rules.tiles().size(), 160),
        change("tiles.jokers", 10, rules -> rules.tiles(), new TileSet(8, 10)),
        change("tiles.jokers", 0, rules -> rules.tiles().size(), 144),
        change("wall.lastSegment", "NONE", rules -> rules.wall().lastTiles(), 0),
        change("wall.lastSegment", 14, rules -> rules.wall().lastTiles()),
        change("wall.hot", "PAY_ALL_IF_UNACCOUNTED", rules -> rules.wall().hot(), true),
        change("wall.hotFlowerNeeds", 3, rules -> rules.wall().hotFlowerNeeds()),
        change(
            "wall.cold",
            "NO_MAHJONG_CLAIM",
            rules -> rules.wall().cold(),
            WallRules.Cold.NO_MAHJONG_CLAIM),
        change("wall.cold", "NO_CLAIM", rules -> rules.wall().cold(), WallRules.Cold.NO_CLAIM),
        change(
            "wall.finalDiscard.claim",
            "MAHJONG_ONLY",
            rules -> rules.wall().finalClaim(),
            WallRules.FinalClaim.MAHJONG_ONLY),
        change(
            "wall.finalDiscard.claim",
            "NONE",
            rules -> rules.wall().finalClaim(),
            WallRules.FinalClaim.NONE),
        change("charleston.first", "NONE", rules -> rules.charleston().first(), false),
        change(
            "charleston.second",
            "COMPULSORY",
            rules -> rules.charleston().second(),
            PassRules.Second.COMPULSORY),
        change(
            "charleston.second",
            "NONE",
            rules -> rules.charleston().second(),
            PassRules.Second.NONE),
        change(
            "charleston.second",
            "MAJORITY",
            rules -> rules.charleston().second(),
            PassRules.Second.MAJORITY),
        change(
            "charleston.stopTiming",
            "BEFORE_SEEING_FIRST_LEFT",
            rules -> rules.charleston().stopBeforeSeeing(),
            true),
        change(
            "charleston.stopReveal",
            "ALL",
            rules -> rules.charleston().reveal(),
            PassRules.Reveal.ALL),
        change(
            "charleston.stopReveal",
            "NOBODY",
            rules -> rules.charleston().reveal(),
            PassRules.Reveal.NOBODY),
        change(
            "charleston.blind", "NONE", rules -> rules.charleston().blind(), PassRules.Blind.NONE),
        change(
            "charleston.blind",
            "ALL_PASSES",
            rules -> rules.charleston().blind(),
            PassRules.Blind.ALL_PASSES),
        change("charleston.blindMax", 1, rules -> rules.charleston().blindMost()),
        change("charleston.courtesy", "NONE", rules -> rules.charleston().courtesy(), false),
        change(
            "charleston.courtesyReveal",
            "LOWER_ONLY",
            rules -> rules.charleston().bothNumbers(),
            false),
        change("charleston.jokersMayPass", true, rules -> rules.charleston().jokersMayPass()),
        change("east.heavenly", false, rules -> rules.win().heavenly()),
        change("east.earthlyBetweenRounds", false, rules -> rules.win().earthlyBetween()),
        change("claims.priority", "TURN_ORDER_ONLY", rules -> rules.claims().mahjongFirst(), false),
        change("claims.mahjongViaExchange", true, rules -> rules.claims().mahjongViaExchange()),
        change("claims.losingClaimsPublic", false, rules -> rules.claims().losingPublic()),
        change("claims.lineFit", "LENIENT", rules -> rules.claims().strictFit(), false),
        change("claims.minNaturalsFromRack", 1, rules -> rules.claims().naturalsFromRack()),
        change("joker.exchange", "OFF", rules -> own(rules) + " " + others(rules), "false false"),
        change(
            "joker.exchange", "OWN_ONLY", rules -> own(rules) + " " + others(rules), "true false"),
        change(
            "joker.exchange",
            "OTHERS_ONLY",
            rules -> own(rules) + " " + others(rules),
            "false true"),
        change("joker.exchangePerTurn", 1, rules -> rules.jokers().perTurn()),
        change("joker.exchangeAfterClaim", false, rules -> rules.jokers().afterClaim()),
        change("joker.discardClaimable", true, rules -> rules.jokers().discardClaimable()),
        change("win.exchangePaidAs", "SINGLE", rules -> rules.win().exchangeSelfDrawn(), false),
        change("win.autoBestLine", false, rules -> rules.win().bestLine()),
        change("win.mayDecline", false, rules -> rules.win().mayDecline()),
        change("dead.calls", "AUTO", rules -> rules.dead().called(), true),
        change("dead.threeDead", "WALL", rules -> rules.dead().threeVoid(), false),
        change("score.discarder", 4, rules -> rules.score().discarder()),
        change("score.othersOnDiscard", 0, rules -> rules.score().others()),
        change("score.selfDrawn", 1, rules -> rules.score().selfDrawn()),
        change("score.jokerless", 1, rules -> rules.score().jokerless()),
        change(
            "score.jokerlessExcludes",
            "CARD_FLAG",
            rules -> rules.score().excludes(),
            ScoreRules.Excludes.CARD_FLAG),
        change(
            "score.jokerlessExcludes",
            "NONE",
            rules -> rules.score().excludes(),
            ScoreRules.Excludes.NONE),
        change("score.oneHandRule", true, rules -> rules.score().oneHand()),
        change("score.wallGame", 10, rules -> rules.score().wallGame()),
        change("score.wallGame", -25, rules -> rules.score().wallGame()),
        change("score.diceDoubles", true, rules -> rules.score().diceDoubles()));
  }

  private static boolean own(TableRules rules) {
    return rules.jokers().own();
  }

  private static boolean others(TableRules rules) {
    return rules.jokers().others();
  }

  @ParameterizedTest
  @MethodSource("changes")
  void oneSwitch_changed_showsInTheRulesAndNowhereElse(Change change) {
    TableRules rules = TableRules.of(Map.of(change.key(), change.value()));
    assertThat(change.shows().apply(rules)).isEqualTo(change.as());
    assertThat(change.shows().apply(TableRules.STANDARD)).isNotEqualTo(change.as());
    Map<String, Object> expected = new LinkedHashMap<>(TableRules.STANDARD.switches());
    expected.put(change.key(), change.value());
    assertThat(rules.switches()).containsExactlyEntriesOf(expected);
  }

  @Test
  void everyPlayedSwitch_hasAChangeInThisTest() {
    for (RuleSwitch known : RuleSwitches.all()) {
      boolean hasOtherValues = known.choices().contains(" ") || known.choices().contains(",");
      boolean tried = changes().stream().anyMatch(change -> change.key().equals(known.key()));
      assertThat(tried).as(known.key()).isEqualTo(hasOtherValues);
    }
  }

  @Test
  void with_aSwitch_keepsTheOthers() {
    TableRules rules = TableRules.of(Map.of("wall.cold", "NO_CLAIM")).with("score.discarder", 4);
    assertThat(rules.switches())
        .contains(entry("wall.cold", "NO_CLAIM"), entry("score.discarder", 4));
    assertThat(rules.with("wall.cold", "OFF").with("score.discarder", 2))
        .isEqualTo(TableRules.STANDARD);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          exposure.promote | ALLOWED | FORBIDDEN
          exposure.selfDrawn | ALLOWED | FORBIDDEN
          claims.firstExposedKeeps | REACTION_TIMES | NOT_APPLICABLE
          charleston.pool | MUSH | OFF
          dead.calls | STRATEGY | OFF, AUTO
          deal.rotateEast | KEEP_IF_WINS | RIGHT_EVERY_GAME
          """)
  void wordNotPlayedYet_isSaidToBeSo(String key, String word, String valid) {
    notYet(key, word, valid);
  }

  @ParameterizedTest
  @CsvSource({"tiles.blanks, 4, 0", "score.pieLimit, 500, NONE", "score.kitty, 25, 0"})
  void numberNotPlayedYet_isSaidToBeSo(String key, int number, String valid) {
    notYet(key, number, valid);
  }

  @Test
  void flagNotPlayedYet_isSaidToBeSo() {
    notYet("score.doubleAfterWall", true, "false");
  }

  private static void notYet(String key, Object value, String valid) {
    assertThatThrownBy(() -> TableRules.of(Map.of(key, value)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not yet")
        .hasMessageContaining(key)
        .hasMessageContaining(String.valueOf(value))
        .hasMessageContaining("(it may be " + valid + ")");
  }

  @Test
  void unknownSwitch_isRefusedWithTheNearest() {
    assertThatThrownBy(() -> TableRules.of(Map.of("wall.hott", "OFF")))
        .hasMessageContaining("unknown switch \"wall.hott\"")
        .hasMessageContaining("did you mean \"wall.hot\"?")
        .hasMessageContaining("(all: tallywall rules)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          wall.cold | FROSTY | OFF, NO_MAHJONG_CLAIM, NO_CLAIM
          dead.calls | ON | OFF, AUTO
          joker.exchangePerTurn | TWO | UNLIMITED, 1
          wall.lastSegment | SOME | DICE, NONE, a whole number from 0 to 99
          win.mayDecline | YES | true, false
          tiles.jokers | many | a whole number from 0 to 12
          players | four | 4
          """)
  void unknownWord_isRefusedWithTheValidOnes(String key, String word, String valid) {
    refused(key, word, valid);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tiles.jokers | 13 | a whole number from 0 to 12
          tiles.jokers | -1 | a whole number from 0 to 12
          tiles.flowers | 3 | a whole number from 4 to 16
          tiles.blanks | 7 | 0
          wall.lastSegment | 100 | DICE, NONE, a whole number from 0 to 99
          wall.hotFlowerNeeds | 9 | a whole number from 3 to 8
          charleston.blindMax | 0 | a whole number from 1 to 3
          joker.exchangePerTurn | 2 | UNLIMITED, 1
          score.discarder | 5 | a whole number from 1 to 4
          score.othersOnDiscard | 2 | a whole number from 0 to 1
          score.wallGame | 1000001 | a whole number from -1000000 to 1000000
          wall.cold | 1 | OFF, NO_MAHJONG_CLAIM, NO_CLAIM
          win.mayDecline | 1 | true, false
          players | 3 | 4
          """)
  void numberOutOfRange_isRefusedWithTheValidOnes(String key, int number, String valid) {
    refused(key, number, valid);
  }

  @Test
  void nothingInPlaceOfAValue_isRefused() {
    Map<String, Object> changed = new LinkedHashMap<>();
    changed.put("wall.cold", null);
    assertThatThrownBy(() -> TableRules.of(changed))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("OFF, NO_MAHJONG_CLAIM, NO_CLAIM");
  }

  private static void refused(String key, Object value, String valid) {
    assertThatThrownBy(() -> TableRules.of(Map.of(key, value)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the switch \"%s\" may be %s; not %s".formatted(key, valid, value));
  }

  @Test
  void keysOfSwitches_standOnceEach() {
    List<String> keys = RuleSwitches.all().stream().map(RuleSwitch::key).toList();
    assertThat(keys).doesNotHaveDuplicates().hasSize(51);
    assertThat(Arrays.stream(DEFAULTS.split("\n")).map(line -> line.split(" ")[0]))
        .containsExactlyElementsOf(keys);
  }
}
