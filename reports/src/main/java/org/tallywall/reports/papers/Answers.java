package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.schema.DifferenceColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.words.BranchWords;
import org.tallywall.reports.words.ChangedNumber;
import org.tallywall.reports.words.CloseCalls;
import org.tallywall.reports.words.Compared;
import org.tallywall.reports.words.Listed;
import org.tallywall.reports.words.MeasureWords;
import org.tallywall.reports.words.Stops;
import org.tallywall.reports.words.Wording;

/** The answer of a study in words, in front of everything else. */
public final class Answers {
  private Answers() {}

  /**
   * The answer.
   *
   * @param results what a results folder holds
   * @return the answer
   */
  public static Part.Answer of(Results results) {
    List<Compared> compared =
        Compared.primary(results).stream()
            .filter(
                one ->
                    one.row().number(DifferenceColumns.DIFFERENCE).isPresent() && !one.isBaseline())
            .toList();
    Part.Answer answer =
        results.sheet(BranchColumns.FILE).isPresent()
            ? BranchAnswer.of(results)
            : compared.isEmpty() ? TableAnswers.of(results) : comparison(results, compared);
    List<Part.Paragraph> paragraphs = new ArrayList<>(answer.paragraphs());
    boolean told = paragraphs.stream().anyMatch(paragraph -> !paragraph.footnotes().isEmpty());
    List<String> notes =
        compared.size() == 1 && !told ? List.of(footnote(results, compared.get(0))) : List.of();
    paragraphs.add(new Part.Paragraph(Wording.CAUTION, notes));
    return new Part.Answer(answer.headline(), paragraphs);
  }

  private static Part.Answer comparison(Results results, List<Compared> compared) {
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    if (compared.size() > 1) {
      List<Compared> close = compared.stream().filter(one -> isClose(results, one)).toList();
      boolean joined = close.size() > 1;
      compared.stream()
          .filter(one -> !joined || !close.contains(one))
          .forEach(one -> paragraphs.add(paragraph(sentence(results, one), results, one)));
      if (joined) {
        List<String> notes =
            close.stream()
                .map(one -> Wording.quoted(one.arm()) + ": " + footnote(results, one))
                .toList();
        paragraphs.add(new Part.Paragraph(CloseCalls.told(results, close), notes));
      }
    }
    for (Compared one : compared) {
      String patience = patience(results, one);
      if (!patience.isEmpty()) {
        String whose = compared.size() > 1 ? one.arm() + ": " : "";
        paragraphs.add(Part.Paragraph.of(whose + patience));
      }
    }
    if (compared.size() == 1) {
      Compared only = compared.get(0);
      paragraphs.add(paragraph(tooSmall(results, only).orElse(""), results, only));
      paragraphs.removeIf(paragraph -> paragraph.text().isEmpty());
      return new Part.Answer(sentence(results, only), paragraphs);
    }
    return new Part.Answer(headline(results, compared), paragraphs);
  }

  /** Whether a range alone says that it is too close to call. */
  private static boolean isClose(Results results, Compared one) {
    return one.verdict().isEmpty()
        && !one.isSame()
        && one.difference().isPresent()
        && one.clearSign(results.confidence()) == 0;
  }

  private static String headline(Results results, List<Compared> compared) {
    List<String> better = arms(results, compared, 1);
    List<String> worse = arms(results, compared, -1);
    List<String> open = arms(results, compared, 0);
    List<String> near =
        compared.stream().filter(Answers::isNear).map(one -> Wording.quoted(one.arm())).toList();
    Compared first = compared.get(0);
    String baseline = Wording.quoted(first.baseline());
    List<String> clauses = new ArrayList<>();
    clause(clauses, better, did(first, "more") + " than " + baseline);
    clause(clauses, worse, did(first, "fewer") + " than " + baseline);
    if (!near.isEmpty()) {
      String size = Stops.of(results).orElseThrow().size(first.measure());
      String each = near.size() > 1 ? " are each" : " is";
      clauses.add(Listed.and(near) + each + " less than " + size + " from " + baseline);
    }
    if (!open.isEmpty()) {
      clauses.add(open(open, matter(first), baseline));
    }
    return BranchWords.sentence(String.join("; ", clauses)) + ".";
  }

  /** Such as "scored clearly more points". */
  private static String did(Compared one, String more) {
    return MeasureWords.of(one.measure())
        .map(words -> words.past() + " clearly " + more + " " + words.noun())
        .orElse(
            "had clearly " + (more.equals("more") ? "more" : "less") + " (" + one.measure() + ")");
  }

  private static String matter(Compared one) {
    return MeasureWords.of(one.measure()).map(MeasureWords::matter).orElse(one.measure());
  }

  private static String open(List<String> arms, String matter, String baseline) {
    return arms.size() == 1
        ? "%s and %s are too close to call on %s".formatted(arms.get(0), baseline, matter)
        : "none of these differed clearly from %s on %s: %s"
            .formatted(baseline, matter, Listed.and(arms));
  }

  /** Whether a sequential test ruled out the difference that was worth finding. */
  private static boolean isNear(Compared one) {
    return one.verdict().equals("none of that size");
  }

  private static void clause(List<String> clauses, List<String> arms, String words) {
    if (!arms.isEmpty()) {
      clauses.add(Listed.and(arms) + together(arms) + words);
    }
  }

  private static String together(List<String> arms) {
    return arms.size() == 1 ? " " : arms.size() == 2 ? " both " : " all ";
  }

