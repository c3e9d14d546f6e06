package org.hedgerow.web.http;

import java.util.Optional;
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.QueryString;

/** Where a list goes on: a relative reference for the header {@code Link}. */
public final class NextReference {

  private NextReference() {}

  /**
   * @param question every parameter with its default
   * @param cursor the place; empty at the end of the list
   */
  public static Optional<String> of(
      String path, QueryString question, Optional<String> cursor, Format format) {
    return cursor.map(
        place ->
            path
                + "?"
                + question
                    .with(KeysetParameters.AFTER, place)
                    .with(Formats.PARAMETER, format.label()));
  }
}
