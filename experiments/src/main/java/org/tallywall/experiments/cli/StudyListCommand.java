package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Shown;
import org.tallywall.core.text.TextFile;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.guide.ReadyFiles;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine.Command;

/** Lists the studies that come with the program. */
@Command(
    name = "list",
    description = "Lists the studies that are ready to run, with their questions.")
final class StudyListCommand implements Callable<Integer> {
  private final Console console;

  StudyListCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    for (Path study : studies()) {
      console.say(study.toString());
      Words.wrapped(question(study), "    ", console.width()).forEach(console::say);
    }
    console.say("");
    console.say("tallywall run STUDY plays one; --card FILE plays it on your own card.");
    return Program.DONE;
  }

  private static List<Path> studies() {
    ReadyFiles ready =
        ReadyFiles.find()
            .orElseThrow(
                () ->
                    new WrongInputException(
                        "the studies that come with the program are not beside it; unpack the"
                            + " whole zip file again"));
    try {
      return ready.studies();
    } catch (IOException unreadable) {
      throw new FailedException("the folder of the studies cannot be read", unreadable);
    }
  }

  private static String question(Path study) {
    Node root = LocatedJson.read(TextFile.read(study), new Faults());
    if (root != null && root.value() instanceof Node.Fields fields) {
      Node question = fields.values().get("question");
      if (question != null && question.value() instanceof String text) {
        return Shown.text(text);
      }
    }
    return "(no question)";
  }
}
