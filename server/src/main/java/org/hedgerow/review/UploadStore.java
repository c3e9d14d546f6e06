package org.hedgerow.review;

import java.time.Instant;
import java.util.Optional;

/** Pictures that people have sent, cleaned; they are in the bank only once they are approved. */
public interface UploadStore {
  /** Keeps it; the same picture again changes nothing. */
  void add(Upload upload, int accountId, Instant now);

  Optional<Upload> find(String id);

  /**
   * Finds an upload that somebody may see: their own, or one in a contribution that is more than a
   * draft.
   */
  Optional<Upload> visible(String id, int accountId);
}
