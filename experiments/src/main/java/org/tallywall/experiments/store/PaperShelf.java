package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tallywall.core.text.Sha256;
import org.tallywall.reports.results.ResultNames;

/**
 * The papers in a results folder. The manifest holds the digest of each as it was written, so that
 * a paper that somebody has worked on since is known, and kept under another name before a new one
 * takes its place.
 */
public final class PaperShelf {
  private final Path home;
  private final Map<String, String> written;
  private final List<String> kept = new ArrayList<>();
  private Optional<Manifest> manifest;

  private PaperShelf(Path home, Optional<Manifest> manifest) {
    this.home = home;
    this.manifest = manifest;
    this.written = new TreeMap<>(manifest.map(Manifest::papers).orElse(Map.of()));
  }

  /**
   * The shelf of a results folder.
   *
   * @param home the folder
   * @return its papers
   */
  public static PaperShelf in(Path home) {
    return new PaperShelf(home, Manifest.read(home));
  }

  /**
   * Writes a paper.
   *
   * @param name its name in the folder, as in {@code charts/wins.svg}
   * @param text its text
   * @throws org.tallywall.experiments.error.FailedException if it cannot be written
   */
  public void write(String name, String text) {
    write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes a paper.
   *
   * @param name its name in the folder
   * @param bytes its content
   * @throws org.tallywall.experiments.error.FailedException if it cannot be written
   */
  public void write(String name, byte[] bytes) {
    Path file = home.resolve(name);
    try {
      Optional<byte[]> there = content(file);
      boolean same = there.isPresent() && Arrays.equals(there.get(), bytes);
      if (!same && there.isPresent() && isEdited(name, there.get())) {
        keep(name);
      }
      announce(name, Sha256.of(bytes));
      if (!same) {
        WholeFile.folder(file.getParent());
        WholeFile.write(file, bytes);
      }
    } catch (IOException e) {
      throw WholeFile.unwritten(file, e);
    }
  }

  /** A paper is known as one of the program's even if the machine goes down while it is written. */
  private void announce(String name, String digest) {
    if (!digest.equals(written.put(name, digest)) && manifest.isPresent()) {
      Manifest changed = manifest.get().withPapers(written);
      WholeFile.write(home.resolve(ResultNames.MANIFEST), changed.json());
      manifest = Optional.of(changed);
    }
  }

  /**
   * Papers that somebody had worked on.
   *
   * @return a sentence for each, with the name under which it is kept
   */
  public List<String> kept() {
    return List.copyOf(kept);
  }

  /** Takes all papers away; those that somebody has worked on get another name. */
  void clear() throws IOException {
    List<String> names = new ArrayList<>(written.keySet());
    for (String paper : List.of(ResultNames.REPORT, ResultNames.NOTES, ResultNames.NOTES_PAGE)) {
      if (!names.contains(paper)) {
        names.add(paper);
      }
    }
    for (String name : names) {
      Optional<Path> file = Inside.file(home, name);
      Optional<byte[]> there = file.isEmpty() ? Optional.empty() : content(file.get());
      if (there.isPresent() && isEdited(name, there.get())) {
        keep(name);
      } else if (there.isPresent()) {
        Files.delete(file.get());
      }
    }
    written.clear();
  }

  private boolean isEdited(String name, byte[] there) {
    return !Sha256.of(there).equals(written.get(name));
  }

  /** What a file holds; nothing where there is none of its own. */
  private static Optional<byte[]> content(Path file) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        ? Optional.of(Files.readAllBytes(file))
        : Optional.empty();
  }

  private void keep(String name) throws IOException {
    int dot = name.lastIndexOf('.');
    int number = 1;
    String free = name;
    while (Files.exists(home.resolve(free), LinkOption.NOFOLLOW_LINKS)) {
      free = name.substring(0, dot) + ".edited-" + number++ + name.substring(dot);
    }
    Files.move(home.resolve(name), home.resolve(free));
    String whose =
        written.containsKey(name)
            ? "\" was changed after it had been made; your version is now \""
            : "\" was there before, and it cannot be told whether you changed it; it is now \"";
    kept.add("\"" + name + whose + free + "\"");
  }
}
