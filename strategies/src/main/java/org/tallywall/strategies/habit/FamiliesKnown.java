package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Family;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Knows a few families of the card and leaves the others aside. Which ones follows from the seat:
 * East knows the first of the card, the next seat those after hers, and so on; after the last
 * family comes the first again. So four of a kind are at home in different parts of the card, and
 * nothing is left to chance.
 */
public final class FamiliesKnown implements LineWeights {
  /** How many families are known; 0 for all. */
  public static final Setting<Integer> KNOWN =
      Setting.whole("aim.families-known")
          .from(0)
          .to(20)
          .usual(0)
          .says(
              "goes for this many families of the card and leaves the others aside, East from the "
                  + "first on, each next seat from where that ends; 0 leaves none aside "
                  + "(\"play few families well\")");

  private final int known;
  private ConcreteHands card;
  private int seat = -1;
  private boolean[] aside = new boolean[0];
  private Reach reach;

  FamiliesKnown(SettingValues values) {
    known = values.get(KNOWN);
  }

  static List<Setting<?>> settings() {
    return List.of(KNOWN);
  }

  boolean neutral() {
    return known == 0;
  }

  @Override
  public void begin(SeatView view, Rack rack, Reach possible) {
    reach = possible;
    if (card != possible.hands() || seat != view.seat()) {
      card = possible.hands();
      seat = view.seat();
      aside = aside();
    }
  }

  private boolean[] aside() {
    List<String> families = new ArrayList<>();
    for (Family family : card.card().families()) {
      families.add(family.name());
    }
    boolean[] lines = new boolean[card.lines()];
    for (int line = 0; line < lines.length; line++) {
      int further = families.indexOf(card.line(line).family()) - seat * known;
      lines[line] = Math.floorMod(further, families.size()) >= known;
    }
    return lines;
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    return aside[reach.line(hand)] ? AllWeights.LEFT_ASIDE : 1;
  }
}
