package org.tallywall.experiments.design;

import java.util.List;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.answer.Way;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;
import org.tallywall.reports.table.Table;

/**
 * A design with all that is asked of it after its file was read: what it counts, how it plays a
 * deal, where one of its games is found again, and its tables. Whatever depends on the design of a
 * study is asked here.
 */
public interface PlayedDesign extends Design {
  /**
   * The design of a study.
   *
   * @param study a study of one of the designs that can be played
   * @return its design
   */
  static PlayedDesign of(Study study) {
    return (PlayedDesign) study.design();
  }

  /**
   * What a study counts.
   *
   * @param study a study of one of the designs that can be played
   * @return the plan
   */
  static TallyPlan planOf(Study study) {
    return of(study).plan(Measure.values().length);
  }

  /**
   * What is counted.
   *
   * @param measures how many measures the study has
   * @return the plan
   */
  TallyPlan plan(int measures);

  /** Refuses what the design's players cannot play. */
  default void check() {}

  /**
   * Plays the design's deals.
   *
   * @param study the study
   * @param tables the tables of one thread
   * @return what plays them
   */
  DealPlayer deals(Study study, Tables tables);

  /**
   * Whether courses of games are compared.
   *
   * @return true where the tables have to note them
   */
  default boolean comparesCourses() {
    return false;
  }

  /**
   * A game's place as the command that plays one game again wants it.
   *
   * @param place the game's place in the study
   * @return its place for that command
   */
  default GamePlace replayed(GamePlace place) {
    return place;
  }

  /**
   * Finds one game.
   *
   * @param deal the deal
   * @param arm the way of playing; null where none is said
   * @param seat the studied seat; null where none is said
   * @return the game
   * @throws org.tallywall.experiments.error.WrongInputException if there is no such game
   */
  StudyGame game(long deal, String arm, Integer seat);

  /**
   * The seats whose games are counted.
   *
   * @return each once
   */
  List<Integer> seats();

  /**
   * The ways of playing, with what was counted of each.
   *
   * @param tally what was counted
   * @return in the study's order
   */
  List<Way> ways(StudyTally tally);

  /**
   * The tables that only this design has.
   *
   * @param answer what the study answers
   * @return in the order in which they are explained
   */
  List<Table> tables(StudyAnswer answer);

  /**
   * How small a difference the whole run will be able to notice.
   *
   * @param study the study
   * @param known what was counted of some of its deals, 1 or more
   * @return one for each comparison; empty where nothing is compared as a whole
   */
  default List<Noticed> notices(Study study, StudyTally known) {
    return List.of();
  }

  /**
   * All tables, each for a file of its own.
   *
   * @param answer what a study of this design answers
   * @return in the order in which they are explained
   */
  default List<Table> allTables(StudyAnswer answer) {
    return answer.all(ways(answer.tally()), tables(answer));
  }
}
