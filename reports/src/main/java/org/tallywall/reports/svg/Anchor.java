package org.tallywall.reports.svg;

/** Which end of a text stands at its place. */
enum Anchor {
  START("start"),
  MIDDLE("middle"),
  END("end");

  private final String code;

  Anchor(String code) {
    this.code = code;
  }

  String code() {
    return code;
  }
}
