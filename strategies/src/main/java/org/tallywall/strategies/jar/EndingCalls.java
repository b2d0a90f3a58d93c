package org.tallywall.strategies.jar;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Looks into a class file for calls that end the whole program. A run that a player ended in this
 * way would look like one that came to its end, so such a class is not loaded. Only calls that are
 * written in the class are found, not those made by reflection.
 *
 * <p>The constant pool is read as the Java Virtual Machine Specification has it (chapter 4.4).
 */
final class EndingCalls {
  private static final Map<String, Set<String>> ENDING =
      Map.of(
          "java/lang/System", Set.of("exit"),
          "java/lang/Runtime", Set.of("exit", "halt"));

  private static final int HEAD = 8;
  private static final int UTF8 = 1;
  private static final int LONG = 5;
  private static final int DOUBLE = 6;
  private static final int CLASS = 7;
  private static final int METHOD = 10;
  private static final int NAME_AND_TYPE = 12;

  private final Map<Integer, String> texts = new TreeMap<>();
  private final Map<Integer, Integer> classes = new TreeMap<>();
  private final Map<Integer, Integer> names = new TreeMap<>();
  private final Map<Integer, int[]> methods = new TreeMap<>();

  private EndingCalls() {}

  /**
   * Looks for such a call.
   *
   * @param classFile the bytes of a class
   * @return the call, as in {@code System.exit}; nothing where there is none, or these are not the
   *     bytes of a class
   */
  static Optional<String> in(byte[] classFile) {
    EndingCalls pool = new EndingCalls();
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(classFile))) {
      in.skipNBytes(HEAD);
      pool.read(in);
    } catch (IOException cutShort) {
      return Optional.empty();
    }
    return pool.methods.values().stream().filter(pool::ends).map(pool::words).sorted().findFirst();
  }

  private void read(DataInputStream in) throws IOException {
    int count = in.readUnsignedShort();
    for (int at = 1; at < count; at++) {
      int tag = in.readUnsignedByte();
      switch (tag) {
        case UTF8 -> texts.put(at, in.readUTF());
        case CLASS -> classes.put(at, in.readUnsignedShort());
        case METHOD -> methods.put(at, new int[] {in.readUnsignedShort(), in.readUnsignedShort()});
        case NAME_AND_TYPE -> {
          names.put(at, in.readUnsignedShort());
          in.skipNBytes(2);
        }
        case LONG, DOUBLE -> {
          in.skipNBytes(8);
          at++;
        }
        default -> in.skipNBytes(length(tag));
      }
    }
  }

  /** Bytes of the other kinds of entries. */
  private static int length(int tag) throws IOException {
    return switch (tag) {
      case 8, 16, 19, 20 -> 2;
      case 15 -> 3;
      case 3, 4, 9, 11, 17, 18 -> 4;
      default -> throw new IOException("no entry of a constant pool");
    };
  }

  private boolean ends(int[] method) {
    return ENDING.getOrDefault(owner(method), Set.of()).contains(name(method));
  }

  private String words(int[] method) {
    String owner = owner(method);
    return owner.substring(owner.lastIndexOf('/') + 1) + "." + name(method);
  }

  private String owner(int[] method) {
    return texts.getOrDefault(classes.getOrDefault(method[0], 0), "");
  }

  private String name(int[] method) {
    return texts.getOrDefault(names.getOrDefault(method[1], 0), "");
  }
}
