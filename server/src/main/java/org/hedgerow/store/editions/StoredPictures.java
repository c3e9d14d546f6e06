package org.hedgerow.store.editions;

import org.hedgerow.caching.Caches;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.PictureContent;
import org.hedgerow.store.database.Outage;
import org.jdbi.v3.core.Jdbi;

/**
 * What contributed pictures are made of. It stays in the database until somebody looks at the
 * picture; what was looked at lately is kept, up to a number of bytes, however many pictures there
 * are. Thread-safe.
 */
final class StoredPictures {
  private static final long KEPT_BYTES = 16L * 1024 * 1024;

  private final Jdbi jdbi;
  private final Outage outage;
  private final ComputingCache<String, Bytes> kept;

  StoredPictures(Jdbi jdbi, Outage outage) {
    this(jdbi, outage, KEPT_BYTES);
  }

  /**
   * @param keptBytes how much may be kept in memory
   */
  StoredPictures(Jdbi jdbi, Outage outage, long keptBytes) {
    this.jdbi = jdbi;
    this.outage = outage;
    this.kept =
        new ComputingCache<>(
            Caches.builder()
                .maximumWeight(keptBytes)
                .weigher((String id, Bytes content) -> content.size()));
  }

  /** The content of a picture that is stored. */
  PictureContent content(String id) {
    return new Content(this, id);
  }

  /** Equal where the same store is asked for the same picture. */
  private record Content(StoredPictures stored, String id) implements PictureContent {
    @Override
    public Bytes bytes() {
      return stored.kept.get(id, stored::read);
    }
  }

  private Bytes read(String id) {
    return outage.told(
        () ->
            jdbi.withHandle(
                handle ->
                    Bytes.of(
                        handle
                            .createQuery("select content from pictures where id = :id")
                            .bind("id", id)
                            .mapTo(byte[].class)
                            .one())));
  }

  /** How many bytes are kept in memory just now. */
  long keptBytes() {
    return kept.values().stream().mapToLong(Bytes::size).sum();
  }
}
