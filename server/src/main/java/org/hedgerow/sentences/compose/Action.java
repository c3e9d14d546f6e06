package org.hedgerow.sentences.compose;

import java.util.List;

/**
 * A frame with a verb form that can be read, and what can be read in its places.
 *
 * @param objects empty where the verb takes none
 * @param places those that some noun fits
 * @param rests the fixed endings that can be read
 */
record Action(
    VerbFrame frame,
    PhraseWord verb,
    WordPool<NounForm> subjects,
    WordPool<NounForm> objects,
    List<ReadablePlace> places,
    WordPool<Phrase> rests) {

  /** Whether all that the frame needs can be read. */
  boolean isWhole() {
    return (!subjects.isEmpty() || frame.subject().allowsPeople())
        && (frame.object().isEmpty() || !objects.isEmpty())
        && (!frame.placeNeeded() || !places.isEmpty())
        && (!frame.restNeeded() || !rests.isEmpty());
  }
}
