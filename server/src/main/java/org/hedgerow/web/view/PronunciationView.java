package org.hedgerow.web.view;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.jspecify.annotations.Nullable;

/**
 * One way of saying a word, and which letters spell what.
 *
 * @param arpabet left out where the source doesn't give it
 * @param margin null where there is no other way to share the letters out
 * @param irregular left out unless nothing in the catalogue explains the spelling
 * @param source left out in lists
 * @param weak left out in lists
 */
public record PronunciationView(
    String accent,
    String sounds,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) String arpabet,
    List<SpanView> spans,
    @JsonInclude(JsonInclude.Include.ALWAYS) @Nullable Double margin,
    @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean irregular,
    Optional<String> source,
    Optional<Boolean> weak) {

  /** As it stands in lists. */
  public static PronunciationView of(
      Pronunciation pronunciation, Predicate<Correspondence> target) {
    return of(pronunciation, target, Optional.empty(), Optional.empty());
  }

  /** With where it comes from. */
  static PronunciationView sourced(Pronunciation pronunciation) {
    return of(
        pronunciation,
        correspondence -> false,
        Optional.of(pronunciation.source()),
        Optional.of(pronunciation.aside()));
  }

  private static PronunciationView of(
      Pronunciation pronunciation,
      Predicate<Correspondence> target,
      Optional<String> source,
      Optional<Boolean> weak) {
    return new PronunciationView(
        pronunciation.accent(),
        Sound.spaced(pronunciation.sounds()),
        pronunciation.stressed(),
        pronunciation
            .alignment()
            .map(alignment -> SpanView.of(alignment, target))
            .orElse(List.of()),
        pronunciation.alignment().map(Margins::shown).orElse(null),
        pronunciation.alignment().isEmpty(),
        source,
        weak);
  }
}
