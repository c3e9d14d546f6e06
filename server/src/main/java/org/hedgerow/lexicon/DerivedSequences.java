package org.hedgerow.lexicon;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Sequence;

/**
 * The sequence that follows from the words, for each accent, worked out when it is first asked for.
 * It follows from the words of the first edition, so that what a centre teaches by it doesn't shift
 * with every edition.
 */
final class DerivedSequences {
  private final Map<String, Lazy<Sequence>> byAccent = new HashMap<>();

  DerivedSequences(Lexicon first) {
    for (var each : first.accents()) {
      String accent = each.accent().tag();
      byAccent.put(accent, new Lazy<>(() -> new DerivedSequence(first, accent).sequence()));
    }
  }

  Optional<Sequence> in(String accent) {
    return Optional.ofNullable(byAccent.get(accent)).map(Lazy::get);
  }
}
