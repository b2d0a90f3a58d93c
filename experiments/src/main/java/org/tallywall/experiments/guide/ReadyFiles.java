package org.tallywall.experiments.guide;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The cards and studies that come with the program, wherever it was unpacked or built. */
public final class ReadyFiles {
  private static final String STUDIES = "studies";
  private static final String CARDS = "cards";
  private static final String DEMO_CARD = "saltmarsh-quay.json";
  private static final String FIRST_STUDY = "first-look.json";

  /** How far above the program's own jar or classes they may lie. */
  private static final int MOST_STEPS = 5;

  private final Path home;
  private final Path here;

  private ReadyFiles(Path home, Path here) {
    this.home = home;
    this.here = here;
  }

  /**
   * Those of this program.
   *
   * @return the files, or nothing where the jar was taken away from them
   */
  public static Optional<ReadyFiles> find() {
    CodeSource source = ReadyFiles.class.getProtectionDomain().getCodeSource();
    try {
      return source == null
          ? Optional.empty()
          : above(Path.of(source.getLocation().toURI()), Path.of(""));
    } catch (URISyntaxException | IllegalArgumentException noFile) {
      return Optional.empty();
    }
  }

  /**
   * Those in the nearest folder above a place.
   *
   * @param place the program's jar, or the folder of its classes
   * @param here the folder in which commands are typed
   * @return the files, or nothing
   */
  static Optional<ReadyFiles> above(Path place, Path here) {
    Path folder = place.toAbsolutePath().normalize().getParent();
    for (int step = 0; step < MOST_STEPS && folder != null; step++) {
      if (Files.isRegularFile(folder.resolve(STUDIES).resolve(FIRST_STUDY))
          && Files.isRegularFile(folder.resolve(CARDS).resolve(DEMO_CARD))) {
        return Optional.of(new ReadyFiles(folder, here.toAbsolutePath().normalize()));
      }
      folder = folder.getParent();
    }
    return Optional.empty();
  }

  /**
   * The card of the demo.
   *
   * @return its path as it would be typed
   */
  public Path demoCard() {
    return typed(home.resolve(CARDS).resolve(DEMO_CARD));
  }

  /**
   * The study to begin with.
   *
   * @return its path as it would be typed
   */
  public Path firstStudy() {
    return typed(home.resolve(STUDIES).resolve(FIRST_STUDY));
  }

  /**
   * The studies that are ready to run.
   *
   * @return their paths as they would be typed, sorted by name
   * @throws IOException if the folder cannot be read
   */
  public List<Path> studies() throws IOException {
    try (Stream<Path> files = Files.list(home.resolve(STUDIES))) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(".json"))
          .sorted()
          .map(this::typed)
          .toList();
    }
  }

  /**
   * Whether a card is one of those that come with the program.
   *
   * @param card the card's file
   * @return false also for a file that is not there
   */
  public boolean holdsCard(Path card) {
    try {
      return home.resolve(CARDS).toRealPath().equals(card.toRealPath().getParent());
    } catch (IOException notThere) {
      return false;
    }
  }

  /** A short way for what lies below the folder in which commands are typed. */
  private Path typed(Path file) {
    return file.startsWith(here) ? here.relativize(file) : file;
  }
}
