package org.tallywall.experiments.guide;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import org.tallywall.core.rules.RuleSwitches;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.TextFile;

/** What a file is by the looks of it, for messages about files that were mixed up. */
public enum FileKind {
  /** A card. */
  CARD,
  /** A study. */
  STUDY,
  /** A file of table rules. */
  RULES,
  /** Anything else. */
  OTHER;

  /**
   * Looks at a file.
   *
   * @param file a file, or a name that is none
   * @return what it is, {@link #OTHER} where it cannot be read or does not look like any of these
   */
  public static FileKind of(Path file) {
    if (!Files.isRegularFile(file)) {
      return OTHER;
    }
    String name = file.toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".csv")) {
      return CARD;
    }
    try {
      Node root = LocatedJson.read(TextFile.read(file), new Faults());
      return root != null && root.value() instanceof Node.Fields fields
          ? of(fields.values().keySet())
          : OTHER;
    } catch (FaultyFileException unreadable) {
      return OTHER;
    }
  }

  private static FileKind of(Set<String> fields) {
    if (fields.contains("study")) {
      return STUDY;
    } else if (fields.contains("families")) {
      return CARD;
    }
    return fields.stream().anyMatch(field -> RuleSwitches.find(field).isPresent()) ? RULES : OTHER;
  }
}
