package org.hedgerow.web.http;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * How far an answer goes, for those who don't find it in the body.
 *
 * @param edition that it is from
 * @param total how many entries the whole list has; empty for what is no list
 * @param next where the list goes on, a relative reference; empty at its end
 */
record Extent(int edition, OptionalInt total, Optional<String> next) {
  static Extent whole(int edition) {
    return new Extent(edition, OptionalInt.empty(), Optional.empty());
  }
}
