package org.tallywall.experiments.page;

import java.util.Map;

/**
 * One step of a game as the page shows it.
 *
 * @param title what everybody at the table hears
 * @param table what lies on the table afterwards, as the page's script reads it
 */
record Step(String title, Map<String, Object> table) {}
