package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.TextFile;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.reports.results.ResultNames;

/** Finds the card on which recorded games were played. */
final class RecordCard {
  private RecordCard() {}

  /** The card that the study beside the records names. */
  static Path of(Path records) {
    Path study = records.resolveSibling(ResultNames.STUDY);
    if (!Files.exists(study)) {
      throw new WrongInputException(
          "there is no study.json beside the records; name the card with --card");
    }
    Node root = LocatedJson.read(TextFile.read(study), new Faults());
    if (root != null
        && root.value() instanceof Node.Fields fields
        && fields.values().get("card") != null
        && fields.values().get("card").value() instanceof String path) {
      return records.resolveSibling(path);
    }
    throw new WrongInputException("\"" + study + "\" names no card; name it with --card");
  }
}
