package org.tallywall.experiments.night;

import java.nio.file.Path;
import java.util.List;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.run.RunEndingPlayerException;
import org.tallywall.experiments.run.SpoiledDeal;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.results.ResultNames;
import org.tallywall.reports.schema.FaultColumns;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.strategies.catalog.PlayerType;

/** Says which player spoiled or held up which game, and how to see it again. */
final class FaultWords {
  private final Study study;

  FaultWords(Study study) {
    this.study = study;
  }

  /** A sentence about a fault, with the command that shows it from where the user is. */
  String fault(SpoiledDeal fault, Path studyFile) {
    return "the player \"%s\" at seat %s %s in deal %s%s; see it again with: %s"
        .formatted(
            player(fault),
            fault.seat(),
            what(fault),
            fault.deal(),
            fault.illegal() ? " (" + fault.what() + ")" : "",
            command(place(fault), studyFile));
  }

  /** A sentence about a player after which the run could not go on. */
  String ended(RunEndingPlayerException end, Path studyFile) {
    GamePlace place = end.game();
    return "the player \"%s\" at seat %s %s in deal %s; see it again with: %s"
        .formatted(
            player(place, end.seat()),
            end.seat(),
            end.getMessage(),
            place.deal(),
            command(place, studyFile));
  }

  /** Whether a player of the game comes from a jar of the user's own. */
  boolean ownPlayer(RunEndingPlayerException end) {
    return type(end.game(), end.seat()).origin().isPresent();
  }

  /** The deals left out, with commands that hold in the results folder. */
  Table table(List<SpoiledDeal> faults) {
    TableBuilder table =
        Table.builder(FaultColumns.FILE, "Deals left out because a player failed")
            .columns(FaultColumns.all());
    for (SpoiledDeal fault : faults) {
      table.row(
          new Row()
              .set(FaultColumns.DEAL, fault.deal())
              .set(FaultColumns.ARM, fault.arm())
              .set(FaultColumns.SEAT, fault.seat())
              .set(FaultColumns.PLAYER, player(fault))
              .set(FaultColumns.FAULT, what(fault))
              .set(FaultColumns.WORDS, fault.what())
              .set(FaultColumns.COMMAND, command(place(fault), Path.of(ResultNames.STUDY))));
    }
    return table.build();
  }

  private static String what(SpoiledDeal fault) {
    return fault.illegal() ? "answered illegally" : "broke down";
  }

  private static GamePlace place(SpoiledDeal fault) {
    return new GamePlace(fault.deal(), 0, fault.arm(), fault.studied());
  }

  private String player(SpoiledDeal fault) {
    return player(place(fault), fault.seat());
  }

  private String player(GamePlace place, int seat) {
    return type(place, seat).id();
  }

  private PlayerType type(GamePlace place, int seat) {
    String arm = place.arm().isEmpty() ? null : place.arm();
    Integer studied = place.seat() == GamePlace.ALL ? null : place.seat();
    return PlayedDesign.of(study).game(place.deal(), arm, studied).players().get(seat).type();
  }

  private String command(GamePlace place, Path studyFile) {
    String arm = place.arm().isEmpty() ? "" : " --arm " + Words.typed(place.arm());
    String seat = place.seat() == GamePlace.ALL ? "" : " --seat " + place.seat();
    return "tallywall game --study "
        + Words.typed(studyFile.toString())
        + " --deal "
        + place.deal()
        + arm
        + seat
        + (study.jars().isEmpty() ? "" : " --trust-jars");
  }
}
