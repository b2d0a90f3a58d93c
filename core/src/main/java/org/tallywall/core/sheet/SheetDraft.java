package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Seats;
import org.tallywall.core.sheet.SheetLine.Word;
import org.tallywall.core.sheet.WordReader.Seen;
import org.tallywall.core.text.Place;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** A sheet while it is read and checked: what it says, and where. */
final class SheetDraft {
  /** Not said. */
  static final int NONE = -1;

  final SortedMap<String, Word> names = new TreeMap<>();
  int seat = NONE;
  Moment moment;
  int wall = NONE;
  final Rack rack = new Rack();
  final List<List<Exposure>> exposures = new ArrayList<>();
  final List<List<Place>> exposurePlaces = new ArrayList<>();
  final List<Thrown> discards = new ArrayList<>();
  final int[] unseen = new int[Tile.KINDS];
  final SortedMap<PassStep, Passed> passes = new TreeMap<>();

  /** The courtesy pass; null where the sheet says nothing of it. */
  Passed courtesy;

  final Heard heard = new Heard();
  final String[] plays = new String[Seats.COUNT];
  String scene = "";
  final List<String> players = new ArrayList<>();
  final List<ChoiceReader.Written> expect = new ArrayList<>();
  final List<ChoiceReader.Written> never = new ArrayList<>();
  String because = "";

  /** Every tile that the sheet shows, in the order written. */
  final List<Seen> shown = new ArrayList<>();

  SheetDraft() {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      exposures.add(new ArrayList<>());
      exposurePlaces.add(new ArrayList<>());
    }
  }

  /** A discard; its seat is {@link #NONE} where nobody says who threw it. */
  record Thrown(int kind, int seat) {}

  /** What was passed and got in one pass, and how many each seat passed on blind. */
  static final class Passed {
    final List<Integer> given = new ArrayList<>();
    final List<Integer> received = new ArrayList<>();
    final int[] blind = new int[Seats.COUNT];
  }

  Passed courtesyPass() {
    courtesy = courtesy == null ? new Passed() : courtesy;
    return courtesy;
  }

  Passed passed(PassStep step) {
    return passes.computeIfAbsent(step, any -> new Passed());
  }

  boolean says(String line) {
    return names.containsKey(line);
  }

  Place place(String line) {
    return says(line) ? names.get(line).place() : Place.FILE;
  }

  /** Tiles laid open by a seat. */
  int exposed(int of) {
    return exposures.get(of).stream().mapToInt(Exposure::size).sum();
  }

  int unseenTiles() {
    int sum = 0;
    for (int copies : unseen) {
      sum += copies;
    }
    return sum;
  }

  boolean inOrder() {
    return !discards.isEmpty() && discards.get(0).seat() != NONE;
  }
}
