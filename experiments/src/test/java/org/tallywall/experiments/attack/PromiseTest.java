package org.tallywall.experiments.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every promise can be broken, and a plain answer breaks none. */
class PromiseTest {
  private static final Attack ATTACK =
      Attack.of("typed", Map.of("card.json", Plant.text("{}")), "card", "check", "card.json");

  private static Outcome answer(int code, String out, String err, Map<String, String> after) {
    Map<String, String> before = Map.of("card.json", "2 bytes", "elsewhere/victim.txt", "victim");
    return new Outcome(code, capture(out), capture(err), null, "", before, after);
  }

  private static Outcome said(int code, String err) {
    return answer(code, "", err, Map.of("card.json", "2 bytes", "elsewhere/victim.txt", "victim"));
  }

  private static Capture capture(String text) {
    Capture capture = new Capture();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    capture.write(bytes, 0, bytes.length);
    return capture;
  }

  @Test
  void plainAnswer_breaksNothing() {
    assertThat(Promise.broken(ATTACK, said(2, "card.json:1:1: the field \"card\" is missing\n")))
        .isEmpty();
    assertThat(Promise.differing(said(2, "a\n"), said(2, "a\n"))).isEmpty();
  }

  static Stream<Arguments> broken() {
    Map<String, String> left = Map.of("card.json", "2 bytes", "elsewhere/victim.txt", "victim");
    return Stream.of(
        Arguments.of("exit code", said(3, "no\n")),
        Arguments.of("fault of its own", said(1, "tallywall: internal error")),
        Arguments.of("memory", said(1, "tallywall: not enough memory; give more")),
        Arguments.of("no word", said(1, "")),
        Arguments.of("control character", said(2, "there is no \"\u001b[2J\"")),
        Arguments.of("control character", said(2, "there is no \"\u009b2J\"")),
        Arguments.of("control character", said(2, "there is no \"a\tb\"")),
        Arguments.of("inside of the program", said(2, "NumberFormatException: 5")),
        Arguments.of("inside of the program", said(2, "cannot cast java.lang.String")),
        Arguments.of("inside of the program", said(2, "\tat Card.read(Card.java:5)")),
        Arguments.of("too much", said(2, "a line\n".repeat(1_001))),
        Arguments.of("too much", said(2, "x".repeat(20_001))),
        Arguments.of("too much", said(2, "a line of letters\n".repeat(70_000))),
        Arguments.of("half-written", answer(0, "", "", with(left, "out/notes.md.part"))),
        Arguments.of("elsewhere", answer(0, "", "", Map.of("card.json", "2 bytes"))),
        Arguments.of("elsewhere", answer(0, "", "", with(left, "elsewhere/new.txt"))),
        Arguments.of("refused", answer(2, "", "no\n", with(left, "out/"))),
        Arguments.of("refused", answer(2, "", "no\n", Map.of("elsewhere/victim.txt", "victim"))),
        Arguments.of(
            "thrown", new Outcome(-1, capture(""), capture(""), new ThreadDeath(), "", left, left)),
        Arguments.of(
            "no answer", new Outcome(-1, capture(""), capture(""), null, "a loop", left, left)));
  }

  private static Map<String, String> with(Map<String, String> files, String name) {
    return Stream.concat(files.entrySet().stream(), Map.of(name, "new").entrySet().stream())
        .collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void brokenPromise_isTold(String promise, Outcome outcome) {
    List<String> told = Promise.broken(ATTACK, outcome);

    assertThat(told).anyMatch(line -> line.startsWith(promise));
  }

  @Test
  void otherAnswerTheSecondTime_isTold() {
    assertThat(Promise.differing(said(2, "a\n"), said(2, "b\n"))).isNotEmpty();
    assertThat(Promise.differing(said(2, "a\n"), said(1, "a\n"))).isNotEmpty();
  }

  /** A class that the input itself names may be named in the answer. */
  @Test
  void nameThatTheInputGave_isNoInsideOfTheProgram() {
    Attack named = Attack.of("typed", Map.of(), "players", "my.own.PlayerException");

    assertThat(Promise.broken(named, said(2, "there is no player \"my.own.PlayerException\"\n")))
        .isEmpty();
  }
}
