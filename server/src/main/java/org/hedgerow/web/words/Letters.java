package org.hedgerow.web.words;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Range;
import org.hedgerow.web.query.ChoiceReader;
import org.hedgerow.web.query.ParameterValues;
import org.hedgerow.web.query.Quoted;

/**
 * How many letters words may have, or the only ones that they may be made of: one of the two.
 *
 * @param only as in {@code satpin}
 */
record Letters(Optional<Range> count, Optional<String> only) {
  private static final String NAME = "letters";
  private static final Pattern LETTERS = Pattern.compile("[a-z]{1,26}");

  static Optional<Letters> read(String text, ParameterValues before) {
    String letters = text.toLowerCase(Locale.ROOT);
    if (ChoiceReader.looksLikeRange(letters)) {
      return new ChoiceReader(before.given())
          .range(NAME, letters)
          .map(range -> new Letters(Optional.of(range), Optional.empty()));
    }
    if (LETTERS.matcher(letters).matches()) {
      return Optional.of(new Letters(Optional.empty(), Optional.of(letters)));
    }
    before
        .given()
        .errors()
        .invalid(
            NAME,
            "letters must be how many (3 or 3-5) or which (satpin, up to 26 of a to z), not %s."
                .formatted(Quoted.of(letters)));
    return Optional.empty();
  }

  /** As it stands in addresses. */
  @Override
  public String toString() {
    return count.map(Range::toString).or(() -> only).orElse("");
  }
}
