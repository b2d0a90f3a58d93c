package org.tallywall.experiments.page;

import java.util.Map;

/**
 * One step of a game as the page shows it.
 *
 * @param kind what sort of step it is, in one word for the page's script
 * @param title what everybody at the table hears
 * @param table what lies on the table afterwards, as the page's script reads it
 */
record Step(String kind, String title, Map<String, Object> table) {}