  private static List<String> arms(Results results, List<Compared> compared, int sign) {
    return compared.stream()
        .filter(one -> one.clearSign(results.confidence()) == sign)
        .filter(one -> !isNear(one))
        .map(one -> Wording.quoted(one.arm()))
        .toList();
  }

  /**
   * The sentence of one comparison; a measure without words of its own gets plain ones.
   *
   * @param results what a results folder holds
   * @param one the comparison
   * @return the words
   */
  public static String sentence(Results results, Compared one) {
    Optional<Stops> stops = Stops.of(results);
    if (!one.verdict().isEmpty()) {
      return stops.orElseThrow().sentence(one);
    } else if (one.isSame()) {
      return same(results, one, stops.isEmpty());
    } else if (one.difference().isEmpty()) {
      return unknown(results, one, stops.isEmpty());
    }
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

  /** All deals alike; of a number fixed before it is known how many others there may be. */
  private static String same(Results results, Compared one, boolean fixed) {
    long deals = deals(results, one);
    OptionalDouble most = one.row().number(DifferenceColumns.MOST_DISCORDANT);
    return Wording.same(one.arm(), one.baseline(), heading(one), deals)
        + (fixed && most.isPresent()
            ? " " + Wording.rarer(most.getAsDouble(), results.confidence())
            : "");
  }

  private static String unknown(Results results, Compared one, boolean fixed) {
    long deals = deals(results, one);
    long differing = one.row().count(DifferenceColumns.DISCORDANT);
    return fixed
        ? Wording.unknown(one.arm(), one.baseline(), heading(one), differing, deals)
        : Wording.tooSoon(one.arm(), one.baseline(), heading(one), deals);
  }

  private static String heading(Compared one) {
    return MeasureWords.of(one.measure()).map(MeasureWords::heading).orElse(one.measure());
  }

  private static String patience(Results results, Compared one) {
    OptionalDouble games = one.row().number(DifferenceColumns.GAMES_TO_NOTICE);
    return games.isEmpty() || one.clearSign(results.confidence()) == 0
        ? ""
        : one.difference()
            .map(range -> Wording.patience(range.value(), games.getAsDouble()))
            .orElse("");
  }

  private static Optional<String> tooSmall(Results results, Compared one) {
    OptionalDouble detectable = one.row().number(DifferenceColumns.DETECTABLE);
    Optional<MeasureWords> words = MeasureWords.of(one.measure());
    boolean clear = one.clearSign(results.confidence()) != 0;
    return clear || detectable.isEmpty() || words.isEmpty() || !one.verdict().isEmpty()
        ? Optional.empty()
        : Optional.of(Wording.tooSmall(words.get(), deals(results, one), detectable.getAsDouble()));
  }

  private static long deals(Results results, Compared one) {
    long deals = one.row().count(DifferenceColumns.DEALS);
    return deals == 0 ? results.deals() : deals;
  }

  private static Part.Paragraph paragraph(String text, Results results, Compared one) {
    return new Part.Paragraph(text, List.of(footnote(results, one)));
  }

  /** What a statistician asks: it stands in a footnote. */
  private static String footnote(Results results, Compared one) {
    List<String> parts = new ArrayList<>();
    parts.add(Wording.level(results.confidence()) + "% interval");
    add(parts, "", one.row().text(DifferenceColumns.METHOD), "");
    add(parts, "p ", Wording.p(one.row().number(DifferenceColumns.P)), "");
    add(parts, "p adjusted for all declared comparisons (Holm) ", holm(one), "");
    add(parts, "", count(one, DifferenceColumns.DISCORDANT), " deals came out differently");
    add(parts, "", count(one, DifferenceColumns.MORE), " of them with more");
    add(parts, "", count(one, DifferenceColumns.FEWER), " with less");
    add(parts, "in ", canceled(one), " of them the seats cancel out");
    add(
        parts,
        "correlation of the two on the same deals ",
        rounded(one, DifferenceColumns.CORRELATION),
        "");
    add(
        parts,
        "because both played the same deals, this run is as precise as one ",
        rounded(one, DifferenceColumns.GAIN),
        " times as long");
    add(parts, "number of deals ", ended(results), "");
    return String.join("; ", parts) + ".";
  }

  private static String ended(Results results) {
    boolean rule = Stops.of(results).isPresent();
    Optional<String> changed = ChangedNumber.inShort(results);
    if (changed.isPresent()) {
      return changed.get();
    }
    if (results.provisional().isPresent()) {
      return rule ? "not ended yet by its rule" : "fixed before the run, and not come to yet";
    }
    return rule ? "ended by a rule" : "fixed before the run";
  }

  private static String holm(Compared one) {
    return Wording.p(one.row().number(DifferenceColumns.P_HOLM));
  }

  private static String count(Compared one, Column column) {
    String digits = one.row().text(column);
    return digits.isEmpty() ? "" : CellText.grouped(Long.toString(one.row().count(column)));
  }

  /** Deals in which the seats differ and cancel. */
  private static String canceled(Compared one) {
    long rest =
        one.row().count(DifferenceColumns.DISCORDANT)
            - one.row().count(DifferenceColumns.MORE)
            - one.row().count(DifferenceColumns.FEWER);
    return rest > 0 ? CellText.grouped(Long.toString(rest)) : "";
  }

  private static String rounded(Compared one, Column column) {
    OptionalDouble number = one.row().number(column);
    return number.isPresent() ? Wording.rounded(number.getAsDouble(), 2) : "";
  }

  private static void add(List<String> parts, String before, String text, String after) {
    if (!text.isEmpty()) {
      parts.add(before + text + after);
    }
  }
}
