package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.StoryTable;

/**
 * What lies on the table at one moment, as the page's script reads it. All texts are plain; the
 * script puts them in as text.
 */
final class Tableau {
  private final StoryTable table;
  private final List<List<String>> arrived = new ArrayList<>();
  private final List<String> did = new ArrayList<>(List.of("", "", "", ""));
  private final List<List<String>> reasons = new ArrayList<>();
  private int onTurn = -1;
  private int shown = -1;
  private List<Integer> dead = List.of();
  private List<Integer> points = List.of();

  Tableau(StoryTable table) {
    this.table = table;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      arrived.add(new ArrayList<>());
      reasons.add(List.of());
    }
  }

  /** Tiles that have just come to a rack and are marked. */
  Tableau arrived(int seat, List<Integer> kinds) {
    kinds.forEach(kind -> arrived.get(seat).add(Tile.symbol(kind)));
    return this;
  }

  /** What only somebody who sees the rack knows of the step. */
  Tableau did(int seat, String sentence) {
    String before = did.get(seat);
    did.set(seat, before.isEmpty() ? sentence : before + "; " + sentence);
    return this;
  }

  Tableau onTurn(int seat) {
    onTurn = seat;
    return this;
  }

  /** A rack that lies open for everybody. */
  Tableau shown(int seat) {
    shown = seat;
    return this;
  }

  Tableau reasons(int seat, List<String> sentences) {
    reasons.set(seat, List.copyOf(sentences));
    return this;
  }

  /** Whose hands are dead. */
  Tableau dead(Collection<Integer> seats) {
    dead = List.copyOf(seats);
    return this;
  }

  /** What everybody gained or lost. */
  Tableau points(List<Integer> all) {
    points = List.copyOf(all);
    return this;
  }

  /**
   * The moment as values of JSON. What is empty is left out.
   *
   * @param discards the discards so far
   * @param aims what each player is after; empty where it is as a step before
   */
  Map<String, Object> values(Discards discards, List<String> aims) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("left", table.left());
    values.put("turn", onTurn);
    values.put("thrown", discards.count());
    if (shown >= 0) {
      values.put("shown", shown);
    }
    putUnlessEmpty(values, "dead", dead);
    putUnlessEmpty(values, "points", points);
    List<Object> seats = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("rack", rack(table.rack(seat)));
      putUnlessEmpty(one, "new", String.join(" ", arrived.get(seat)));
      putUnlessEmpty(one, "open", table.exposures(seat).stream().map(Tableau::exposure).toList());
      putUnlessEmpty(one, "did", did.get(seat));
      putUnlessEmpty(one, "aim", aims.get(seat));
      putUnlessEmpty(one, "why", reasons.get(seat));
      seats.add(one);
    }
    values.put("seats", seats);
    return values;
  }

  private static void putUnlessEmpty(Map<String, Object> values, String name, String text) {
    if (!text.isEmpty()) {
      values.put(name, text);
    }
  }

  private static void putUnlessEmpty(Map<String, Object> values, String name, List<?> list) {
    if (!list.isEmpty()) {
      values.put(name, list);
    }
  }

  private static String rack(Rack rack) {
    return String.join(" ", Arrays.stream(rack.tiles()).mapToObj(Tile::symbol).toList());
  }

  private static String exposure(Exposure exposure) {
    List<String> tiles = new ArrayList<>();
    for (int at = 0; at < exposure.size(); at++) {
      boolean natural = at < exposure.size() - exposure.jokers();
      tiles.add(Tile.symbol(natural ? exposure.kind() : Tile.JOKER));
    }
    return String.join(" ", tiles);
  }
}
