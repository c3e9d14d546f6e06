package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.sentences.SentenceStandard;

/** The distinct candidate sentences that match a request. */
final class CandidateSet {

  private final CompositionRequest order;
  private final SentenceStandard standard;
  private final Map<String, Candidate> found = new LinkedHashMap<>();

  CandidateSet(CompositionRequest order, SentenceStandard standard) {
    this.order = order;
    this.standard = standard;
  }

  void add(Candidate candidate) {
    if (isInOrder(candidate.phrase())) {
      found.putIfAbsent(candidate.text(), candidate);
    }
  }

  private boolean isInOrder(Phrase phrase) {
    return phrase.targets() >= standard.minimumTargets()
        && phrase.length() <= standard.maximumWords()
        && !phrase.repeats()
        && !phrase.clashes()
        && order.mustUse().stream().allMatch(word -> holds(phrase, word));
  }

  private static boolean holds(Phrase phrase, String word) {
    return phrase.pieces().stream()
        .anyMatch(piece -> piece.word().equals(word) || piece.lemma().equals(word));
  }

  int size() {
    return found.size();
  }

  /** Of how many scenes and patterns they are. */
  int patterns() {
    return (int) found.values().stream().map(Candidate::pattern).distinct().count();
  }

  List<Candidate> all() {
    return new ArrayList<>(found.values());
  }
}
