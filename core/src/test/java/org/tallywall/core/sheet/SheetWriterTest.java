package org.tallywall.core.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.MixedTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.ViewText;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileText;

/** What a seat knows, written down and read again, is what it knew. */
class SheetWriterTest {
  private static final ConcreteHands HANDS = new ConcreteHands(MixedTable.card());
  private static final TableRules LENIENT = TableRules.of(Map.of("claims.lineFit", "LENIENT"));

  private final Map<String, Integer> lines = new TreeMap<>();
  private int questions;

  static List<TableRules> rules() {
    return MixedTable.rules();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everyQuestion_writtenAndRead_saysWhatTheSeatKnew(TableRules rules) {
    play(rules, 0, 4);
    assertThat(questions).isGreaterThan(200);
  }

  /** The games must hold what is hard to write down, or they would prove little. */
  @Test
  @Tag("long")
  void everyQuestion_ofHundredsOfGames_andEveryKindOfLine() {
    for (TableRules rules : rules()) {
      play(rules, 4, 44);
    }
    assertThat(lines.keySet())
        .contains(
            "seat", "moment", "wall", "rack", "exposed", "discards", "passed", "received", "blind")
        .contains("dead", "stopped", "courtesy", "exchanged", "lost")
        .contains("turn claimed", "now", "nothing", "in order");
    assertThat(questions).isGreaterThan(10_000);
  }

  /** What games of these players do not bring about. */
  @Test
  void sheet_withAllThatIsRare_isWrittenAsItWasRead() {
    String text =
        """
        seat     0
        moment   turn
        wall     97
        rack     222b 66888c 66d EW FF
        exposed  2 SSJJ SSJ
        discards NE
        dead     1
        exchanged 3 S from 2 group 2
        exchanged 3 G from 1 group 3
        lost     3 N mahjong
        lost     2 N
        """;
    SheetView view =
        PositionSheet.of("rare", text, new TableSetup(Sheets.TABLE.hands(), LENIENT)).view();
    assertThat(view.exchanges())
        .containsExactly(
            new SeatView.ExchangeSeen(3, 2, 1, TileText.tile("S")),
            new SeatView.ExchangeSeen(3, 1, 2, TileText.tile("G")));
    assertThat(view.dead(1)).isTrue();
    assertThat(view.lostClaims())
        .containsExactly(
            new SeatView.LostClaim(3, TileText.tile("N"), true),
            new SeatView.LostClaim(2, TileText.tile("N"), false));
    assertThat(SheetWriter.text(view, new Moment.Turn(-1))).isEqualTo(text);
  }

  private void play(TableRules rules, int from, int to) {
    TableSetup setup = new TableSetup(HANDS, rules);
    for (int deal = from; deal < to; deal++) {
      play(setup, deal);
    }
  }

  private void play(TableSetup setup, int deal) {
    List<Player> players = new ArrayList<>();
    for (Player player : MixedTable.players(deal)) {
      players.add(new NotedPlayer(player, (view, moment, move) -> check(view, moment)));
    }
    new Game(setup, players, GameListener.NONE).play(Deal.of(7, deal, setup.rules().tiles()));
  }

  private void check(SeatView view, Moment moment) {
    String text = SheetWriter.text(view, moment);
    PositionSheet sheet = PositionSheet.of("written", text, view.table());
    assertThat(sheet.moment()).isEqualTo(moment);
    assertThat(knowledge(sheet.view())).as(text).isEqualTo(knowledge(view));
    assertThat(SheetWriter.text(sheet.view(), moment)).isEqualTo(text);
    assertThat(sheet.discardsLeftOut()).isZero();
    questions++;
    for (String line : text.split("\n")) {
      if (!line.startsWith(" ")) {
        lines.merge(line.split(" ")[0], 1, Integer::sum);
      }
      for (String word : List.of("turn claimed", "now", "nothing", "in order")) {
        if (line.matches(".* " + word + "\\b.*")) {
          lines.merge(word, 1, Integer::sum);
        }
      }
    }
  }

  /** All but the number of events, which no sheet says. */
  private static String knowledge(SeatView view) {
    return ViewText.of(view).replaceAll("\nevents .*", "");
  }
}
