package org.hedgerow.web.view;

import java.time.Instant;
import java.util.Optional;
import org.hedgerow.lexicon.PublishedEdition;

/**
 * What is recorded of an edition.
 *
 * @param by who decided; left out where the program did
 * @param words how many words it changed
 */
public record EditionView(int edition, Instant at, String summary, Optional<String> by, int words) {

  public static EditionView of(PublishedEdition edition) {
    return new EditionView(
        edition.number(), edition.at(), edition.summary(), edition.by(), edition.words());
  }
}
