package org.tallywall.reports.document;

/** What a reader can do with a table on a page for a browser. Every table can be copied. */
public enum Handles {
  /** Nothing more. */
  COPY,
  /** Sort it by any column. */
  SORT,
  /** Sort it, and show only rows that hold a word. */
  SORT_AND_FILTER
}
