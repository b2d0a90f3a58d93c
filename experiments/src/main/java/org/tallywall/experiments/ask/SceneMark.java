package org.tallywall.experiments.ask;

/**
 * How a player did in one scene, all exchanges of suits and all seeds together.
 *
 * @param scene the scene's name
 * @param passed whether every answer was an expected one and none was ruled out
 * @param ruledOut whether an answer was given that the scene rules out
 * @param slip the first wrong answer in words and where it was given, empty where all were right
 */
public record SceneMark(String scene, boolean passed, boolean ruledOut, String slip) {}
