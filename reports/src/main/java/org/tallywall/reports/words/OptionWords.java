package org.tallywall.reports.words;

import java.util.Arrays;
import java.util.Optional;

/** What can be done at the decision that a study branches at, in words. */
enum OptionWords {
  OWN_NEED("own-need", "play your own hand", "playing your own hand"),
  SAFEST("safest", "throw the safest tile", "throwing the safest tile"),
  NOTHING("nothing", "let the tile go", "letting the tile go"),
  CLAIM("claim", "claim the tile", "claiming the tile"),
  STOP("stop", "stop the passes", "stopping the passes"),
  GO_ON("go-on", "pass three more times", "passing three more times");

  private final String id;
  private final String plain;
  private final String doing;

  OptionWords(String id, String plain, String doing) {
    this.id = id;
    this.plain = plain;
    this.doing = doing;
  }

  /** The words for an option as files name it, if it is one of these. */
  static Optional<OptionWords> of(String id) {
    return Arrays.stream(values()).filter(words -> words.id.equals(id)).findFirst();
  }

  /** A few words that follow "to". */
  String plain() {
    return plain;
  }

  /** The same as the subject of a sentence. */
  String doing() {
    return doing;
  }
}
