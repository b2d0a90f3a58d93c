package org.tallywall.core.card;

import java.util.List;

/**
 * A card as typed, not yet checked.
 *
 * @param name what it is called
 * @param edition which edition, or empty
 * @param families the names of its sections in order
 * @param lines its lines in order
 */
record CardDraft(String name, String edition, List<String> families, List<LineDraft> lines) {}
