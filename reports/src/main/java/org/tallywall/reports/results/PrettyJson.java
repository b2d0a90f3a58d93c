package org.tallywall.reports.results;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/** JSON for people to read. */
public final class PrettyJson {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private PrettyJson() {}

  /**
   * Writes a value.
   *
   * @param value maps, lists, texts, numbers
   * @return lines, each ended by {@code \n}
   */
  public static String text(Object value) {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(DefaultPrettyPrinter.FixedSpaceIndenter.instance());
    return MAPPER.writer().with(printer).writeValueAsString(value) + "\n";
  }
}
