package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The program in a process of its own, which can be killed. */
final class Child implements AutoCloseable {
  /** Only a process that hangs takes so long, on however busy a machine. */
  private static final int HANGS_MINUTES = 20;

  private final Path errors;
  private final Process process;

  private Child(Path errors, Process process) {
    this.errors = errors;
    this.process = process;
  }

  /** Starts a command. */
  static Child start(Path folder, String... words) throws IOException {
    return startWith("-Xshare:auto", folder, words);
  }

  /** Starts a command with an option for Java. */
  static Child startWith(String option, Path folder, String... words) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(ProcessHandle.current().info().command().orElseThrow());
    command.add(option);
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xshare:auto", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(Main.class.getName());
    command.addAll(List.of(words));
    Path errors = Files.createTempFile(folder, "errors", ".txt");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectError(errors.toFile())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    return new Child(errors, process);
  }

  /** Waits until so many blocks are stored, or the process ends. */
  void awaitBlocks(Path results, int number) throws IOException, InterruptedException {
    while (process.isAlive() && blocks(results) < number) {
      Thread.sleep(5);
    }
  }

  /** Waits until a folder is there, or the process ends. */
  void awaitFolder(Path awaited) throws InterruptedException {
    while (process.isAlive() && !Files.isDirectory(awaited)) {
      Thread.sleep(5);
    }
  }

  static int blocks(Path results) throws IOException {
    Path blocks = results.resolve("blocks");
    if (!Files.isDirectory(blocks)) {
      return 0;
    }
    try (Stream<Path> files = Files.list(blocks)) {
      return (int) files.filter(file -> file.toString().endsWith(".block")).count();
    }
  }

  boolean alive() {
    return process.isAlive();
  }

  /** Ends the process as no program can prevent. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    process.waitFor(HANGS_MINUTES, TimeUnit.MINUTES);
  }

  /** Sends a signal, as in "INT" for Ctrl-C. */
  void signal(String name) throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-" + name, Long.toString(process.pid())).start().waitFor();
  }

  /** Waits for the end; returns the exit code. */
  int end() throws InterruptedException {
    if (!process.waitFor(HANGS_MINUTES, TimeUnit.MINUTES)) {
      throw new IllegalStateException("the process does not end");
    }
    return process.exitValue();
  }

  /** What it said on the standard error. */
  String errors() throws IOException {
    return Files.readString(errors);
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
