package org.tallywall.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardDifference;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.CardSentence;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.StackedGame;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.RecordJson;
import org.tallywall.core.record.RecordReader;
import org.tallywall.core.record.Replay;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.TileText;

/** Whatever language the machine speaks, messages and sentences are the same, figure by figure. */
class MessagesInAnyLanguageTest {
  private static final Locale BEFORE = Locale.getDefault();

  @AfterEach
  void restore() {
    Locale.setDefault(BEFORE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ar-EG-u-nu-arab", "fa-IR", "tr-TR", "th-TH-u-nu-thai"})
  void everything_isSaidAsInNoLanguage(String language) {
    Locale.setDefault(Locale.ROOT);
    List<String> plain = everything();
    Locale.setDefault(Locale.forLanguageTag(language));
    assertThat(everything()).isEqualTo(plain);
    assertThat(plain).noneMatch(said -> said.startsWith("nothing: "));
  }

  /** The language is one in which a figure would be another. */
  @Test
  void language_hasFiguresOfItsOwn() {
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
    assertThat(String.format("%d", 7)).isNotEqualTo("7");
  }

  private static List<String> everything() {
    List<String> said = new ArrayList<>();
    cards(said);
    tiles(said);
    sheets(said);
    rules(said);
    games(said);
    return said;
  }

  private static void cards(List<String> said) {
    Card card = TestCards.testCard();
    card.lines().forEach(line -> said.add(CardSentence.of(line)));
    said.add(card.digest());
    String rows =
        """
        Family,id,tiles,slide,where,suits,value
        Ids I,,FF 1111b 2222c NNN,,,,25
        Ids I,i1,FF 1111x 2222y 33z bbbb,,,,0
        Ids I,i1,1111111b 2222c NNN,ANY,,,25
        Ids I,,FF 1111b 2222c NNNN,any,,or one,25
        Ids I,,FF nnnnx mmmmy NNNN,,nm: 123,,25
        Ids I,,FF 1111b 2222x 33y 4z,,,,25
        Ids I,,nnnx mmmy kkkz uuu vv,,,,25
        Ids I,,11111b 2222b 11111b,I,,INI,25
        Ids I,,NNNNN EE EE 11111b,,,,25
        """;
    CardReading faulty = CardFile.csv("c.csv", "Quay", rows);
    faulty.faults().forEach(fault -> said.add(fault.text("c.csv")));
    faulty.warnings().forEach(warning -> said.add(warning.text("c.csv")));
    CardFile.csv("c.csv", "Quay", "İd,I\n1,2\n").faults().forEach(f -> said.add(f.text("c.csv")));
    CardFile.json("c.json", "{\"card\": 5, \"fam\": 1e999,\n \"families\": [[]], \"families\": 7}")
        .faults()
        .forEach(fault -> said.add(fault.text("c.json")));
    Card other =
        CardFile.csv("c.csv", "Quay", "family,tiles,value\nI,FF 1111x 2222y NNNN,25").orThrow();
    CardDifference.between(card, other).forEach(difference -> said.add(difference.toString()));
  }

  private static void tiles(List<String> said) {
    for (String text : List.of("11111b", "5q", "5", "b", "JJJJJJJJJ", "x".repeat(300))) {
      said.add(message(() -> TileText.rack(text)));
    }
    for (String text : List.of("33c", "3333333c", "34c", "J3c", "JJJ")) {
      said.add(message(() -> TileText.exposures(text)));
    }
    said.add(
        message(
            () -> {
              TileText.checkWhole(TileText.rack("111b"), TileText.exposures("1bJJ 111b"));
              return null;
            }));
    said.add(
        message(
            () -> {
              TileText.checkWhole(TileText.rack("111b"), List.of());
              return null;
            }));
  }

  private static void sheets(List<String> said) {
    TableSetup table = new TableSetup(new ConcreteHands(TestCards.testCard()), TableRules.STANDARD);
    String good = "seat 0\nmoment turn\nwall 95\nrack 222b 66c 888c 66d FF SS\ndiscards 1b 2c\n";
    for (String text :
        List.of(
            good.replace("SS", "S"),
            good.replace("95", "999"),
            good.replace("95", "120"),
            good.replace("1b 2c", "2b 2b"),
            good.replace("1b 2c", "1b 2c 3c 4c 5c 6c"),
            good.replace("discards", "unseen"),
            good.replace("turn", "offer 1b from 0"),
            good.replace("turn", "pass IN 5"),
            good.replace("turn", "pass right-1") + "expect pass 2b 2b 2b blind 3\nexpect pass 1b\n",
            good + "exposed 1 444d\nwall 9\nseat 9\n",
            "İ 7\n" + "a ".repeat(6000))) {
      said.add(message(() -> PositionSheet.of("s.txt", text, table)));
    }
  }

  private static void rules(List<String> said) {
    said.add(message(() -> TableRules.STANDARD.with("wall.lastSegment", 100)));
    said.add(message(() -> TableRules.STANDARD.with("tiles.blanks", 3)));
    said.add(message(() -> TableRules.STANDARD.with("TILES.FLOWERSI", 3)));
  }

  private static void games(List<String> said) {
    StackedGame game = StackedGame.play();
    game.rack(0, "7d").rack(1, "77d J 4c").rack(2, "11b 7d 444c NNNN RRR");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1)).discard("4c");
    game.seat(2)
        .claim("4c", ClaimChoice.expose(4, 0))
        .turn(TurnChoice.exchange(1, 0), TurnChoice.mahjong());
    game.run();
    GameRecord record = game.record();
    String line = RecordJson.line(record);
    said.add(line);
    for (int at = 0; at < record.events().size(); at++) {
      int event = at;
      List<org.tallywall.core.record.GameEvent> events = new ArrayList<>(record.events());
      events.remove(event);
      GameRecord altered =
          new GameRecord(record.header(), record.wall(), record.dice(), events, record.end());
      said.add(String.valueOf(Replay.check(game.hands(), altered)));
    }
    said.add(String.valueOf(Replay.checkDealt(game.hands(), record)));
    List<Integer> wall = new ArrayList<>(record.wall());
    wall.set(wall.size() - 1, (wall.get(wall.size() - 1) + 1) % 36);
    GameRecord other =
        new GameRecord(record.header(), wall, record.dice(), record.events(), record.end());
    said.add(String.valueOf(Replay.check(game.hands(), other)));
    for (String wrong : List.of("\"size\":9", "\"size\":4,\"sIze\":1", "\"size\":1e999")) {
      said.add(message(() -> RecordReader.read("line 7", line.replace("\"size\":4", wrong))));
    }
    StackedGame illegal = StackedGame.play();
    illegal.rack(0, "7d").rack(1, "77d J 4c");
    illegal.seat(0).turn(TurnChoice.exchange(3, 3));
    said.add(
        message(
            () -> {
              illegal.run();
              return null;
            }));
  }

  private static String message(Supplier<Object> wrong) {
    try {
      return "nothing: " + wrong.get();
    } catch (RuntimeException | AssertionError said) {
      return String.valueOf(said.getMessage());
    }
  }
}
