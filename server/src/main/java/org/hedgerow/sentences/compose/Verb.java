package org.hedgerow.sentences.compose;

/**
 * The forms of a verb.
 *
 * @param base as in <em>can float</em>
 * @param third as in <em>it floats</em>; like the others empty where it isn't known
 * @param past as in <em>it floated</em>
 * @param ing as in <em>it is floating</em>
 */
public record Verb(String base, String third, String past, String ing) {}
