package org.tallywall.experiments.deals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.ListenerFan;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.record.RecordJson;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.run.GreedyPlayerException;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.SpoiledDeal;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.tally.TallyListener;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * The tables of one thread: it sits players down, plays their games, and keeps what is asked for. A
 * player that sits at the same seat in several of a study's tables is one object, for it keeps
 * nothing from one question to the next that its view could not rebuild.
 */
public final class Tables {
  private final Study study;
  private final TableSetup setup;
  private final boolean comparesCourses;
  private final UnaryOperator<GamePlace> replayed;
  private final LongFunction<Deal> deals;
  private final Pulse pulse;
  private final TallyListener tally = new TallyListener();
  private final CourseListener course = new CourseListener();
  private final StanceListener stances = new StanceListener(course);
  private final GameRecorder recorder = new GameRecorder();
  private final Map<String, Player> seated = new HashMap<>();
  private final KeptTables laid = new KeptTables();
  private List<String> records;
  private boolean paused;

  /**
   * Tables for one thread.
   *
   * @param study the study
   * @param setup the card and the rules
   * @param comparesCourses whether courses of games will be asked for
   * @param replayed a game's place as the command that plays one game again wants it
   * @param deals the deals by their numbers
   * @param pulse shows whether the players still answer
   */
  public Tables(
      Study study,
      TableSetup setup,
      boolean comparesCourses,
      UnaryOperator<GamePlace> replayed,
      LongFunction<Deal> deals,
      Pulse pulse) {
    this.pulse = pulse;
    this.study = study;
    this.deals = deals;
    this.setup = setup;
    this.comparesCourses = comparesCourses;
    this.replayed = replayed;
  }

  /**
   * A deal by its number.
   *
   * @param number the number
   * @return the deal
   */
  public Deal deal(long number) {
    return deals.apply(number);
  }

  /**
   * The card and the rules.
   *
   * @return the same for all tables
   */
  public TableSetup setup() {
    return setup;
  }

  /**
   * Where the next games are counted, seat by seat.
   *
   * @return the listener of all games
   */
  public TallyListener tally() {
    return tally;
  }

  /**
   * The course of the game that was played last.
   *
   * @return the course; of no use where courses are not compared
   */
  public Course course() {
    return course.course();
  }

  /**
   * The steps of defense of the game that was played last.
   *
   * @return the steps; of no use where courses are not compared
   */
  public StanceListener stances() {
    return stances;
  }

  /**
   * From now on games are written down.
   *
   * @param lines takes a line a game; null where games are not written down
   */
  public void keep(List<String> lines) {
    records = lines;
  }

  /** The next games are not written down, whatever was said before. */
  public void pause() {
    paused = true;
  }

  /** From now on games are written down again, where they were to be. */
  public void goOn() {
    paused = false;
  }

  /**
   * The player of a seat; one that is shown the table sits at one table only.
   *
   * @param spec which player
   * @param seat its seat
   * @return the player
   */
  public Player player(PlayerSpec spec, int seat) {
    return spec.mark().isPresent()
        ? spec.make()
        : seated.computeIfAbsent(seat + " " + StudyJson.digest(spec), key -> spec.make());
  }

  /**
   * Four players at a table; tables used lately are kept.
   *
   * @param specs which players, East first
   * @return the table
   */
  public Table table(List<PlayerSpec> specs) {
    String key = specs.stream().map(StudyJson::digest).collect(Collectors.joining(" "));
    return laid.table(key, () -> lay(specs));
  }

  private Table lay(List<PlayerSpec> specs) {
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < specs.size(); seat++) {
      players.add(player(specs.get(seat), seat));
    }
    return new Table(players, specs.stream().map(PlayerSpec::written).toList());
  }

  /**
   * Four players at a table, some of them not as a study names them.
   *
   * @param players East first
   * @param written what records say of them
   * @return the table
   */
  public Table table(List<Player> players, List<Object> written) {
    return new Table(players, written);
  }

  /** A table at which games can be played. */
  public final class Table {
    private final List<Player> players;
    private final List<Object> written;
    private final Game counted;
    private final Game recorded;

    private Table(List<Player> players, List<Object> written) {
      this.players = players;
      this.written = written;
      GameListener heard = comparesCourses ? new ListenerFan(tally, course, stances) : tally;
      List<Player> watched = pulse.watched(players);
      this.counted = new Game(setup, watched, heard);
      this.recorded = new Game(setup, watched, new ListenerFan(heard, recorder));
    }

    /**
     * Plays a game.
     *
     * @param deal the deal
     * @param place which game of the study it is
     * @throws PlayerFaultException if a player spoils it
     * @throws GreedyPlayerException if the memory is used up while a player is asked
     */
    public void play(Deal deal, GamePlace place) {
      boolean keeps = records != null && !paused;
      Game game = keeps ? recorded : counted;
      stances.sit(players);
      pulse.begins(replayed.apply(place));
      try {
        game.play(deal);
      } catch (IllegalMoveException illegal) {
        throw fault(place, illegal.seat(), illegal);
      } catch (OutOfMemoryError full) {
        throw new GreedyPlayerException(replayed.apply(place), game.lastAsked(), full);
      } catch (Throwable broken) {
        throw fault(place, game.lastAsked(), broken);
      }
      if (keeps) {
        records.add(
            RecordJson.line(recorder.record(RecordHeaders.of(study, setup, place, written))));
      }
    }

    private PlayerFaultException fault(GamePlace place, int seat, Throwable cause) {
      boolean illegal = cause instanceof IllegalMoveException;
      String what = illegal ? cause.getMessage() : "";
      int studied = replayed.apply(place).seat();
      return new PlayerFaultException(
          new SpoiledDeal(place.deal(), place.arm(), studied, seat, illegal, what), cause);
    }
  }
}
