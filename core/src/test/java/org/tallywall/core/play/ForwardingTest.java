package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.tile.Exposure;

/**
 * Whatever can be asked of a player or told to a listener is handed on. The methods come from the
 * interfaces themselves, so one that is new is tried too.
 */
class ForwardingTest {
  private static final int ANSWER = 3;
  private static final PassChoice PASS = PassChoice.of(1, 2, 3);
  private static final int[] NUMBERS = {4, 5};

  private record Call(Object whom, String method, List<Object> arguments) {}

  private final List<Call> calls = new ArrayList<>();

  private <T> T recording(Class<T> type, String name) {
    InvocationHandler handler =
        (proxy, method, arguments) -> {
          calls.add(new Call(name, method.getName(), Arrays.asList(arguments)));
          return method.getReturnType() == void.class
              ? null
              : value(method.getReturnType(), ANSWER);
        };
    return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler));
  }

  /** A value of a type that tells it from another of the same type. */
  private static Object value(Class<?> type, int seed) {
    if (type == boolean.class) {
      return true;
    } else if (type == int.class) {
      return seed;
    } else if (type == RandomStream.class) {
      return new RandomStream(new StreamKey(seed, 0, Purpose.values()[0], 0, 0, 0));
    } else if (type == Exposure.class) {
      return new Exposure(seed, 3, 1);
    } else if (type == Outcome.class) {
      return new Outcome(Outcome.How.WALL_GAME, null, List.of(0, 0, 0, 0), seed);
    } else if (type == PassChoice.class) {
      return PASS;
    } else if (type == int[].class) {
      return NUMBERS;
    } else if (type.isEnum()) {
      return type.getEnumConstants()[seed % type.getEnumConstants().length];
    } else if (type == TurnChoice.class) {
      return TurnChoice.discard(seed);
    } else if (type == ClaimChoice.class) {
      return ClaimChoice.expose(seed, 0);
    }
    return Proxy.newProxyInstance(
        type.getClassLoader(), new Class<?>[] {type}, (proxy, method, arguments) -> null);
  }

  private static Object[] arguments(Method method) {
    Class<?>[] types = method.getParameterTypes();
    Object[] values = new Object[types.length];
    for (int at = 0; at < types.length; at++) {
      values[at] = value(types[at], at + 1);
    }
    return values;
  }

  private static Stream<Method> methods(Class<?> type) {
    return Arrays.stream(type.getMethods()).filter(m -> !Modifier.isStatic(m.getModifiers()));
  }

  /** Compared by identity, since views and streams have no other equality. */
  private static boolean same(List<Object> heard, Object[] said) {
    boolean same = heard.size() == said.length;
    for (int at = 0; same && at < said.length; at++) {
      same =
          heard.get(at) == said[at]
              || (said[at] instanceof Integer && said[at].equals(heard.get(at)));
    }
    return same;
  }

  @TestFactory
  Stream<DynamicTest> player_handsEveryQuestionOnAndTheAnswerBack() {
    return methods(Player.class)
        .map(
            method ->
                DynamicTest.dynamicTest(
                    method.getName(),
                    () -> {
                      calls.clear();
                      Player behind = recording(Player.class, "behind");
                      List<String> hooks = new ArrayList<>();
                      Player front =
                          new ForwardingPlayer(behind) {
                            @Override
                            protected void asking() {
                              hooks.add("asking " + calls.size());
                            }

                            @Override
                            protected void answered() {
                              hooks.add("answered " + calls.size());
                            }
                          };
                      Object[] said = arguments(method);
                      Object answer = method.invoke(front, said);
                      assertThat(calls).hasSize(1);
                      assertThat(calls.get(0).method()).isEqualTo(method.getName());
                      assertThat(same(calls.get(0).arguments(), said)).isTrue();
                      Object wanted = value(method.getReturnType(), ANSWER);
                      assertThat(answer).isEqualTo(wanted);
                      assertThat(hooks).containsExactly("asking 0", "answered 1");
                    }));
  }

  @TestFactory
  Stream<DynamicTest> fan_tellsEveryEventToAllInTheirOrder() {
    return methods(GameListener.class)
        .filter(method -> method.getReturnType() == void.class)
        .map(
            method ->
                DynamicTest.dynamicTest(
                    method.getName(),
                    () -> {
                      calls.clear();
                      GameListener fan =
                          new ListenerFan(
                              recording(GameListener.class, "first"),
                              recording(GameListener.class, "second"));
                      Object[] said = arguments(method);
                      method.invoke(fan, said);
                      assertThat(calls).extracting(Call::whom).containsExactly("first", "second");
                      assertThat(calls).extracting(Call::method).containsOnly(method.getName());
                      assertThat(calls).allMatch(call -> same(call.arguments(), said));
                    }));
  }

  private static GameListener wanting(boolean aims, int seat) {
    return new GameListener() {
      @Override
      public boolean wantsAims() {
        return aims;
      }

      @Override
      public boolean wantsAimsOf(int asked) {
        return asked == seat;
      }
    };
  }

  @Test
  void fan_wantsTheAimsThatOneOfThemWants() {
    assertThat(new ListenerFan(wanting(false, 1), wanting(true, 2)).wantsAims()).isTrue();
    assertThat(new ListenerFan(wanting(false, 1), wanting(false, 2)).wantsAims()).isFalse();
    ListenerFan fan = new ListenerFan(wanting(false, 1), wanting(true, 2), wanting(true, 3));
    assertThat(Stream.of(0, 1, 2, 3).filter(fan::wantsAimsOf)).containsExactly(2, 3);
  }

  @Test
  void questionsToListeners_areTheseTwo() {
    assertThat(methods(GameListener.class).filter(m -> m.getReturnType() != void.class))
        .extracting(Method::getName)
        .containsExactlyInAnyOrder("wantsAims", "wantsAimsOf");
  }

  @Test
  void recorder_writesDownEverythingButAims() {
    assertThat(methods(GameRecorder.class).filter(m -> m.getDeclaringClass() == GameListener.class))
        .extracting(Method::getName)
        .containsExactlyInAnyOrder("wantsAims", "wantsAimsOf", "aimed");
  }
}
