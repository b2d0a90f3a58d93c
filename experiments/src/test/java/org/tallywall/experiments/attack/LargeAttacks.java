package org.tallywall.experiments.attack;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Attacks too large to be written down, and those that are small and ask for too much. */
enum LargeAttacks {
  /** 10,000 ways to choose and twice as many to number: more hands than memory holds. */
  FOUR_BRACKETS_OF_TEN(() -> card(line(brackets())), 0, 2),
  FIVE_THOUSAND_LINES_OF_OPEN_NUMBERS(
      () -> card(repeated(5_000, line("nnnx mmmy kkkkz FF 12x"))), 0, 2),
  A_HUNDRED_THOUSAND_FAULTY_LINES(() -> card(repeated(100_000, line("1111q"))), 2),
  SEVENTY_THOUSAND_FAMILIES_OF_PUNCTUATION(LargeAttacks::families, 0, 2),
  A_SLIDE_OF_MEGABYTES(
      () ->
          card(
              "{\"tiles\":\"FF 1111x 22y 3333z 99x\",\"value\":25,\"slide\":\""
                  + "s".repeat(8 << 20)
                  + "\"}"),
      2),
  A_TILE_WORD_OF_MEGABYTES(() -> card(line("1".repeat(8 << 20))), 2),
  A_NAME_OF_MEGABYTES(() -> card("{\"" + "n".repeat(8 << 20) + "\":1}"), 2),
  BRACKETS_WITHIN_BRACKETS(() -> card(line("(".repeat(50_000))), 2),
  JSON_WITHIN_JSON(() -> card("[".repeat(3 << 20)), 2),
  AN_ENDLESS_TABLE(() -> table("Family,1111x 22y 333x 444z 55y,25\n".repeat(60_000)), 0, 2),
  FAULTY_ROWS(() -> table("Family,1111q,25\n".repeat(100_000)), 2),
  AN_ENDLESS_FILE(() -> Attack.of("", Map.of(), "card", "check", "/dev/zero"), 2),
  RECORDS_OF_ONE_ENDLESS_LINE(LargeAttacks::endlessRecord, 2),
  EVERYONE_AGAINST_SIXTY(() -> roundRobin(60), 0, 2),
  EVERYONE_AGAINST_A_HUNDRED_AND_FIFTY(() -> roundRobin(150), 0, 2),
  A_SHEET_OF_MANY_LINES(() -> sheet("seat 0\nmoment turn\n" + "rack 1b\n".repeat(200_000)), 2),
  A_SHEET_OF_ONE_LONG_LINE(() -> sheet("seat 0\nrack " + "1b ".repeat(2 << 20)), 2),
  RACKS_THAT_ARE_NONE(() -> racks("1q\n".repeat(100_000)), 2),
  A_RACK_OF_MEGABYTES(() -> racks("1".repeat(8 << 20)), 2);

  private final Supplier<Attack> attack;
  private final List<Integer> codes;

  LargeAttacks(Supplier<Attack> attack, Integer... codes) {
    this.attack = attack;
    this.codes = List.of(codes);
  }

  static List<LargeAttacks> all() {
    return List.of(values());
  }

  Attack attack() {
    return attack.get();
  }

  /** The exit codes that are right. */
  List<Integer> codes() {
    return codes;
  }

  private static String line(String tiles) {
    return "{\"tiles\":\"" + tiles + "\",\"value\":25}";
  }

  private static String brackets() {
    String choice =
        IntStream.rangeClosed(1, 9)
            .mapToObj(digit -> digit + "" + digit + "x")
            .collect(Collectors.joining("|", "(", "|NN)"));
    return (choice + " ").repeat(4) + "nnnx mmmy";
  }

  private static String repeated(int times, String line) {
    return String.join(",\n", java.util.Collections.nCopies(times, line));
  }

  private static Attack card(String lines) {
    String text = "{\"card\":\"Quay\",\"families\":[{\"family\":\"A\",\"lines\":[" + lines + "]}]}";
    return file("card.json", text, "card", "check", Attack.HERE + "/card.json");
  }

