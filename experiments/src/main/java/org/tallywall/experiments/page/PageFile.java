package org.tallywall.experiments.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.WholeFile;

/** The file of a page. It takes the place of an older page of its kind, and of nothing else. */
public final class PageFile {
  /** Enough for what stands in front of the title. */
  private static final int HEAD = 2048;

  private PageFile() {}

  /**
   * Refuses a file that may not be written over, before any work is done.
   *
   * @param file where a page of a game is to be written
   * @throws WrongInputException if something else than a page of a game is there
   */
  public static void refuseOther(Path file) {
    refuseOther(file, GamePage.MAKER);
  }

  /**
   * Refuses a file that may not be written over, before any work is done.
   *
   * @param file where a page is to be written
   * @param maker what pages of its kind say that they were made by, as in {@link GamePage#MAKER}
   * @throws WrongInputException if something else than a page of that kind is there
   */
  public static void refuseOther(Path file, String maker) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isPage(file, maker)) {
      throw new WrongInputException(
          "\"%s\" exists already and is not the %s; name another file"
              .formatted(file, maker.substring(maker.indexOf(' ') + 1)));
    }
  }

  /**
   * Writes a page of a game.
   *
   * @param file the file; its folder exists
   * @param page the whole page
   * @throws WrongInputException if something else than a page of a game is there
   * @throws org.tallywall.experiments.error.FailedException if it cannot be written
   */
  public static void write(Path file, String page) {
    write(file, page, GamePage.MAKER);
  }

  /**
   * Writes a page.
   *
   * @param file the file; its folder exists
   * @param page the whole page
   * @param maker what it says that it was made by
   * @throws WrongInputException if something else than a page of that kind is there
   * @throws org.tallywall.experiments.error.FailedException if it cannot be written
   */
  public static void write(Path file, String page, String maker) {
    refuseOther(file, maker);
    WholeFile.write(file, page);
  }

  /** The mark counts in front of the title alone, for a title may say anything. */
  private static boolean isPage(Path file, String maker) {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    String mark = "<meta name=\"generator\" content=\"" + maker + "\">";
    try (InputStream in = Files.newInputStream(file)) {
      String head = new String(in.readNBytes(HEAD), StandardCharsets.UTF_8);
      int title = head.indexOf("<title>");
      return title >= 0 && head.substring(0, title).contains(mark);
    } catch (IOException unreadable) {
      return false;
    }
  }
}
