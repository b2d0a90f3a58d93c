package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.text.Place;

/** A line as it was typed in either kind of file, not yet checked. */
final class LineDraft {
  final String family;
  final Place place;
  String id = "";
  Place idPlace;
  String say = "";
  final List<Typed> tiles = new ArrayList<>();
  Typed slide;
  Typed where;
  Typed suits;
  long value;
  boolean concealed;
  boolean jokers = true;
  Boolean jokerless;

  /**
   * An empty draft with the defaults.
   *
   * @param family the section in which it stands
   * @param place where it stands
   */
  LineDraft(String family, Place place) {
    this.family = family;
    this.place = place;
    this.idPlace = place;
    this.slide = new Typed(Slide.NONE.text(), place);
    this.where = new Typed("", place);
    this.suits = new Typed(SuitChoice.AS_WRITTEN.text(), place);
  }
}
