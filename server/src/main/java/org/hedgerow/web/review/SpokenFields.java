package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;

/**
 * How a word is said, as fields of a form.
 *
 * @param canAdd whether there is room for another block
 * @param choices for letters and sounds that are put right: the bank's pronunciations
 * @param instead whether it takes the place of what the bank has; only for another pronunciation
 */
record SpokenFields(
    List<PronunciationFields> blocks,
    boolean canAdd,
    Optional<List<Option>> choices,
    Optional<Boolean> instead) {

  static SpokenFields ofNewWord(List<PronunciationFields> blocks) {
    return new SpokenFields(
        blocks,
        blocks.size() < ProposedPronunciationReader.MAX,
        Optional.empty(),
        Optional.empty());
  }

  static SpokenFields ofPronunciation(PronunciationFields block, boolean instead) {
    return new SpokenFields(List.of(block), false, Optional.empty(), Optional.of(instead));
  }

  static SpokenFields ofAlignment(PronunciationFields block, List<Option> choices) {
    return new SpokenFields(List.of(block), false, Optional.of(choices), Optional.empty());
  }

  /** Whether letters and sounds of a pronunciation of the bank are put right. */
  boolean isAlignment() {
    return choices.isPresent();
  }

  /** The choice that is shown, as the value of its field; empty if there is none. */
  String chosen() {
    return choices.orElse(List.of()).stream()
        .filter(Option::chosen)
        .map(Option::value)
        .findFirst()
        .orElse("");
  }
}
