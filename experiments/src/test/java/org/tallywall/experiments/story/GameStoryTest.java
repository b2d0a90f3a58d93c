package org.tallywall.experiments.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/** The course of a game made up by hand; the rules are not checked here, only the words. */
class GameStoryTest {
  private static final Card CARD =
      CardFile.json(
              "card",
              """
              { "card": "Hawser card", "families": [ { "family": "One", "lines": [
                { "tiles": "1111b 2222b 3333b 44b", "value": 25, "say": "the rope" } ] } ] }
              """)
          .orThrow();

  private static final int BAM_1 = 0;
  private static final int CRAK_5 = 13;
  private static final GameEvent.Losers NOBODY = new GameEvent.Losers(List.of(), List.of());

  /** The tiles in the order of kinds: East holds 1111b 5555b 9999b and two tiles more. */
  private static List<Integer> wall() {
    List<Integer> wall = new ArrayList<>();
    for (int tile : TileSet.USUAL.tiles()) {
      wall.add(tile);
    }
    return wall;
  }

  private static GameRecord game(GameRecord.End end, GameEvent... events) {
    return new GameRecord(
        new GameRecord.Header(
            "", 1, 0, 0, "", -1, new GameRecord.CardName("Hawser card", ""), Map.of(), List.of()),
        wall(),
        List.of(3, 5),
        List.of(events),
        end);
  }

  private static List<String> tell(GameRecord game, TileWords words) {
    return GameStory.of(game, CARD, SeatNames.FROM_EAST, words);
  }

  private static GameRecord.End win() {
    return new GameRecord.End(
        "mahjong",
        new GameRecord.Win(
            0, "draw", -1, "O1", List.of("1111b", "2222b", "3333b", "44b"), 25, true),
        List.of(300, -100, -100, -100),
        97);
  }

  private static GameEvent.Pass pass(int from, List<Integer> own, List<Integer> forwarded) {
    return new GameEvent.Pass("left-1", from, (from + 3) % 4, own, forwarded);
  }

  @Test
  void deal_isTold() {
    assertThat(tell(game(win()), new TypedTiles()))
        .startsWith("", "The deal")
        .contains("  East holds 111155559999b 45c.", "  Right of East holds 22226666b 11114c.");
  }

  @Test
  void passes_blindTilesAndStop_areTold() {
    List<String> lines =
        tell(
            game(
                win(),
                pass(0, List.of(BAM_1, BAM_1), List.of(5)),
                pass(1, List.of(5, 5, 5), List.of()),
                pass(2, List.of(2, 2, 2), List.of()),
                pass(3, List.of(3, 3, 3), List.of()),
                new GameEvent.Stop(List.of(1, 2)),
                new GameEvent.Courtesy(
                    List.of(0, 2), List.of(2, 1), List.of(List.of(4), List.of(6))),
                new GameEvent.Courtesy(List.of(1, 3), List.of(0, 3), List.of(List.of(), List.of())),
                new GameEvent.Courtesy(
                    List.of(0, 2), List.of(1, 1), List.of(List.of(5), List.of(4))),
                new GameEvent.Courtesy(List.of(1, 3), List.of(0, 0), List.of(List.of(), List.of())),
                new GameEvent.Discard(0, 8)),
            new TypedTiles());

    assertThat(lines)
        .containsSubsequence(
            "First left",
            "  East passes 1b 1b and one unseen tile, which was 6b, to the player left of East.",
            "  Right of East passes 6b 6b 6b to East.",
            "A second Charleston?",
            "  Right of East and across from East stop the Charleston.",
            "Courtesy",
            "  East offers two and across from East offers one: East gives 5b, and across from"
                + " East gives 7b.",
            "  Right of East offers none and left of East offers three, so no tiles are passed.",
            "  East and across from East offer one each: East gives 6b, and across from East gives"
                + " 5b.",
            "  Right of East and left of East offer none, so no tiles are passed.",
            "After the Charleston",
            "  East holds 115555679999b 45c.",
            "Play",
            "  99  East throws 9b.");
  }

  @Test
  void play_claimsExchangesAndLosers_areTold() {
    int red = Tile.RED;
    List<String> lines =
        tell(
            game(
                win(),
                new GameEvent.Discard(0, BAM_1),
                new GameEvent.Claim(1, 0, 1, 1, 3, 0, new GameEvent.Losers(List.of(2), List.of())),
                new GameEvent.Discard(1, 5),
                new GameEvent.Draw(2, red),
                new GameEvent.Discard(2, red),
                new GameEvent.Dead(3),
                new GameEvent.Draw(0, 1),
                new GameEvent.Mahjong(0, "draw", -1, NOBODY)),
            new SpokenTiles());

    assertThat(lines)
        .containsSubsequence(
            "  99  East throws a one bam.",
            "  99  Right of East calls the two bam, exposes a pung of two bams (across from East"
                + " wanted it too, for an exposure) and throws a six bam.",
            "  98  Across from East draws and throws a red.",
            "  98  The hand of the player left of East is called dead: no hand on the card can be"
                + " made from it any more.",
            "  97  East draws a two bam and declares mahjong.",
            "The end",
            "  East wins, self-picked.",
            "  The line is One O1 \u201cthe rope\u201d, worth 25, doubled because it has no jokers.",
            "  The hand is a kong of one bams, a kong of two bams, a kong of three bams and a pair"
                + " of four bams, made without jokers.",
            "  East collects 300.",
            "  Right of East pays 100.");
  }

