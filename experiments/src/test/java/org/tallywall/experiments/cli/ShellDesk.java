package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tallywall.experiments.guide.RulesForm;
import org.tallywall.experiments.guide.StudySkeleton;

/**
 * A folder laid out as the project's, in which commands are typed into a shell as they stand in
 * what people read. Files of the reader's own that they name are laid there first.
 */
final class ShellDesk {
  /** Few deals show whether a command holds. */
  private static final String FEW = " --deals 2";

  /** Where a study may stop early, the first 500 only tell what to expect. */
  private static final String MORE = " --deals 501";

  private static final String MOMENT = " --seconds 1";

  private static final Pattern RESULTS = Pattern.compile("results/([a-z-]+)");

  /** Where a command writes, so that nothing may be there before. */
  private static final Pattern WRITTEN =
      Pattern.compile("--(?:out|write|record|html|sheet|md)[ =]\\S+");

  private static final Pattern OWN_FILE =
      Pattern.compile("(?<![/\\w.-])(?:[a-z-]+\\.(?:json|txt)|my-tally\\.csv)");

  private final Path folder;

  private ShellDesk(Path folder) {
    this.folder = folder;
  }

  static ShellDesk in(Path folder) throws IOException {
    Files.createSymbolicLink(folder.resolve("experiments"), Path.of("").toAbsolutePath());
    Path program = folder.resolve("tallywall");
    Files.writeString(
        program,
        """
        #!/usr/bin/env bash
        exec "%s" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -cp "%s" %s "$@"
        """
            .formatted(
                ProcessHandle.current().info().command().orElseThrow(),
                System.getProperty("java.class.path"),
                Main.class.getName()));
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    return new ShellDesk(folder);
  }

  /** Takes the way to the project's own files away. */
  void clear() throws IOException {
    Files.delete(folder.resolve("experiments"));
  }

  /** Types a command; runs play few deals, and reviews a moment. */
  Typed type(String command) throws IOException, InterruptedException {
    lay(WRITTEN.matcher(command).replaceAll(""));
    if (command.matches(".*tallywall review (?!.*--(?:seconds|new)).*")) {
      return shell(command + MOMENT);
    }
    boolean plays = command.matches(".*tallywall run .*");
    return shell(plays ? command.replaceAll(" --deals \\d+", "") + deals(command) : command);
  }

  private String deals(String command) throws IOException {
    Path study = folder.resolve(command.replaceAll(".*tallywall run (\\S+).*", "$1"));
    return Files.readString(study).contains("\"until\"") ? MORE : FEW;
  }

  private void lay(String command) throws IOException, InterruptedException {
    for (Matcher own = OWN_FILE.matcher(command); own.find(); ) {
      Path file = folder.resolve(own.group());
      if (!Files.exists(file)) {
        Files.writeString(file, text(own.group()));
      }
      if (own.group().equals("my-study.json")) {
        lay("my-card.json");
      }
    }
    for (Matcher results = RESULTS.matcher(command); results.find(); ) {
      String name = results.group(1);
      if (!Files.exists(folder.resolve("results").resolve(name))) {
        Path ready = Path.of("studies", name + ".json");
        String study = Files.exists(ready) ? "experiments/" + ready : name + ".json";
        Typed run = type("./tallywall run " + study + " --without-report");
        if (run.code() != 0) {
          throw new IllegalStateException(run.err());
        }
      }
    }
  }

  private static String text(String name) throws IOException {
    return switch (name) {
      case "my-card.json", "mine.json", "hers.json" ->
          Files.readString(Path.of("cards/pebble-cove.json"));
      case "my-study.json" -> StudySkeleton.TABLE.text("my-study", "my-card.json");
      case "my-rules.json" -> RulesForm.text();
      case "my-tally.csv" -> "games, 120\nwall games, 13\nself-picked wins, 46\n";
      case "my-position.txt" -> "seat 1\nmoment pass right-1\nrack 33355b 4466c 17d N R\n";
      case "my-turn.txt" -> "seat 0\nmoment turn\nwall 90\nrack 33555b 44666c 77d W J\n";
      case "card.json" -> Files.readString(Path.of("scenes/heron-reach/card.json"));
      default ->
          throw new IllegalStateException(
              "a command names " + name + ", which this test cannot lay out; add it here");
    };
  }

  private Typed shell(String command) throws IOException, InterruptedException {
    Path out = Files.createTempFile(folder, "out", ".log");
    Path err = Files.createTempFile(folder, "err", ".log");
    ProcessBuilder shell =
        new ProcessBuilder(List.of("bash", "-c", command))
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    shell.environment().merge("PATH", folder.toString(), (path, here) -> here + ":" + path);
    Process process = shell.start();
    if (!process.waitFor(20, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IllegalStateException("hangs: " + command);
    }
    return new Typed(process.exitValue(), Files.readString(out), Files.readString(err));
  }
}
