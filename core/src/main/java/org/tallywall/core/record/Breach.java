package org.tallywall.core.record;

/**
 * Where a record breaks the rules.
 *
 * @param event index of the event, from 0; -1 where the wall, the dice or the header is meant, the
 *     last event where the end is, the number of events where one more should follow
 * @param message what is wrong, with the rule's number
 */
public record Breach(int event, String message) {}