  @Test
  void exchange_fromAnotherAndFromOneself_isTold() {
    StoryTable table = new StoryTable(game(win()));
    List<String> lines = new ArrayList<>();
    PlayStory play = new PlayStory(SeatNames.FROM_EAST, new TypedTiles(), table, lines);
    table.rack(0).add(Tile.JOKER, 2);

    play.claim(new GameEvent.Claim(0, 3, BAM_1, BAM_1, 3, 1, NOBODY));
    play.exchange(new GameEvent.Exchange(0, 0, 0, BAM_1));
    play.finish();

    assertThat(lines)
        .containsExactly(
            "  99  East calls the 1b, exposes 11bJ and exchanges 1b for the joker in her own 11bJ.");
  }

  /** The whole group is named once, in the plural, and whose it is. */
  @Test
  void exchange_spoken_isAsATeacherSaysIt() {
    PlayWords named =
        new PlayWords(new SeatNames(List.of("Ann", "Bea", "Cora", "Dot")), new SpokenTiles());
    PlayWords seats = new PlayWords(SeatNames.FROM_EAST, new SpokenTiles());
    Exposure kong = new Exposure(CRAK_5, 4, 2);

    assertThat(named.exchange(new GameEvent.Exchange(0, 2, 0, CRAK_5), kong))
        .isEqualTo("exchanges a five crak for a joker in Cora's kong of five craks");
    assertThat(named.exchange(new GameEvent.Exchange(2, 2, 0, CRAK_5), kong.redeemed()))
        .isEqualTo("exchanges a five crak for the joker in her own kong of five craks");
    assertThat(seats.exchange(new GameEvent.Exchange(0, 1, 0, CRAK_5), kong.redeemed()))
        .endsWith("the joker in the kong of five craks of the player right of East");
    assertThat(seats.mahjong(new GameEvent.Mahjong(2, "discard", 0, NOBODY)))
        .isEqualTo("declares mahjong on East's discard");
  }

  /** A line is called by family, id and nickname; a family that the id begins with is said once. */
  @Test
  void lines_ofTheCard_areCalledByFamilyAndNickname() {
    assertThat(LineNames.of(CARD, "O1")).isEqualTo("One O1 \u201cthe rope\u201d");
    assertThat(LineNames.of(CARD, "X9")).isEqualTo("X9");
  }

  @Test
  void end_wallGameAndVoid_areTold() {
    GameRecord.End wall = new GameRecord.End("wall-game", null, List.of(0, 0, 0, 0), 0);
    GameRecord.End voided = new GameRecord.End("void", null, List.of(0, 0, 0, 0), 40);

    assertThat(tell(game(wall, new GameEvent.WallGame()), new TypedTiles()))
        .endsWith("The end", "  It is a wall game: the wall is used up and nobody wins.");
    assertThat(tell(game(voided, new GameEvent.VoidGame()), new TypedTiles()))
        .endsWith("The end", "  Three hands are dead, so the game is void.");
  }

  @Test
  void spoken_tiles_areThoseOfTheTable() {
    SpokenTiles spoken = new SpokenTiles();

    assertThat(spoken.tile(CRAK_5)).isEqualTo("five crak");
    assertThat(spoken.tile(Tile.SOAP)).isEqualTo("soap");
    assertThat(spoken.one(Tile.EAST)).isEqualTo("an east");
    assertThat(spoken.tiles(List.of(Tile.RED, CRAK_5, Tile.NORTH)))
        .isEqualTo("a five crak, a north and a red");
    assertThat(spoken.rack(TileText.rack("113b 0 FF J")))
        .isEqualTo("a pair of one bams, a three bam, a soap, two flowers and a joker");
    assertThat(spoken.exposure(new Exposure(CRAK_5, 4, 2)))
        .isEqualTo("a kong of five craks with two jokers");
    assertThat(spoken.exposure(new Exposure(Tile.FLOWER, 3, 1)))
        .isEqualTo("a pung of flowers with a joker");
    assertThat(spoken.hand(List.of("FFFF", "22b", "N")))
        .isEqualTo("a kong of flowers, a pair of two bams and a single north");
  }

  @Test
  void names_notFour_areRefused() {
    assertThatThrownBy(() -> new SeatNames(List.of("Ann")))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
