package org.tallywall.experiments.guide;

import java.util.List;
import org.tallywall.core.rules.RuleGroup;
import org.tallywall.core.rules.RuleMeaning;
import org.tallywall.core.rules.RuleMeanings;
import org.tallywall.experiments.words.Words;

/** A file of table rules to edit: every switch at its usual value, with what it means. */
public final class RulesForm {
  private static final int WIDTH = 100;

  private RulesForm() {}

  /**
   * The file.
   *
   * @return JSON with comments; read back, it is the usual rules
   */
  public static String text() {
    StringBuilder text = new StringBuilder();
    text.append("// The rules of your table. Every switch stands at its usual value: change the\n")
        .append(
            "// values that are different at your table, and delete whatever you leave alone.\n")
        .append("// Lines that begin with // are comments; the program does not read them.\n")
        .append("{\n");
    RuleGroup group = null;
    List<RuleMeaning> all = RuleMeanings.all();
    for (RuleMeaning meaning : all) {
      if (meaning.group() != group) {
        group = meaning.group();
        text.append("  // ---- ").append(group.title()).append(" ----\n\n");
      }
      comment(text, "  // ", meaning.sentence());
      RuleWords.choices(meaning).forEach(line -> comment(text, "  //   ", line));
      boolean last = meaning == all.get(all.size() - 1);
      text.append("  ").append(Words.quoted(meaning.key())).append(": ").append(value(meaning));
      text.append(last ? "\n" : ",\n\n");
    }
    return text.append("}\n").toString();
  }

  private static String value(RuleMeaning meaning) {
    Object usual = meaning.rule().standard();
    return usual instanceof String word ? Words.quoted(word) : String.valueOf(usual);
  }

  private static void comment(StringBuilder text, String indent, String words) {
    Words.wrapped(words, indent, WIDTH).forEach(line -> text.append(line).append('\n'));
  }
}
