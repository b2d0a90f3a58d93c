package org.tallywall.experiments.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.WholeFile;

/** The file of a game's page. It takes the place of an older such page, and of nothing else. */
public final class PageFile {
  /** Enough for what stands in front of the title. */
  private static final int HEAD = 2048;

  private static final String MARK = "<meta name=\"generator\" content=\"" + GamePage.MAKER + "\">";

  private PageFile() {}

  /**
   * Refuses a file that may not be written over, before any work is done.
   *
   * @param file where a page is to be written
   * @throws WrongInputException if something else than a page of a game is there
   */
  public static void refuseOther(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isPage(file)) {
      throw new WrongInputException(
          "\"" + file + "\" exists already and is not the page of a game; name another file");
    }
  }

  /**
   * Writes a page.
   *
   * @param file the file; its folder exists
   * @param page the whole page
   * @throws WrongInputException if something else than a page of a game is there
   * @throws org.tallywall.experiments.error.FailedException if it cannot be written
   */
  public static void write(Path file, String page) {
    refuseOther(file);
    WholeFile.write(file, page);
  }

  /** The mark counts in front of the title alone, for a title may say anything. */
  private static boolean isPage(Path file) {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      String head = new String(in.readNBytes(HEAD), StandardCharsets.UTF_8);
      int title = head.indexOf("<title>");
      return title >= 0 && head.substring(0, title).contains(MARK);
    } catch (IOException unreadable) {
      return false;
    }
  }
}
