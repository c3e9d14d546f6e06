package org.hedgerow.web.http;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.ValidationErrors;
import org.jspecify.annotations.Nullable;

/** Reads what several kinds of bodies say in the same way. */
public final class BodyParts {
  private BodyParts() {}

  public static Optional<Correspondence> target(
      Lexicon lexicon,
      @Nullable String phonogram,
      @Nullable Integer value,
      ValidationErrors errors) {
    return new PhonogramReader(lexicon.catalogue(), errors)
        .target(Optional.ofNullable(phonogram), Optional.ofNullable(value).map(String::valueOf));
  }

  /**
   * The tags of the accents, at least one. An empty list is the same as none: many generated
   * clients send one for every list that was left out.
   *
   * @param accent as bodies name them now
   * @param accents as they named them first, which goes on to be understood
   */
  public static List<String> accents(
      Lexicon lexicon,
      @Nullable List<String> accent,
      @Nullable List<String> accents,
      ValidationErrors errors) {
    List<String> newer = Optional.ofNullable(accent).orElse(List.of());
    List<String> older = Optional.ofNullable(accents).orElse(List.of());
    if (!newer.isEmpty() && !older.isEmpty()) {
      errors.invalid("accents", "accents is the older name of accent. Send accent alone.");
    }
    return newer.isEmpty()
        ? tags(lexicon, "accents", older, errors)
        : tags(lexicon, "accent", newer, errors);
  }

  private static List<String> tags(
      Lexicon lexicon, String field, List<String> tags, ValidationErrors errors) {
    return new AccentReader(lexicon, errors)
        .each(field, tags).stream().map(each -> each.accent().tag()).toList();
  }
}
