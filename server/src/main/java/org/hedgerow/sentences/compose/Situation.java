package org.hedgerow.sentences.compose;

import java.util.List;

/**
 * Who or what can be where, of the words that can be read.
 *
 * @param people whether pronouns can stand for the subject
 */
record Situation(WordPool<NounForm> subjects, boolean people, List<ReadablePlace> places) {

  boolean isWhole() {
    return (people || !subjects.isEmpty()) && !places.isEmpty();
  }

  boolean holdsTarget() {
    return !subjects.targets().isEmpty()
        || places.stream().anyMatch(place -> !place.nouns().targets().isEmpty());
  }
}
