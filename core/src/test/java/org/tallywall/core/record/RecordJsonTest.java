package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.StackedGame;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.TileText;

/** The words of a record: what anyone reads who plays a game again without this program. */
class RecordJsonTest {
  private static String part(GameRecord game, String from, String to) {
    String line = RecordJson.line(game);
    assertThat(line).doesNotContain("\n");
    int start = line.indexOf(from);
    return line.substring(start, to.isEmpty() ? line.length() : line.indexOf(to, start));
  }

  @Test
  void winByExchange_isWrittenEventByEvent() {
    StackedGame game = StackedGame.play();
    game.rack(0, "7d").rack(1, "77d J 4c").rack(2, "11b 7d 444c NNNN RRR");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1)).discard("4c");
    game.seat(2)
        .claim("4c", ClaimChoice.expose(4, 0))
        .turn(TurnChoice.exchange(1, 0), TurnChoice.mahjong());
    game.run();
    assertThat(part(game.record(), "\"dice\"", ""))
        .isEqualTo(
            "\"dice\":[3,4],\"events\":["
                + "{\"event\":\"discard\",\"seat\":0,\"tile\":\"7d\"},"
                + "{\"event\":\"claim\",\"seat\":1,\"from\":0,\"tile\":\"7d\",\"size\":4,"
                + "\"jokers\":1,\"also\":[]},"
                + "{\"event\":\"discard\",\"seat\":1,\"tile\":\"4c\"},"
                + "{\"event\":\"claim\",\"seat\":2,\"from\":1,\"tile\":\"4c\",\"size\":4,"
                + "\"jokers\":0,\"also\":[]},"
                + "{\"event\":\"exchange\",\"seat\":2,\"owner\":1,\"exposure\":0,\"tile\":\"7d\"},"
                + "{\"event\":\"mahjong\",\"seat\":2,\"by\":\"exchange\"}],"
                + "\"end\":{\"how\":\"mahjong\",\"seat\":2,\"by\":\"exchange\",\"line\":\"T1\","
                + "\"hand\":[\"4444c\",\"NNNN\",\"111b\",\"RRR\"],\"value\":25,"
                + "\"jokerless\":false,\"points\":[-50,-50,150,-50],\"wall\":99}}");
  }

  @Test
  void winOnADiscard_namesWhoseClaimsLost() {
    StackedGame game = StackedGame.play();
    game.rack(0, "3b F 7777d 7777b GGGG").rack(1, "F").rack(2, "F 222b 555c 888d WWW");
    game.draws("4b").seat(0).discard("3b").claim("F", ClaimChoice.mahjong());
    game.seat(1).discard("F");
    game.seat(2).claim("F", ClaimChoice.mahjong());
    game.run();
    assertThat(part(game.record(), "{\"event\":\"draw\"", ",\"line\""))
        .isEqualTo(
            "{\"event\":\"draw\",\"seat\":1,\"tile\":\"4b\"},"
                + "{\"event\":\"discard\",\"seat\":1,\"tile\":\"F\"},"
                + "{\"event\":\"mahjong\",\"seat\":2,\"by\":\"discard\",\"from\":1,\"also\":[],"
                + "\"also-mahjong\":[0]}],"
                + "\"end\":{\"how\":\"mahjong\",\"seat\":2,\"by\":\"discard\",\"from\":1");
  }

  @Test
  void passes_areWrittenInTheirOrder() {
    StackedGame game = StackedGame.withPasses().rack(1, "N").rack(2, "127d");
    game.seat(1).pass(PassStep.LEFT_1, "N").stops();
    game.seat(2).pass(PassStep.LEFT_1, "127d");
    game.seat(0).courtesy(2, null);
    game.seat(2).courtesy(1, null);
    game.run();
    String passes =
        part(game.record(), "{\"event\":\"pass\",\"step\":\"left-1\"", "{\"event\":\"discard\"");
    assertThat(passes)
        .contains(
            "{\"event\":\"pass\",\"step\":\"left-1\",\"from\":1,\"to\":0,\"own\":[\"N\"],\"forwarded\":[\"")
        .contains(
            "{\"event\":\"stop\",\"seats\":[1]},{\"event\":\"courtesy\",\"seats\":[0,2],\"asked\":[2,1],\"tiles\":[[\"")
        .endsWith("{\"event\":\"courtesy\",\"seats\":[1,3],\"asked\":[0,0],\"tiles\":[[],[]]},");
  }

  @Test
  void deadHandsAndEnds_areWritten() {
    StackedGame game =
        StackedGame.play("dead.calls", "AUTO", "claims.lineFit", "LENIENT")
            .rack(0, "2b")
            .rack(1, "22b");
    game.seat(0).discard("2b");
    game.seat(1).claim("2b", ClaimChoice.expose(3, 0));
    game.run();
    assertThat(RecordJson.line(game.record()))
        .contains("{\"event\":\"dead\",\"seat\":1,\"why\":\"impossible\"}");
    StackedGame wall = StackedGame.play();
    wall.run();
    assertThat(RecordJson.line(wall.record()))
        .endsWith(
            "{\"event\":\"wall-game\"}],"
                + "\"end\":{\"how\":\"wall-game\",\"points\":[0,0,0,0],\"wall\":0}}");
  }

  @Test
  void claimedJoker_namesTheKindShown() {
    StackedGame game = StackedGame.play("joker.discardClaimable", true);
    game.rack(0, "J").rack(2, "444c");
    game.seat(0).discard("J");
    game.seat(2).claim("J", new ClaimChoice.Expose(TileText.tile("4c"), 4, 0));
    game.run();
    assertThat(RecordJson.line(game.record()))
        .contains(
            "{\"event\":\"claim\",\"seat\":2,\"from\":0,\"tile\":\"J\",\"kind\":\"4c\",\"size\":4,"
                + "\"jokers\":0,\"also\":[]}");
  }

  @Test
  void header_isWrittenWithWhatApplies() {
    StackedGame game = StackedGame.play();
    game.run();
    GameRecord bare = game.record();
    String digest = bare.header().card().digest();
    assertThat(part(bare, "{", ",\"rules\""))
        .isEqualTo(
            "{\"format\":\"tallywall.game/1\",\"seed\":\"7\",\"game\":0,\"deal\":0,"
                + "\"card\":{\"card\":\"Test card\",\"digest\":\""
                + digest
                + "\"}");
    assertThat(part(bare, "\"rules\"", ",\"tiles.blanks\""))
        .isEqualTo("\"rules\":{\"tiles.flowers\":8,\"tiles.jokers\":8");
    Map<String, Object> settings = new LinkedHashMap<>();
    settings.put("player", "reckoner");
    settings.put("defense", true);
    GameRecord.Header whole =
        new GameRecord.Header(
            "defense-switch",
            -20261125L,
            43,
            8,
            "hold-back",
            2,
            bare.header().card(),
            bare.header().rules(),
            List.of("nearest", "nearest", settings, "nearest"));
    GameRecord full = new GameRecord(whole, bare.wall(), bare.dice(), bare.events(), bare.end());
    assertThat(part(full, "{", ",\"card\""))
        .isEqualTo(
            "{\"format\":\"tallywall.game/1\",\"study\":\"defense-switch\","
                + "\"seed\":\"-20261125\",\"game\":43,\"deal\":8,\"arm\":\"hold-back\",\"seat\":2");
    assertThat(part(full, "\"players\":[", ",\"wall\""))
        .isEqualTo(
            "\"players\":[\"nearest\",\"nearest\",{\"player\":\"reckoner\",\"defense\":true},"
                + "\"nearest\"]");
    assertThat(RecordReader.read("a test", RecordJson.line(full))).isEqualTo(full);
  }
}
