package org.tallywall.experiments.cli;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.List;

/**
 * Hears Ctrl-C, a request to terminate, and the end of a terminal. Java has no public way to do so
 * without ending the process at once; the class that can is one of the module {@code
 * jdk.unsupported}, which is why it is looked for by its name. Where it is not there the machine's
 * own way stays: the process ends at once, and stored blocks are whole.
 */
final class Signals {
  private static final List<String> NAMES = List.of("INT", "TERM", "HUP");

  private Signals() {}

  /**
   * Listens from now on.
   *
   * @param heard is told each time, in a thread of its own
   */
  static void listen(Runnable heard) {
    for (String name : NAMES) {
      try {
        listen(name, heard);
      } catch (ReflectiveOperationException | IllegalArgumentException notHere) {
        // This machine has no such signal, or it is not to be heard: its own way stays.
      }
    }
  }

  private static void listen(String name, Runnable heard) throws ReflectiveOperationException {
    Class<?> signal = Class.forName("sun.misc.Signal");
    Class<?> handler = Class.forName("sun.misc.SignalHandler");
    Object hears =
        Proxy.newProxyInstance(
            Signals.class.getClassLoader(),
            new Class<?>[] {handler},
            (proxy, method, values) -> answer(proxy, method, values, heard));
    try {
      signal
          .getMethod("handle", signal, handler)
          .invoke(null, signal.getConstructor(String.class).newInstance(name), hears);
    } catch (InvocationTargetException refused) {
      if (refused.getCause() instanceof IllegalArgumentException unknown) {
        throw unknown;
      }
      throw refused;
    }
  }

  private static Object answer(Object proxy, Method method, Object[] values, Runnable heard) {
    return switch (method.getName()) {
      case "handle" -> {
        heard.run();
        yield null;
      }
      case "equals" -> proxy == values[0];
      case "hashCode" -> System.identityHashCode(proxy);
      default -> "the program";
    };
  }
}