  /** Their names have no letter from which a line could take its own. */
  private static Attack families() {
    String families =
        IntStream.range(0, 70_000)
            .mapToObj(number -> "{\"family\":\"" + punctuation(number) + "\",\"lines\":[")
            .map(family -> family + line("FF 1111x 22y 3333z 99x") + "]}")
            .collect(Collectors.joining(",\n"));
    String text = "{\"card\":\"Quay\",\"families\":[" + families + "]}";
    return file("card.json", text, "card", "check", Attack.HERE + "/card.json");
  }

  private static String punctuation(int number) {
    StringBuilder name = new StringBuilder();
    for (int rest = number; rest > 0 || name.isEmpty(); rest /= 10) {
      name.append("!#$%&()*+?".charAt(rest % 10));
    }
    return name.toString();
  }

  private static Attack table(String rows) {
    return file(
        "card.csv", "family,tiles,value\n" + rows, "card", "check", Attack.HERE + "/card.csv");
  }

  private static Attack sheet(String text) {
    String card = Attack.HERE + "/card.json";
    Attack ask =
        file(
            "scene.txt",
            text,
            "ask",
            Attack.HERE + "/scene.txt",
            "--card",
            card,
            "--player",
            "nearest");
    return ask.with("card.json", Plant.text(TinyStudies.CARD));
  }

  private static Attack racks(String text) {
    String card = Attack.HERE + "/card.json";
    Attack rack = file("racks.txt", text, "rack", card, "--from", Attack.HERE + "/racks.txt");
    return rack.with("card.json", Plant.text(TinyStudies.CARD));
  }

  private static Attack roundRobin(int names) {
    String players =
        IntStream.range(0, names)
            .mapToObj(number -> "\"p" + number + "\":\"random-legal\"")
            .collect(Collectors.joining(","));
    String study =
        "{\"study\":\"all\",\"card\":\"card.json\",\"seed\":5,\"round-robin\":{"
            + players
            + "},\"deals\":60}";
    Attack run =
        file(
            "study.json",
            study,
            "run",
            Attack.HERE + "/study.json",
            "--out",
            Attack.HERE + "/out",
            "--dry-run");
    return run.with("card.json", Plant.text(TinyStudies.CARD));
  }

  /** More than a gigabyte of one letter, in about a megabyte. */
  private static Attack endlessRecord() {
    byte[] megabyte = new byte[1 << 20];
    java.util.Arrays.fill(megabyte, (byte) 'a');
    String card = Attack.HERE + "/card.json";
    return Attack.of("", Map.of(), "replay", Attack.HERE + "/games.jsonl.gz", "--card", card)
        .with("card.json", Plant.text(TinyStudies.CARD))
        .with("games.jsonl.gz", new Plant.Bytes(packed(megabyte, 1_200)));
  }

  /**
   * A text over and over, as one packed file (RFC 1951 and 1952). It is packed once, flushed so
   * that it can follow itself: packing all of it takes long.
   */
  private static byte[] packed(byte[] text, int times) {
    Deflater packer = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
    byte[] piece = new byte[text.length];
    packer.setInput(text);
    int size = packer.deflate(piece, 0, piece.length, Deflater.FULL_FLUSH);
    packer.end();
    CRC32 sum = new CRC32();
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    packed.writeBytes(new byte[] {0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 0, 0});
    for (int time = 0; time < times; time++) {
      sum.update(text);
      packed.write(piece, 0, size);
    }
    packed.writeBytes(new byte[] {3, 0}); // a last block, of nothing
    ByteBuffer end = ByteBuffer.allocate(8).order(ByteOrder.LITTLE_ENDIAN);
    end.putInt((int) sum.getValue()).putInt(text.length * times);
    packed.writeBytes(end.array());
    return packed.toByteArray();
  }

  private static Attack file(String name, String text, String... words) {
    Map<String, Plant> files = new LinkedHashMap<>();
    files.put(name, Plant.text(text));
    return Attack.of("", files, words);
  }
}
