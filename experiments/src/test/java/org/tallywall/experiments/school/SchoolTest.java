package org.tallywall.experiments.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.deals.RecordHeaders;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Decisions drawn from whole games of a small size. */
class SchoolTest {
  private static final int GAMES = 30;
  private static final TableSetup SETUP =
      new TableSetup(
          new ConcreteHands(CardFile.read(Path.of("cards/saltmarsh-quay.json")).orThrow()),
          TableRules.STANDARD);
  private static final Seated NEAREST =
      Seated.of(new PlayerSpec(Catalog.standard().find("nearest"), Map.of()));
  private static final SchoolQuestion QUESTION =
      new SchoolQuestion(SETUP, Collections.nCopies(4, NEAREST), Guesses.USUAL, 7, GAMES, 1, 4);

  private static School school(int threads) {
    return new School(QUESTION, new RunLimits(threads, 60_000, () -> 0));
  }

  private static List<Judged> looked(int threads, int from) {
    School school = school(threads);
    List<Judged> all = new ArrayList<>();
    school.look(school.count(game -> {}), from, all::add);
    return all;
  }

  @Test
  void anyThreads_findTheSame_andGoOnTheSame() {
    List<Judged> all = looked(1, 0);

    assertThat(all).hasSizeGreaterThanOrEqualTo(Kind.values().length - 2);
    assertThat(all).extracting(Judged::kind).doesNotHaveDuplicates();
    assertThat(looked(3, 0)).isEqualTo(all);
    assertThat(looked(2, 5)).isEqualTo(all.subList(5, all.size()));
    assertThat(all).allMatch(one -> one.counts() && !one.made().isEmpty());
  }

  /** The sheet of a decision asks what the line of it says. */
  @Test
  void sheet_isThatOfTheDecision() {
    School school = school(1);
    Counts counts = school.count(game -> {});
    for (Judged one : looked(1, 0)) {
      PositionSheet sheet = PositionSheet.of("sheet", school.sheet(counts, one.number()), SETUP);
      assertThat(sheet.moment().text()).isEqualTo(one.moment());
      assertThat(sheet.seat()).isEqualTo(one.seat());
      assertThat(sheet.choice(one.made()).moves()).isPresent();
    }
  }

  /**
   * Counted once more from records: turns are discards, exchanges and self-picked hands; nearest
   * declares whatever is finished.
   */
  @Test
  void counts_areThoseOfTheRecords() {
    int passes = 0;
    int stops = 0;
    int turns = 0;
    int calls = 0;
    int wins = 0;
    for (int deal = 0; deal < GAMES; deal++) {
      for (GameEvent event : events(deal)) {
        if (event instanceof GameEvent.Pass) {
          passes++;
        } else if (event instanceof GameEvent.Stop) {
          stops += 4;
        } else if (event instanceof GameEvent.Discard || event instanceof GameEvent.Exchange) {
          turns++;
        } else if (event instanceof GameEvent.Claim claim) {
          calls += 1 + claim.losers().exposures().size();
        } else if (event instanceof GameEvent.Mahjong won) {
          wins += 1 + won.losers().mahjongs().size();
          calls += won.losers().exposures().size();
        }
      }
    }
    Counts counts = school(2).count(game -> {});
    assertThat(
            sum(
                counts,
                Kind.FIRST_RIGHT,
                Kind.FIRST_ACROSS,
                Kind.FIRST_LEFT,
                Kind.SECOND_LEFT,
                Kind.SECOND_ACROSS,
                Kind.LAST_RIGHT))
        .isEqualTo(passes)
        .isGreaterThan(100);
    assertThat(sum(counts, Kind.STOP)).isEqualTo(stops);
    assertThat(sum(counts, Kind.THROW_EARLY, Kind.THROW_MIDDLE, Kind.THROW_LATE, Kind.REDEEM))
        .isEqualTo(turns)
        .isGreaterThan(300);
    assertThat(sum(counts, Kind.CALLED)).isEqualTo(calls).isGreaterThan(10);
    assertThat(sum(counts, Kind.WIN)).isEqualTo(wins).isGreaterThan(5);
  }

  private static int sum(Counts counts, Kind... kinds) {
    int sum = 0;
    for (Kind kind : kinds) {
      sum += counts.of(kind).sum().intValueExact();
    }
    return sum;
  }

  private static List<GameEvent> events(int deal) {
    GameRecorder recorder = new GameRecorder();
    List<Player> four = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      four.add(NEAREST.maker().get());
    }
    new Game(SETUP, four, recorder).play(Deal.of(7, deal, SETUP.rules().tiles()));
    return recorder.record(RecordHeaders.of(SETUP, "", 7, deal, List.of())).events();
  }

  /** Every line comes back as it was; a line cut short, or out of its place, ends the reading. */
  @Test
  void file_isReadBack() {
    List<Judged> all = looked(2, 0);
    StringBuilder text = new StringBuilder(SchoolFile.head());
    all.forEach(one -> text.append(SchoolFile.line(one)));

    assertThat(SchoolFile.read(text.toString())).isEqualTo(all);
    assertThat(SchoolFile.read(text.substring(0, text.length() - 1)))
        .isEqualTo(all.subList(0, all.size() - 1));
    String spoiled = text.toString().replaceFirst("\n3,", "\n4,");
    assertThat(SchoolFile.read(spoiled)).isEqualTo(all.subList(0, 3));
    assertThat(SchoolFile.read("number\n" + text)).isEmpty();
    String impossible = SchoolFile.head() + "0,stop,0,0,99,stop,go on,2,stop,4,10,1,0,0,0\n";
    assertThat(SchoolFile.read(impossible)).isEmpty();
    assertThat(SchoolFile.read(impossible.replace("4,10,1", "4,10,100"))).hasSize(1);
  }
}
