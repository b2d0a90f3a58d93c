package org.tallywall.experiments.rack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.TextFile;
import org.tallywall.core.tile.NotationException;

/** A file of racks, one a line, exposures behind a slash. Blank lines are passed over. */
public final class RackFile {
  private RackFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return its racks in order, at least one
   * @throws FaultyFileException with all faults of the file
   */
  public static List<RackQuestion> read(Path file) {
    Faults faults = new Faults();
    List<RackQuestion> questions = new ArrayList<>();
    int number = 0;
    for (String row : TextFile.read(file).lines().toList()) {
      number++;
      if (!row.isBlank()) {
        try {
          questions.add(RackQuestion.read(row));
        } catch (NotationException wrong) {
          faults.fault(new Place(number, wrong.position()), wrong.getMessage());
        }
      }
    }
    if (questions.isEmpty() && !faults.any()) {
      faults.fault(Place.FILE, "there is no rack in this file; write one a line");
    }
    if (faults.any()) {
      throw new FaultyFileException(file.toString(), faults.faults());
    }
    return questions;
  }
}
