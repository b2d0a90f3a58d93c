package org.tallywall.core.card;

import org.tallywall.core.text.Place;

/**
 * A piece of text with the place of its first character.
 *
 * @param text the text as typed
 * @param place where its first character stands
 */
record Typed(String text, Place place) {}
