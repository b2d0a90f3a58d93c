package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.results.Ranged;
import org.tallywall.experiments.results.Results;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.table.CellText;

/** The answer of a study in words, in front of everything else. */
final class Answers {
  private Answers() {}

  static Part.Answer of(Results results) {
    List<Difference> compared =
        Difference.primary(results).stream()
            .filter(one -> one.difference().isPresent() && !one.isBaseline())
            .toList();
    Part.Answer answer =
        results.sheet("branch").isPresent()
            ? BranchAnswer.of(results)
            : compared.isEmpty() ? TableAnswers.of(results) : comparison(results, compared);
    List<Part.Paragraph> paragraphs = new ArrayList<>(answer.paragraphs());
    paragraphs.add(Part.Paragraph.of(Wording.CAUTION));
    return new Part.Answer(answer.headline(), paragraphs);
  }

  private static Part.Answer comparison(Results results, List<Difference> compared) {
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    if (compared.size() > 1) {
      compared.forEach(one -> paragraphs.add(paragraph(sentence(results, one), results, one)));
    }
    for (Difference one : compared) {
      String patience = patience(results, one);
      if (!patience.isEmpty()) {
        String whose = compared.size() > 1 ? one.arm() + ": " : "";
        paragraphs.add(Part.Paragraph.of(whose + patience));
      }
    }
    if (compared.size() == 1) {
      Difference only = compared.get(0);
      paragraphs.add(paragraph(tooSmall(results, only).orElse(""), results, only));
      paragraphs.removeIf(paragraph -> paragraph.text().isEmpty());
      return new Part.Answer(sentence(results, only), paragraphs);
    }
    return new Part.Answer(headline(results, compared), paragraphs);
  }

  private static String headline(Results results, List<Difference> compared) {
    List<String> better = arms(results, compared, 1);
    List<String> worse = arms(results, compared, -1);
    List<String> open = arms(results, compared, 0);
    String id = compared.get(0).measure();
    String measure = MeasureWords.of(id).map(MeasureWords::heading).orElse(id);
    List<String> clauses = new ArrayList<>();
    clause(clauses, better, "clearly more with ");
    clause(clauses, worse, "clearly less with ");
    clause(clauses, open, "could not be told apart from it: ");
    return "Compared with %s on the same deals, %s: %s."
        .formatted(Wording.quoted(compared.get(0).baseline()), measure, String.join("; ", clauses));
  }

  private static void clause(List<String> clauses, List<String> arms, String words) {
    if (!arms.isEmpty()) {
      clauses.add(words + String.join(", ", arms));
    }
  }

  private static List<String> arms(Results results, List<Difference> compared, int sign) {
    return compared.stream()
        .filter(one -> one.clearSign(results.confidence()) == sign)
        .map(one -> Wording.quoted(one.arm()))
        .toList();
  }

  /** The sentence of one comparison; a measure without words of its own gets plain ones. */
  static String sentence(Results results, Difference one) {
    Ranged hundred = one.inHundred().orElseThrow();
    int sign = one.clearSign(results.confidence());
    Optional<MeasureWords> words = MeasureWords.of(one.measure());
    return words.isPresent()
        ? Wording.sentence(words.get(), one.arm(), one.baseline(), hundred, sign)
        : "%s compared with %s, %s: %s in 100 games."
            .formatted(
                Wording.quoted(one.arm()),
                Wording.quoted(one.baseline()),
                one.measure(),
                hundred.estimate().text(Sign.PLUS_AND_MINUS));
  }

  private static String patience(Results results, Difference one) {
    boolean wins = one.measure().equals("win-rate");
    OptionalDouble level = one.row().number("level");
    OptionalDouble baseline = one.row().number("baseline-level");
    if (!wins
        || level.isEmpty()
        || baseline.isEmpty()
        || one.clearSign(results.confidence()) == 0) {
      return "";
    }
    double difference = one.difference().orElseThrow().value();
    return Wording.patience(level.getAsDouble(), baseline.getAsDouble(), difference);
  }

  private static Optional<String> tooSmall(Results results, Difference one) {
    OptionalDouble detectable = one.row().number("detectable");
    Optional<MeasureWords> words = MeasureWords.of(one.measure());
    return detectable.isEmpty() || words.isEmpty()
        ? Optional.empty()
        : Optional.of(Wording.tooSmall(words.get(), deals(results, one), detectable.getAsDouble()));
  }

  private static long deals(Results results, Difference one) {
    long deals = one.row().count("deals");
    return deals == 0 ? results.deals() : deals;
  }

  private static Part.Paragraph paragraph(String text, Results results, Difference one) {
    return new Part.Paragraph(text, List.of(footnote(results, one)));
  }

  /** What a statistician asks: it stands in a footnote. */
  private static String footnote(Results results, Difference one) {
    List<String> parts = new ArrayList<>();
    parts.add(Wording.level(results.confidence()) + " % interval");
    add(parts, "", one.row().text("method"), "");
    add(parts, "p ", Wording.p(one.row().number("p")), "");
    add(parts, "p adjusted for all declared comparisons (Holm) ", holm(one), "");
    add(parts, "", count(one, "discordant"), " deals in which it made a difference");
    add(parts, "", count(one, "more"), " of them with more");
    add(parts, "", count(one, "fewer"), " with less");
    add(parts, "correlation of the two on the same deals ", rounded(one, "correlation"), "");
    add(parts, "worth as much as ", rounded(one, "gain"), " times as many deals played apart");
    return String.join("; ", parts) + ".";
  }

  private static String holm(Difference one) {
    return Wording.p(one.row().number("p-holm"));
  }

  private static String count(Difference one, String column) {
    String digits = one.row().text(column);
    return digits.isEmpty() ? "" : CellText.grouped(Long.toString(one.row().count(column)));
  }

  private static String rounded(Difference one, String column) {
    OptionalDouble number = one.row().number(column);
    return number.isPresent() ? Wording.rounded(number.getAsDouble(), 2) : "";
  }

  private static void add(List<String> parts, String before, String text, String after) {
    if (!text.isEmpty()) {
      parts.add(before + text + after);
    }
  }
}
