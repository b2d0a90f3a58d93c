package org.tallywall.experiments.design.branch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.ObjIntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.strategies.catalog.Catalog;

/** Makes {@code branch.csv} of numbers of deals that a test invents. */
public final class BranchCsv {
  private static final String CARD =
      """
      { "card": "Gangway test card", "families": [ { "family": "Vanes", "lines": [
        { "tiles": "NNNN EEE WWWW RRR", "value": 30 } ] } ] }
      """;

  private final Study study;
  private final TableSetup setup;

  /**
   * A study with a map of so many squares each way.
   *
   * @param folder takes the files of the study
   * @param size squares across, and down
   */
  public BranchCsv(Path folder, int size) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("card.json"), CARD);
    String study =
        """
        { "study": "s", "card": "card.json", "seed": 3, "deals": 40, "primary": "points",
          "branch": {"at": "discard", "when": {"exposures-on-one-rack": [2], "away": [%s],
                     "wall": [%s]}, "options": ["own-need", "safest"], "player": "watchful"} }
        """
            .formatted(
                IntStream.rangeClosed(1, size)
                    .mapToObj(Integer::toString)
                    .collect(Collectors.joining(", ")),
                IntStream.rangeClosed(1, size)
                    .mapToObj(at -> Integer.toString(15 * (size + 1 - at)))
                    .collect(Collectors.joining(", ")));
    Path file = Files.writeString(folder.resolve("study.json"), study);
    this.study = StudyFile.read(file, Changes.NONE, Catalog.standard());
    this.setup = new TableSetup(new ConcreteHands(this.study.card()), this.study.rules());
  }

  /**
   * The file.
   *
   * @param deals counts the deals of a square, given its place, down the walls for each distance
   * @return its text
   */
  public String of(ObjIntConsumer<FiringTally> deals) {
    StudyTally tally = new StudyTally(PlayedDesign.planOf(study), setup);
    BranchDesign design = (BranchDesign) study.design();
    for (int square = 0; square < design.cells().count(); square++) {
      deals.accept(tally.firing(square), square);
    }
    StudyAnswer answer = new StudyAnswer(study, setup.hands(), tally, Optional.empty());
    return CsvWriter.text(BranchTable.of(study, design, tally, answer.certainty()));
  }

  /**
   * Counts a deal with one game that came to a square.
   *
   * @param tally of the square
   * @param points what the choice was worth there
   */
  public void reached(FiringTally tally, long points) {
    long[] differences = new long[study.question().measures().size()];
    differences[0] = points;
    tally.addDeal(4, 1, 40, differences);
  }

  /**
   * Counts a deal that did not come to a square.
   *
   * @param tally of the square
   */
  public void missed(FiringTally tally) {
    tally.addDeal(4, 0, 0, new long[study.question().measures().size()]);
  }
}
