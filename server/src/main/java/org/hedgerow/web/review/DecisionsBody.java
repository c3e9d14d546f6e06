package org.hedgerow.web.review;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is sent to {@code POST /decisions}. */
record DecisionsBody(@Nullable List<Item> decisions) {

  /** One of the decisions. */
  record Item(
      @Nullable Integer contribution,
      @Nullable Integer revision,
      @Nullable String decision,
      @Nullable String comment,
      @Nullable String finding) {}
}
