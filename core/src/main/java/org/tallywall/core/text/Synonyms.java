package org.tallywall.core.text;

import static java.util.Map.entry;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Words that people type for the words that files and commands have. */
final class Synonyms {
  private static final Map<String, List<String>> MEANT =
      Map.ofEntries(
          entry("throw", List.of("discard", "discards")),
          entry("thrown", List.of("discards")),
          entry("call", List.of("claim", "claims")),
          entry("calls", List.of("claims")),
          entry("redeem", List.of("exchange", "jokers")),
          entry("swap", List.of("exchange")),
          entry("hand", List.of("tiles", "rack", "line", "lines")),
          entry("hands", List.of("lines", "deals")),
          entry("section", List.of("family", "families")),
          entry("sections", List.of("families")),
          entry("category", List.of("family", "families")),
          entry("points", List.of("value")),
          entry("score", List.of("value", "points")),
          entry("note", List.of("say", "because")),
          entry("nickname", List.of("say")),
          entry("closed", List.of("concealed")),
          entry("games", List.of("deals")),
          entry("hints", List.of("because")),
          entry("wins", List.of("win-rate")),
          entry("players", List.of("table", "others")),
          entry("strategies", List.of("arms")),
          entry("compare", List.of("arms")),
          entry("ways", List.of("arms")),
          entry("defence", List.of("defense")),
          entry("position", List.of("ask")),
          entry("sheet", List.of("ask")),
          entry("play", List.of("game", "run")),
          entry("deal", List.of("game")),
          entry("start", List.of("run")),
          entry("notes", List.of("report")),
          entry("switches", List.of("rules")),
          entry("strategy", List.of("players")),
          entry("exposures", List.of("exposed")),
          entry("charleston", List.of("passes")));

  private Synonyms() {}

  /**
   * A known word that says the same.
   *
   * @param typed a word in small letters
   * @param known the words that would be right
   * @return one of them, or nothing
   */
  static Optional<String> of(String typed, Collection<String> known) {
    return MEANT.getOrDefault(typed, List.of()).stream().filter(known::contains).findFirst();
  }
}
