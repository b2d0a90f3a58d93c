package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An attack that is written down: what once broke the program, or would have.
 *
 * <p>The first line of its file says why it is there. Then, each at the beginning of a line:
 *
 * <ul>
 *   <li>{@code > words} is typed; {@code {here}} is its folder, words with blanks stand between
 *       {@code ''}, and a backslash, a u and four digits are a letter that cannot be typed;
 *   <li>{@code code 1 2} the exit codes that are right;
 *   <li>{@code keeps} says that no file may be gone afterwards;
 *   <li>{@code results NAME} or {@code unfinished NAME} begins with the folder of a tiny study;
 *   <li>{@code --- file NAME}, {@code --- edit NAME}, {@code --- folder NAME}, {@code --- pipe
 *       NAME}, {@code --- link NAME to PLACE}, {@code --- gone NAME} change what is in the folder.
 *       Lines of an edit are {@code pattern => words}; after a file its lines follow.
 * </ul>
 *
 * @param why why it is there
 * @param attack the attack
 * @param codes the exit codes that are right
 * @param keeps whether no file may be gone
 */
record Case(String why, Attack attack, List<Integer> codes, boolean keeps) {
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
  private static final Pattern LETTER = Pattern.compile("\\\\u([0-9a-f]{4})");
  private static final String PART = "--- ";

  /** Reads the file of a case. */
  static Case read(String name, String text, Seeds seeds) {
    Reader reader = new Reader(seeds);
    List<String> lines = text.lines().toList();
    lines.subList(1, lines.size()).forEach(reader::line);
    reader.finish();
    return new Case(
        lines.get(0), new Attack(name, reader.words, reader.files), reader.codes, reader.keeps);
  }

  /** Letters that cannot be typed in place of their numbers. */
  static String letters(String text) {
    return LETTER
        .matcher(text)
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    String.valueOf((char) Integer.parseInt(found.group(1), 16))));
  }

  /** Reads line by line. */
  private static final class Reader {
    private final Seeds seeds;
    private final List<String> words = new ArrayList<>();
    private final List<Integer> codes = new ArrayList<>();
    private final Map<String, Plant> files = new LinkedHashMap<>();
    private final StringBuilder content = new StringBuilder();
    private String file;
    private String edited;
    private boolean keeps;

    private Reader(Seeds seeds) {
      this.seeds = seeds;
      files.put("card.json", Plant.text(TinyStudies.CARD));
      files.put(Attack.ELSEWHERE + "victim.txt", Plant.text("victim"));
    }

    private void line(String line) {
      if (line.startsWith(PART)) {
        finish();
        part(line.substring(PART.length()).split(" "));
      } else if (file != null) {
        content.append(line).append('\n');
      } else if (edited != null) {
        edit(line.split(" => ", 2));
      } else {
        head(line);
      }
    }

    private void head(String line) {
      String rest = line.substring(line.indexOf(' ') + 1);
      if (line.startsWith("> ")) {
        Matcher found = WORD.matcher(rest);
        while (found.find()) {
          words.add(letters(found.group(1) == null ? found.group(2) : found.group(1)));
        }
      } else if (line.startsWith("code ")) {
        List.of(rest.split(" ")).forEach(code -> codes.add(Integer.valueOf(code)));
      } else if (line.startsWith("results ")) {
        files.putAll(seeds.results.get(rest));
      } else if (line.startsWith("unfinished ")) {
        files.putAll(seeds.unfinished.get(rest));
      } else if (line.equals("keeps")) {
        keeps = true;
      } else if (!line.isBlank()) {
        throw new IllegalArgumentException(line);
      }
    }

    private void part(String[] said) {
      switch (said[0]) {
        case "file" -> file = said[1];
        case "edit" -> edited = said[1];
        case "folder" -> files.put(said[1], new Plant.Folder());
        case "pipe" -> files.put(said[1], new Plant.Pipe());
        case "link" -> files.put(said[1], new Plant.Link(said[3]));
        case "gone" -> files.remove(said[1]);
        default -> throw new IllegalArgumentException(said[0]);
      }
    }

    private void edit(String[] change) {
      boolean packed = edited.endsWith(".gz");
      Plant.Bytes old = (Plant.Bytes) files.get(edited);
      String before =
          packed ? Seeds.text(new Plant.Bytes(ByteSpoiler.unpacked(old.bytes()))) : Seeds.text(old);
      String after =
          Pattern.compile(change[0], Pattern.MULTILINE).matcher(before).replaceAll(change[1]);
      if (after.equals(before)) {
        throw new IllegalArgumentException(change[0] + " is not in " + edited + ":\n" + before);
      }
      Plant.Bytes changed = (Plant.Bytes) Plant.text(after);
      files.put(edited, packed ? new Plant.Bytes(ByteSpoiler.packed(changed.bytes())) : changed);
    }

    private void finish() {
      if (file != null) {
        files.put(file, Plant.text(content.toString()));
      }
      file = null;
      edited = null;
      content.setLength(0);
    }
  }
}
