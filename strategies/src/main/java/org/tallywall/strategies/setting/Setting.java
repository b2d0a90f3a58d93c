package org.tallywall.strategies.setting;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.tallywall.core.card.Card;

/**
 * A setting of a player: one thing that teachers argue about. It is declared once, as a constant,
 * and read by that constant:
 *
 * <pre>{@code
 * private static final Setting<Integer> AWAY =
 *     Setting.whole("claims.when-away-at-most")
 *         .from(0)
 *         .to(14)
 *         .usual(14)
 *         .says("claims only when this many tiles away or nearer (\"do not claim early\")");
 *
 * int away = values.get(AWAY);
 * }</pre>
 *
 * @param <T> what players read: a Boolean, an Integer, a Double, an enum of words or the name of a
 *     part of the card
 */
public final class Setting<T> {
  private static final int MOST_ZEROS = 30;

  private final String name;
  private final Kind<T> kind;
  private final T usual;
  private final String meaning;

  Setting(String name, Kind<T> kind, T usual, String meaning) {
    this.name = Objects.requireNonNull(name);
    this.kind = kind;
    this.usual = Objects.requireNonNull(usual, () -> name + " has no usual value");
    this.meaning = Objects.requireNonNull(meaning);
  }

  /**
   * Begins a setting that is on or off.
   *
   * @param name its name in a study, parts separated by dots
   * @return a draft, which lacks the usual value and the saying
   */
  public static SettingDraft<Boolean> onOff(String name) {
    return new SettingDraft<>(name, new OnOff(), null);
  }

  /**
   * Begins a setting that is a whole number.
   *
   * @param name its name in a study, parts separated by dots
   * @return a draft, which lacks the range, the usual value and the saying
   */
  public static RangeDraft<Integer> whole(String name) {
    return new RangeDraft<>(name, Whole::new, 0);
  }

  /**
   * Begins a setting that is a number with or without a fraction.
   *
   * @param name its name in a study, parts separated by dots
   * @return a draft, which lacks the range, the usual value and the saying
   */
  public static RangeDraft<Double> decimal(String name) {
    return new RangeDraft<>(name, Decimal::new, 0.0);
  }

  /**
   * Begins a setting that is one of several words. A study writes the names of the constants in
   * small letters, with hyphens.
   *
   * @param name its name in a study, parts separated by dots
   * @param words the enum whose constants the words are
   * @param <E> the enum
   * @return a draft, which lacks the usual value and the saying
   */
  public static <E extends Enum<E>> SettingDraft<E> choice(String name, Class<E> words) {
    return new SettingDraft<>(name, new OneWord<>(List.of(words.getEnumConstants())), null);
  }

  /**
   * Begins a setting that names a family of the card that is played; empty, it names none.
   *
   * @param name its name in a study, parts separated by dots
   * @return a draft, which lacks the saying
   */
  public static SettingDraft<String> family(String name) {
    return new SettingDraft<>(name, new NameOnCard(CardPart.FAMILY), "");
  }

  /**
   * Begins a setting that names a line of the card that is played, by its id or its nickname;
   * empty, it names none.
   *
   * @param name its name in a study, parts separated by dots
   * @return a draft, which lacks the saying
   */
  public static SettingDraft<String> line(String name) {
    return new SettingDraft<>(name, new NameOnCard(CardPart.LINE), "");
  }

  /**
   * Its name in a study.
   *
   * @return parts separated by dots, as in {@code claims.not-before-wall}
   */
  public String name() {
    return name;
  }

  /**
   * Its default, as a study writes it.
   *
   * @return a {@link Boolean}, {@link BigDecimal} or {@link String}
   */
  public Object standard() {
    return kind.write(usual);
  }

  /**
   * What it does.
   *
   * @return in words, with the saying that it expresses
   */
  public String meaning() {
    return meaning;
  }

  /**
   * What it does at each of its values.
   *
   * @return the words that are said of a player
   */
  public Saying saying() {
    return new Saying(meaning, kind instanceof NameOnCard);
  }

  /**
   * Whether two values are one, however they are written.
   *
   * @param one a value as a study writes it
   * @param other another
   * @return true for 1 and 1.0
   */
  public static boolean same(Object one, Object other) {
    return one instanceof BigDecimal number && other instanceof BigDecimal second
        ? number.compareTo(second) == 0
        : one.equals(other);
  }

  /**
   * The words that it may be.
   *
   * @return the usual one first; none where it is no choice between words
   */
  public List<String> words() {
    return kind.words(usual);
  }

  /**
   * Whether it may be set to a value.
   *
   * @param written as read from a study
   * @return true if the value is of its kind and in its range
   */
  public boolean allows(Object written) {
    return kind.allows(written);
  }

  /**
   * What keeps a value from being played on a card.
   *
   * @param written an allowed value
   * @param card the card
   * @return a sentence, as in "the card has no family of that name"; empty where nothing does
   */
  public Optional<String> unfit(Object written, Card card) {
    return kind.unfit(written, card);
  }

  /**
   * What it may be, in words.
   *
   * @return as in "a whole number from 1 to 4" or "true or false"
   */
  public String range() {
    return kind.range(usual);
  }

  /**
   * A number without needless zeros, so that 1, 1.0 and 10e-1 are one value.
   *
   * @param number any number
   * @return the same number, its scale 0 or more unless it has very many digits
   */
  public static BigDecimal plain(BigDecimal number) {
    BigDecimal few = number.stripTrailingZeros();
    return few.scale() < 0 && few.scale() > -MOST_ZEROS ? few.setScale(0) : few;
  }

  @Override
  public String toString() {
    return name;
  }

  /** The same setting with another usual value. */
  Setting<T> usually(T value) {
    return new Setting<>(name, kind, value, meaning);
  }

  /** Whether a value is in its range. */
  boolean takes(T value) {
    return kind.allows(kind.write(value));
  }

  /** A value as written, as players read it. */
  T read(Object written) {
    if (!allows(written)) {
      throw new IllegalArgumentException(name + " is " + range());
    }
    return kind.read(written);
  }
}
