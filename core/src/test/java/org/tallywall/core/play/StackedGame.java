package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.core.TestCards;
import org.tallywall.core.card.Card;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.Breach;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.record.Replay;
import org.tallywall.core.rules.TableRules;

/**
 * A game on the test card, set up by hand: stacked tiles, scripted players, no passes unless asked
 * for. Every game is played by the real engine, its books are checked at every event, and its
 * record must agree with the rules as the replay checks them.
 */
public final class StackedGame {
  private static final ConcreteHands HANDS = new ConcreteHands(TestCards.testCard());

  /** The players, East first. */
  public final List<ScriptedPlayer> seats =
      List.of(
          new ScriptedPlayer(), new ScriptedPlayer(), new ScriptedPlayer(), new ScriptedPlayer());

  private final ConcreteHands hands;
  private final TableRules rules;
  private final StackedDeal deal;
  private int[] dice = {3, 4};
  private GameRecord record;

  private StackedGame(ConcreteHands hands, TableRules rules) {
    this.hands = hands;
    this.rules = rules;
    this.deal = new StackedDeal(rules);
  }

  /** A game with all switches at their defaults, passes included. */
  public static StackedGame withPasses() {
    return new StackedGame(HANDS, TableRules.STANDARD);
  }

  /** A game with passes and one other switch. */
  public static StackedGame withPasses(String key, Object value) {
    return new StackedGame(HANDS, TableRules.STANDARD.with(key, value));
  }

  /** A game without passes. */
  public static StackedGame play() {
    return new StackedGame(HANDS, noPasses());
  }

  /** A game without passes and with one other switch. */
  public static StackedGame play(String key, Object value) {
    return new StackedGame(HANDS, noPasses().with(key, value));
  }

  /** A game without passes and with two other switches. */
  public static StackedGame play(String key, Object value, String other, Object otherValue) {
    return new StackedGame(HANDS, noPasses().with(key, value).with(other, otherValue));
  }

  /** A game without passes on another card. */
  public static StackedGame on(Card card, TableRules rules) {
    return new StackedGame(new ConcreteHands(card), rules);
  }

  /** The rules without passes. */
  public static TableRules noPasses() {
    return TableRules.of(Map.of("charleston.first", "NONE", "charleston.courtesy", "NONE"));
  }

  /** Deals a seat these tiles; gaps are filled with tiles that no line wants. */
  public StackedGame rack(int seat, String tiles) {
    deal.rack(seat, tiles);
    return this;
  }

  /** The first draws, single symbols; "-" for any tile. */
  public StackedGame draws(String tiles) {
    deal.draws(tiles);
    return this;
  }

  /** The last draws of the wall. */
  public StackedGame lastDraws(String tiles) {
    deal.lastDraws(tiles);
    return this;
  }

  /** The dice; 3 and 4 otherwise. */
  public StackedGame dice(int first, int second) {
    dice = new int[] {first, second};
    return this;
  }

  /** The player of a seat, to be told what to do. */
  public ScriptedPlayer seat(int seat) {
    return seats.get(seat);
  }

  /** Plays it to its end and checks it. */
  public Outcome run() {
    GameRecorder recorder = new GameRecorder();
    BalancedBooks books = new BalancedBooks();
    Game game = new Game(new TableSetup(hands, rules), seats, new ListenerFan(books, recorder));
    Outcome outcome = game.play(deal.deal(dice));
    record =
        recorder.record(
            new GameRecord.Header(
                "",
                7,
                0,
                0,
                "",
                -1,
                new GameRecord.CardName(hands.card().name(), hands.card().digest()),
                rules.switches(),
                List.of("scripted", "scripted", "scripted", "scripted")));
    assertThat(Replay.check(hands, record)).as("the record of the game").isEmpty();
    assertThat(books.checked).isGreaterThan(record.events().size());
    return outcome;
  }

  /** The record of the game played. */
  public GameRecord record() {
    return record;
  }

  /** Its events of one kind. */
  public <E extends GameEvent> List<E> events(Class<E> kind) {
    return record.events().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Its events from a place on, in short words, as in "2 draws 5b". */
  public List<String> course() {
    return record.events().stream().map(Course::word).toList();
  }

  /** What the replay says when another event is put in its place, and all after it left out. */
  public Breach breachOf(int at, GameEvent planted) {
    List<GameEvent> events = new ArrayList<>(record.events().subList(0, at));
    events.add(planted);
    GameRecord changed =
        new GameRecord(record.header(), record.wall(), record.dice(), events, record.end());
    return Replay.check(hands, changed).orElse(null);
  }

  /** The hands of its card. */
  public ConcreteHands hands() {
    return hands;
  }
}
