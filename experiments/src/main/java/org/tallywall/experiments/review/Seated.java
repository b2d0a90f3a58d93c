package org.tallywall.experiments.review;

import java.util.function.Supplier;
import org.tallywall.core.play.Player;

/**
 * Who is thought to sit in a seat.
 *
 * @param name what readers call the player
 * @param kind what the list of players calls it
 * @param maker makes one for each table
 */
public record Seated(String name, String kind, Supplier<Player> maker) {}
