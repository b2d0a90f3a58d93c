package org.tallywall.experiments.study;

import java.nio.file.Path;
import org.tallywall.core.rules.RulesReader;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.TextFile;

/** Reads a file of switches: an object of those that differ from the defaults. */
public final class RulesFile {
  private RulesFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the rules
   * @throws FaultyFileException with all faults of the file
   */
  public static TableRules read(Path file) {
    Faults faults = new Faults();
    Node node = LocatedJson.read(TextFile.read(file), faults);
    TableRules rules = node == null ? null : RulesReader.read(node, faults);
    if (faults.any()) {
      throw new FaultyFileException(file.toString(), faults.faults());
    }
    return rules;
  }
}
