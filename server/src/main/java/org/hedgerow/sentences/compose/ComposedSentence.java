package org.hedgerow.sentences.compose;

/**
 * A composed sentence.
 *
 * @param text with its capital and its final mark
 * @param plausibility how likely it is, as a logarithm to base 10 per word; for comparing only
 */
public record ComposedSentence(String text, SentenceKind kind, double plausibility) {}
