package org.tallywall.reports.results;

/**
 * The program that reads results, to be compared with the one that wrote them.
 *
 * @param version its version, as in {@code 0.1.0}
 * @param streams the version of its random streams
 */
public record ThisProgram(String version, long streams) {}
