package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.rules.RuleGroup;
import org.tallywall.core.rules.RuleMeaning;
import org.tallywall.core.rules.RuleMeanings;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.guide.RuleWords;
import org.tallywall.experiments.guide.RulesForm;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the table rules that can be set, and writes a file of them to edit. */
@Command(
    name = "rules",
    description =
        "Lists the table rules that you can set: what each decides, its values, the usual one.",
    footer = {
      "Examples:",
      "  tallywall rules                         every rule, with its values",
      "  tallywall rules wall.cold               what each value of one rule means",
      "  tallywall rules charleston              the rules whose names begin so",
      "  tallywall rules --find joker            rules that have to do with jokers",
      "  tallywall rules --write my-rules.json   a file of all rules to edit, for --rules"
    })
final class RulesCommand implements Callable<Integer> {
  private static final String INDENT = "      ";

  private final Console console;

  @Parameters(
      arity = "0..1",
      paramLabel = "NAME",
      description = "One rule, or the word that several begin with.")
  private String name;

  @Option(
      names = "--find",
      paramLabel = "WORD",
      description = "Looks for rules that have this word in their name, meaning or values.")
  private String wanted;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description = "Writes all rules into a new file, each at its usual value, to be edited.")
  private Path file;

  RulesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (List.of(name != null, wanted != null, file != null).stream().filter(is -> is).count() > 1) {
      throw new WrongInputException("take one of these: a name, --find or --write");
    } else if (file != null) {
      NewFile.write(file, RulesForm.text(), console);
      console.say("Next: edit it, then add --rules " + Words.typed(file.toString()));
    } else if (name != null) {
      print(named(), true);
    } else if (wanted != null) {
      print(found(), true);
    } else {
      print(RuleMeanings.all(), false);
      console.say("");
      console.say("tallywall rules NAME says what each value of a rule means.");
    }
    return Program.DONE;
  }

  private List<RuleMeaning> named() {
    List<RuleMeaning> named = RuleWords.named(name);
    if (!named.isEmpty()) {
      return named;
    }
    List<String> known = new ArrayList<>();
    RuleMeanings.all().forEach(meaning -> known.add(meaning.key()));
    RuleMeanings.all().forEach(meaning -> known.add(meaning.key().replaceFirst("\\..*", "")));
    throw new WrongInputException(
        "there is no rule %s%s (to look for a word: tallywall rules --find WORD)"
            .formatted(Words.quoted(name), Nearest.hint(name, known)));
  }

  private List<RuleMeaning> found() {
    List<RuleMeaning> found = RuleWords.find(wanted);
    if (wanted.isBlank() || found.isEmpty()) {
      throw new WrongInputException(
          wanted.isBlank()
              ? "--find needs a word, as in --find joker"
              : "no rule has %s in its name, meaning or values; try a shorter word"
                  .formatted(Words.quoted(wanted)));
    }
    return found;
  }

  private void print(List<RuleMeaning> meanings, boolean withChoices) {
    RuleGroup group = null;
    for (RuleMeaning meaning : meanings) {
      if (meaning.group() != group) {
        console.say((group == null ? "" : "\n") + meaning.group().title());
        group = meaning.group();
      }
      wrap("  ", RuleWords.summary(meaning));
      wrap(INDENT, meaning.sentence());
      if (withChoices && !meaning.words().isEmpty()) {
        RuleWords.choices(meaning).forEach(choice -> wrap(INDENT + "  ", choice));
      }
    }
  }

  private void wrap(String indent, String text) {
    Words.wrapped(text, indent, console.width()).forEach(console::say);
  }
}
