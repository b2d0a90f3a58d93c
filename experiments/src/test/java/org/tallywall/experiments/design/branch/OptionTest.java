package org.tallywall.experiments.design.branch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;

/** What an option changes of the studied player: each setting by its constant, none left out. */
class OptionTest {
  /** The first words of the settings' names; a literal that begins so names a setting. */
  private static final Pattern NAMED =
      Pattern.compile(
          "\"(?:aim|claims|defense|discards|jokers|passes|read|overlooks|wins|rollout)\\.[a-z-]+");

  private static PlayerSpec player(String id) {
    return new PlayerSpec(Catalog.standard().find(id), Map.of());
  }

  @ParameterizedTest
  @ValueSource(strings = {"reckoner", "watchful", "bold", "cautious", "sharp", "custom"})
  void ownNeed_turnsEveryDefenseOff(String id) {
    assertThat(Option.ownNeed(player(id)).changed())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "defense.careful", false,
                "defense.hold-back", false,
                "defense.to-the-wall", false,
                "defense.last-wall", BigDecimal.ZERO,
                "discards.risk-weight", BigDecimal.ZERO));
  }

  @ParameterizedTest
  @ValueSource(strings = {"reckoner", "watchful", "bold", "cautious", "sharp", "custom"})
  void safest_givesUpFromTheFirstTurn(String id) {
    assertThat(Option.safest(player(id)).changed())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "defense.to-the-wall", true,
                "defense.from-start-when-away-at-least", BigDecimal.ONE,
                "defense.last-wall", BigDecimal.ZERO));
  }

  @Test
  void playerWithoutSettings_throwsByItsNeedAsItIs_andKnowsNoSafestTile() {
    PlayerSpec nearest = player("nearest");

    assertThat(Option.ownNeed(nearest)).isEqualTo(nearest);
    assertThatThrownBy(() -> Option.safest(nearest))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("knows no safe tiles");
  }

  /**
   * A name in quotes compiles however it is misspelt, and a player that lacks the setting is left
   * as it is; so names in quotes are for messages alone, and those must be names that there are.
   */
  @Test
  void settingsNamedInQuotes_areSettings() throws IOException {
    Set<String> known = new TreeSet<>();
    for (PlayerType type : Catalog.standard().types()) {
      type.settings().forEach(setting -> known.add("\"" + setting.name()));
    }
    Set<String> named = new TreeSet<>();
    try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      for (Path source : sources.filter(file -> file.toString().endsWith(".java")).toList()) {
        Matcher literal = NAMED.matcher(Files.readString(source));
        while (literal.find()) {
          named.add(literal.group());
        }
      }
    }
    assertThat(known).isNotEmpty().containsAll(named);
  }
}
