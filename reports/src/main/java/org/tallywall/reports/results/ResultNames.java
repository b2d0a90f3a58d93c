package org.tallywall.reports.results;

/** What the files and folders of a results folder are called. */
public final class ResultNames {
  /** The study with every default in place. */
  public static final String STUDY = "study.json";

  /** What was run, when, and how far it came. */
  public static final String MANIFEST = "manifest.json";

  /** The folder of stored blocks. */
  public static final String BLOCKS = "blocks";

  /** The games that were kept, packed. */
  public static final String RECORDS = "records.jsonl.gz";

  /** The games that were kept, unpacked by hand. */
  public static final String UNPACKED_RECORDS = "records.jsonl";

  /** What every column means. */
  public static final String COLUMNS = "columns.md";

  /** The page of all results; it is written last. */
  public static final String REPORT = "report.html";

  /** The results in words, for an editor of text. */
  public static final String NOTES = "notes.md";

  /** The results in words, for pasting. */
  public static final String NOTES_PAGE = "notes.html";

  /** The folder of charts. */
  public static final String CHARTS = "charts";

  /** The folder of pages that step through a game. */
  public static final String GAMES = "games";

  /** How the name of a table ends. */
  public static final String TABLE_ENDING = ".csv";

  /** A file of this name stops a run. */
  public static final String STOP = "stop";

  /** In the folder of blocks; whoever holds it may use the results folder. */
  public static final String LOCK = "lock";

  private ResultNames() {}

  /**
   * The file of a table.
   *
   * @param table what the table is called
   * @return its name
   */
  public static String table(String table) {
    return table + TABLE_ENDING;
  }
}
