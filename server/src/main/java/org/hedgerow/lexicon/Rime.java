package org.hedgerow.lexicon;

import java.util.List;
import java.util.Optional;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;

/**
 * How a word ends: the letters and sounds from its last vowel on. Words with the same rime make a
 * family, <em>cat hat mat</em>; <em>bear</em> and <em>hair</em> only sound alike.
 *
 * @param graphemes with spaces between, as in {@code a t} or {@code a-e k}
 * @param sounds in IPA, with spaces between
 */
public record Rime(String graphemes, String sounds) {

  /** The rime of a word as it is said in one way; empty if it has no vowel. */
  public static Optional<Rime> of(Alignment alignment) {
    List<Span> spans = alignment.spans();
    for (int i = spans.size() - 1; i >= 0; i--) {
      if (spans.get(i).sounds().stream().anyMatch(Sound::vowel)) {
        return Optional.of(of(spans.subList(i, spans.size())));
      }
    }
    return Optional.empty();
  }

  private static Rime of(List<Span> spans) {
    return new Rime(
        String.join(" ", spans.stream().map(span -> span.grapheme().text()).toList()),
        Sound.spaced(spans.stream().flatMap(span -> span.sounds().stream()).toList()));
  }
}
