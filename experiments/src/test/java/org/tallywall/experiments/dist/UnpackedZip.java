package org.tallywall.experiments.dist;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * The zip file as a person meets it: unpacked into a folder with an awkward name, on a machine that
 * has a Java runtime, a shell and nothing else.
 */
final class UnpackedZip {

  /** A name with an umlaut, blanks, an ampersand and brackets. */
  static final String AWKWARD_NAME = "Übung & Spiel (2)";

  private final Path machine;
  private final Path home;

  private UnpackedZip(Path machine, Path home) {
    this.machine = machine;
    this.home = home;
  }

  /** What a started command gave back. */
  record Outcome(int exitCode, String output, String errors) {}

  static Path zip() {
    return Path.of(System.getProperty("tallywall.zip"));
  }

  /** Unpacks the zip file, keeping its permissions, and makes the machine around it. */
  static UnpackedZip on(Path machine) throws IOException {
    makeRuntime(machine.resolve("runtime"));
    return on(machine, zip());
  }

  /** Unpacks a zip file likewise, on a machine without Java. */
  static UnpackedZip on(Path machine, Path file) throws IOException {
    Path target = Files.createDirectory(machine.resolve(AWKWARD_NAME));
    try (FileSystem zip =
        FileSystems.newFileSystem(file, Map.of("enablePosixFileAttributes", true))) {
      Path root = zip.getPath("/");
      try (Stream<Path> files = Files.walk(root)) {
        for (Path packed : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
          Path copy = target.resolve(root.relativize(packed).toString());
          Files.createDirectories(copy.getParent());
          Files.copy(packed, copy);
          Files.setPosixFilePermissions(copy, Files.getPosixFilePermissions(packed));
        }
      }
    }
    makeTools(machine);
    try (Stream<Path> tops = Files.list(target)) {
      return new UnpackedZip(machine, tops.findFirst().orElseThrow());
    }
  }

  /** Makes the few commands of the machine: each hands on to the real one. */
  private static void makeTools(Path machine) throws IOException {
    Path tools = Files.createDirectory(machine.resolve("tools"));
    for (String name : List.of("bash", "env", "dirname", "readlink")) {
      Path tool = tools.resolve(name);
      Files.writeString(tool, "#!" + real("bash") + "\nexec \"" + real(name) + "\" \"$@\"\n");
      Files.setPosixFilePermissions(tool, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  private static Path real(String command) {
    return Stream.of(System.getenv("PATH").split(":"))
        .map(folder -> Path.of(folder, command))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow();
  }

  /** Copies the runtime of the JDK under test: no compiler, no tools of the JDK. */
  private static void makeRuntime(Path runtime) {
    ToolProvider jlink = ToolProvider.findFirst("jlink").orElseThrow();
    PrintWriter console = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int exitCode =
        jlink.run(
            console,
            console,
            "--add-modules",
            "java.se,jdk.unsupported",
            "--output",
            runtime.toString());
    if (exitCode != 0) {
      throw new IllegalStateException("jlink ended with " + exitCode);
    }
  }

  Path home() {
    return home;
  }

  Path runtime() {
    return machine.resolve("runtime");
  }

  /** Runs a command with the runtime on the path. */
  Outcome run(Path folder, String... command) {
    return run(folder, Map.of("PATH", runtime().resolve("bin") + ":" + tools()), command);
  }

  /** Runs a command with the given environment and nothing besides. */
  Outcome run(Path folder, Map<String, String> environment, String... command) {
    try {
      Path output = Files.createTempFile(machine, "output", ".txt");
      Path errors = Files.createTempFile(machine, "errors", ".txt");
      ProcessBuilder builder =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectOutput(output.toFile())
              .redirectError(errors.toFile());
      builder.environment().clear();
      builder.environment().putAll(environment);
      Process process = builder.start();
      process.getOutputStream().close();
      if (!process.waitFor(20, TimeUnit.MINUTES)) {
        process.destroyForcibly();
        throw new IllegalStateException("not done after two minutes: " + List.of(command));
      }
      return new Outcome(process.exitValue(), Files.readString(output), Files.readString(errors));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  /** The folder with the few commands that the machine has. */
  String tools() {
    return machine.resolve("tools").toString();
  }
}
