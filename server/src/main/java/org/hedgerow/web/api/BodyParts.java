package org.hedgerow.web.api;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.Faults;
import org.hedgerow.web.query.PhonogramReader;
import org.jspecify.annotations.Nullable;

/** Reads what several kinds of bodies say in the same way. */
final class BodyParts {
  private BodyParts() {}

  static Optional<Correspondence> target(
      Lexicon lexicon, @Nullable String phonogram, @Nullable Integer value, Faults faults) {
    return new PhonogramReader(lexicon.catalogue(), faults)
        .target(Optional.ofNullable(phonogram), Optional.ofNullable(value).map(String::valueOf));
  }

  /** At least one. */
  static List<String> accents(Lexicon lexicon, @Nullable List<String> tags, Faults faults) {
    if (tags != null && tags.isEmpty()) {
      faults.invalid("accents", "accents is empty. Name an accent, or leave it out.");
    }
    return new AccentReader(lexicon, faults)
        .each("accents", Optional.ofNullable(tags).orElse(List.of())).stream()
            .map(each -> each.accent().tag())
            .toList();
  }
}
