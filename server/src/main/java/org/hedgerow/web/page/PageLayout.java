package org.hedgerow.web.page;

import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.web.security.FormTokens;

/**
 * What stands around the contents of every page.
 *
 * @param forms where people can sign in
 * @param centre gives the name of the centre at once, or an empty text
 * @param waiting where they can contribute
 */
public record PageLayout(
    Optional<FormTokens> forms, Supplier<String> centre, Optional<PendingCount> waiting) {
  /** Where nobody signs in. */
  public static final PageLayout OF_READERS =
      new PageLayout(Optional.empty(), () -> "", Optional.empty());
}
