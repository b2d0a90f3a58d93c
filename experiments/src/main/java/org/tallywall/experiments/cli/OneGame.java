package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.deals.RecordHeaders;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyGame;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunEndingPlayerException;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.story.Note;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Patience;
import org.tallywall.experiments.study.RulesFile;
import org.tallywall.experiments.study.Study;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.reason.ExplainedPlayer;
import picocli.CommandLine.Option;

/**
 * One deal to be played.
 *
 * @param study the study's name, or empty
 * @param card the card
 * @param rules the rules
 * @param players who sits where
 * @param seed the seed
 * @param deal the deal
 * @param luck which sample of the luck of decisions
 * @param seconds how long a player may take for an answer
 */
record OneGame(
    String study,
    Card card,
    TableRules rules,
    List<PlayerSpec> players,
    long seed,
    long deal,
    int luck,
    long seconds) {

  /** The words that name a deal. */
  static final class Words {
    @Option(names = "--deal", paramLabel = "NUMBER", description = "Which deal, from 0.")
    private Long deal;

    @Option(names = "--card", paramLabel = "FILE", description = "The card file.")
    private Path card;

    @Option(names = "--seed", paramLabel = "NUMBER", description = "The seed.")
    private Long seed;

    @Option(
        names = "--players",
        paramLabel = "A,B,C,D",
        description =
            "Four players, East first: names, or .json files with settings, as in a study.")
    private String players;

    @Option(names = "--rules", paramLabel = "FILE", description = "A file of table rules.")
    private Path rules;

    @Option(
        names = "--study",
        paramLabel = "FILE",
        description = "Takes card, rules, seed and players from a study.")
    private Path study;

    @Option(
        names = "--arm",
        paramLabel = "NAME",
        description = "Which of the study's ways of playing.")
    private String arm;

    @Option(names = "--seat", paramLabel = "NUMBER", description = "Where the studied player sits.")
    private Integer seat;

    /** Whether a study says who plays. */
    boolean ofStudy() {
      return study != null;
    }
  }

  static OneGame of(Words words, Catalog catalog, Catalog inFiles) {
    if (words.deal == null) {
      throw new WrongInputException("--deal is missing; write its number, as in --deal 0");
    }
    return words.study == null ? ofWords(words, catalog, inFiles) : ofStudy(words, catalog);
  }

  private static OneGame ofStudy(Words words, Catalog catalog) {
    if (words.card != null || words.rules != null || words.seed != null || words.players != null) {
      throw new WrongInputException(
          "the study names the card, rules, seed and players; leave out --card, --rules, --seed"
              + " and --players");
    }
    Study study = StudyFile.read(words.study, Changes.NONE, catalog);
    StudyGame game = PlayedDesign.of(study).game(words.deal, words.arm, words.seat);
    return new OneGame(
        study.question().name(),
        study.card(),
        study.rules(),
        game.players(),
        study.extent().seed(),
        words.deal,
        game.luck(),
        study.extent().patience().decisionSeconds());
  }

  private static OneGame ofWords(Words words, Catalog catalog, Catalog inFiles) {
    if (words.arm != null || words.seat != null) {
      throw new WrongInputException("--arm and --seat belong to --study");
    }
    List<String> missing = new ArrayList<>();
    if (words.card == null) {
      missing.add("--card FILE");
    }
    if (words.seed == null) {
      missing.add("--seed NUMBER");
    }
    if (words.players == null) {
      missing.add("--players A,B,C,D");
    }
    if (!missing.isEmpty()) {
      throw new WrongInputException(
          "missing: " + String.join(", ", missing) + "; or name a study with --study FILE");
    }
    TableRules rules = words.rules == null ? TableRules.STANDARD : RulesFile.read(words.rules);
    Card card = CardFile.read(words.card).orThrow();
    return new OneGame(
        "",
        card,
        rules,
        players(words.players, catalog, inFiles, card),
        words.seed,
        words.deal,
        0,
        Patience.USUAL.decisionSeconds());
  }

  private static List<PlayerSpec> players(
      String text, Catalog catalog, Catalog inFiles, Card card) {
    List<String> names = Arrays.stream(text.split(",", -1)).map(String::strip).toList();
    if (names.size() != 4) {
      throw new WrongInputException(
          "--players takes four players with commas between, East first; not \""
              + Shown.word(text)
              + "\"");
    }
    return names.stream().map(name -> PlayerWord.read(name, catalog, inFiles, card)).toList();
  }

  /** Plays the deal and writes it down. */
  GameRecord play() {
    return playWith(players.stream().map(PlayerSpec::make).toList());
  }

  /** Plays the deal, writes it down and notes the reasons of every choice. */
  GameRecord playAndNote(List<Note> notes) {
    List<Player> heard = new ArrayList<>();
    for (PlayerSpec spec : players) {
      heard.add(
          new ExplainedPlayer(
              spec.make(),
              (view, move, why) -> notes.add(new Note(view.events(), view.seat(), move, why))));
    }
    return playWith(heard);
  }

  private GameRecord playWith(List<Player> seated) {
    TableSetup setup = new TableSetup(new ConcreteHands(card), rules);
    GameRecorder recorder = new GameRecorder();
    Pulse pulse = new Pulse();
    Game game = new Game(setup, pulse.watched(seated), recorder);
    try {
      Patient.wait(
          pulse,
          RunLimits.of(1, seconds),
          () -> {
            game.play(Deal.of(seed, deal, rules.tiles()).withLuck(luck));
            return recorder;
          });
    } catch (IllegalMoveException illegal) {
      throw new FailedException(
          who(illegal.seat()) + " made an illegal move: " + illegal.getMessage(), illegal);
    } catch (RunEndingPlayerException end) {
      throw new FailedException(who(end.seat()) + " " + end.getMessage(), end);
    } catch (Throwable broken) {
      throw new FailedException(who(game.lastAsked()) + " broke down; --debug shows where", broken);
    }
    return recorder.record(
        RecordHeaders.of(
            setup, study, seed, deal, players.stream().map(PlayerSpec::written).toList()));
  }

  private String who(int seat) {
    return "the player \"" + players.get(seat).type().id() + "\" at seat " + seat;
  }
}
