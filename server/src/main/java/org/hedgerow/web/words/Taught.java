package org.hedgerow.web.words;

import java.util.Optional;
import java.util.Set;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.ParameterValues;
import org.hedgerow.web.query.TaughtReader;

/**
 * The phonogram values that children know already.
 *
 * @param label as they stand in addresses
 */
public record Taught(Set<Correspondence> values, String label) {
  static final Taught NOTHING = new Taught(Set.of(), "");

  public Taught {
    values = Set.copyOf(values);
  }

  /** A step of a sequence is what it is in the accent that is named first. */
  static Optional<Taught> read(String text, ParameterValues before) {
    TaughtReader reader =
        new TaughtReader(
            before.lexicon(),
            before.get(WordParameters.ACCENT).get(0).accent().tag(),
            before.given().errors());
    Set<Correspondence> values = reader.read("taught", Optional.of(text));
    return Optional.of(new Taught(values, String.join(",", reader.labels(values))));
  }
}
