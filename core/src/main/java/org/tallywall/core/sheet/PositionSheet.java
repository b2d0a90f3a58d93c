package org.tallywall.core.sheet;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.card.SuitExchange;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.TextFile;

/**
 * A position as a person writes it down in plain lines: what one seat knows, which question is put
 * to it, and, where it is a scene, which answers are right. What the sheet leaves out is unknown,
 * and the view made of it says nothing about it.
 */
public final class PositionSheet {
  /** Words of the longest sheet, those of its reasons among them. */
  public static final int MOST_WORDS = 5_000;

  private final SheetDraft draft;
  private final TableSetup setup;

  private PositionSheet(SheetDraft draft, TableSetup setup) {
    this.draft = draft;
    this.setup = setup;
  }

  /**
   * Reads a sheet.
   *
   * @param file the file
   * @param setup the card and the rules by which it is checked
   * @return the position
   * @throws FaultyFileException if anything is wrong, every fault named with its line
   */
  public static PositionSheet read(Path file, TableSetup setup) {
    return of(file.toString(), TextFile.read(file), setup);
  }

  /**
   * Reads a sheet that comes in from elsewhere, such as standard input. What comes in is bounded
   * like a file, read to its end and not closed.
   *
   * @param name what messages call it
   * @param in where the lines come from
   * @param setup the card and the rules by which it is checked
   * @return the position
   * @throws FaultyFileException if anything is wrong, every fault named with its line
   */
  public static PositionSheet read(String name, InputStream in, TableSetup setup) {
    return of(name, TextFile.read(name, in), setup);
  }

  /**
   * Reads a sheet from its text.
   *
   * @param file the file's name for messages
   * @param text the lines
   * @param setup the card and the rules by which it is checked
   * @return the position
   * @throws FaultyFileException if anything is wrong, every fault named with its line
   */
  public static PositionSheet of(String file, String text, TableSetup setup) {
    Faults faults = new Faults();
    SheetDraft draft = SheetReader.read(text, faults);
    new SheetCheck(draft, setup, faults).check();
    if (faults.any()) {
      throw new FaultyFileException(file, faults.faults());
    }
    return new PositionSheet(draft, setup);
  }

  /**
   * The scene's name.
   *
   * @return empty where the sheet is no scene
   */
  public String scene() {
    return draft.scene;
  }

  /**
   * Which players must pass the scene.
   *
   * @return their names as written
   */
  public List<String> players() {
    return List.copyOf(draft.players);
  }

  /**
   * Which player sits where, for reviews.
   *
   * @return four names, null where the sheet does not say
   */
  public List<String> plays() {
    return Collections.unmodifiableList(new ArrayList<>(Arrays.asList(draft.plays)));
  }

  /**
   * Why the expected choice is right.
   *
   * @return the words of the sheet, or empty
   */
  public String because() {
    return draft.because;
  }

  /**
   * Who is asked.
   *
   * @return 0 to 3
   */
  public int seat() {
    return draft.seat;
  }

  /**
   * Which question is put.
   *
   * @return the moment
   */
  public Moment moment() {
    return draft.moment;
  }

  /**
   * The choices of which one is expected.
   *
   * @return in the order written, empty where nothing is expected
   */
  public List<Choice> expect() {
    return draft.expect.stream().map(ChoiceReader.Written::choice).toList();
  }

  /**
   * The choices that are ruled out.
   *
   * @return in the order written
   */
  public List<Choice> never() {
    return draft.never.stream().map(ChoiceReader.Written::choice).toList();
  }

  /**
   * Reads a further choice, in the words of an {@code expect} line.
   *
   * @param words the words, as in {@code throw 9c}
   * @return the choice
   * @throws FaultyFileException if they are no choice, or one that does not answer the question;
   *     columns are counted from their first letter
   */
  public Choice choice(String words) {
    Faults faults = new Faults();
    List<SheetLine.Word> all = new ArrayList<>();
    all.add(new SheetLine.Word("expect", Place.FILE));
    SheetLine.of(words, faults).forEach(line -> all.addAll(line.words()));
    ChoiceReader.Written written = ChoiceReader.read(new SheetLine(all), faults);
    if (written != null) {
      new ChoiceCheck(draft, setup.rules(), faults).checkWanted(written);
    }
    if (written == null || faults.any()) {
      throw new FaultyFileException(words, faults.faults());
    }
    return written.choice();
  }

  /**
   * How many discards the sheet leaves out: tiles that must lie on the table and are not written.
   *
   * @return 0 where the sheet accounts for every tile
   */
  public int discardsLeftOut() {
    return draft.says("unseen") ? 0 : SheetCounts.discards(draft, setup) - draft.discards.size();
  }

  /**
   * The same position with the suits exchanged, each with its dragon.
   *
   * @param suits how
   * @param exchanged the rules, and the card with its suits exchanged alike
   * @return the position; the texts of its choices stay as written
   */
  public PositionSheet exchanged(SuitExchange suits, TableSetup exchanged) {
    return new PositionSheet(Exchanged.of(draft, suits), exchanged);
  }

  /**
   * What the seat that is asked knows.
   *
   * @return a view of its own, fresh at every call
   */
  public SheetView view() {
    return new SheetView(draft, setup);
  }
}
