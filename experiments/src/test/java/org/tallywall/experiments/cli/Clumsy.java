package org.tallywall.experiments.cli;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongSupplier;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.store.OnExisting;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.player.NearestPlayer;

/** Runs studies in which a player called "clumsy" does what a test wants it to do in its turn. */
final class Clumsy {
  private Clumsy() {}

  /** What a run gave back: its exit code and what it said on the standard error. */
  record Run(int code, String said) {}

  /** Runs a study whose clumsy players answer so; null means the answer of a sound player. */
  static Run run(String file, String out, Function<SeatView, TurnChoice> turn, OnExisting policy) {
    return run(file, out, turn, policy, 2, System::nanoTime);
  }

  /** The same with so many threads, and with a clock by which slow players are noticed. */
  static Run run(
      String file,
      String out,
      Function<SeatView, TurnChoice> turn,
      OnExisting policy,
      int threads,
      LongSupplier clock) {
    Catalog catalog =
        new Catalog(
            List.of(
                new PlayerType("nearest", "nearest", List.of(), NearestPlayer::new),
                new PlayerType("clumsy", "clumsy", List.of(), () -> player(turn))));
    Study study = StudyFile.read(Path.of(file), Changes.NONE, catalog);
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Console console = Console.withoutProgress(new ByteArrayOutputStream(), said, 100);
    RunPrinter runner =
        new RunPrinter(
            console, study, threads, clock, List.of("tallywall", "run", file, "--out", out));
    int code = runner.run(Path.of(out), policy);
    return new Run(code, said.toString(StandardCharsets.UTF_8));
  }

  /** What a run complained about in the end. */
  record Failure(String message) {}

  /** Runs a study in one thread, its folder spoiled as soon as it is there; the run must fail. */
  static Failure failure(String file, Path out, Consumer<Path> spoiler) {
    Study study = StudyFile.read(Path.of(file), Changes.NONE, Catalog.standard());
    Console console =
        Console.withoutProgress(new ByteArrayOutputStream(), new ByteArrayOutputStream(), 100);
    RunPrinter runner =
        new RunPrinter(
            console, study, 1, List.of("tallywall", "run", file, "--out", out.toString()));
    runner.whenOpened(spoiler);
    try {
      runner.run(out, OnExisting.FAIL);
    } catch (FailedException failure) {
      return new Failure(failure.getMessage());
    }
    throw new AssertionError("the run did not fail");
  }

  private static Player player(Function<SeatView, TurnChoice> turn) {
    NearestPlayer sound = new NearestPlayer();
    return (Player)
        Proxy.newProxyInstance(
            Player.class.getClassLoader(),
            new Class<?>[] {Player.class},
            (proxy, method, args) -> {
              TurnChoice answer =
                  method.getName().equals("turn") ? turn.apply((SeatView) args[0]) : null;
              try {
                return answer == null ? method.invoke(sound, args) : answer;
              } catch (InvocationTargetException broken) {
                throw broken.getCause();
              }
            });
  }
}
