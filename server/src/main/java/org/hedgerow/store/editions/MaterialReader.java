package org.hedgerow.store.editions;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.phonics.Catalogue;
import org.jdbi.v3.core.Handle;

/** Reads the pictures and sentences that editions brought. */
record MaterialReader(Handle handle, Catalogue catalogue, StoredPictures stored) {
  /**
   * The pictures that came after one edition and up to another; they stay for good. Their content
   * is left in the database.
   */
  List<Picture> pictures(int after, int edition) {
    return handle
        .createQuery(
            """
            select id, title, author, licence, licence_href, source, version, media_type
            from pictures where since_edition > :after and since_edition <= :edition order by id
            """)
        .bind("after", after)
        .bind("edition", edition)
        .map(
            (row, context) ->
                new Picture(
                    row.getString("id"),
                    row.getString("title"),
                    row.getString("author"),
                    row.getString("licence"),
                    row.getString("licence_href"),
                    row.getString("source"),
                    row.getString("version"),
                    row.getString("media_type"),
                    stored.content(row.getString("id"))))
        .list();
  }

  /** All that stand in an edition, if any came or went after another; else empty. */
  Optional<Sentences> sentences(int after, int edition) {
    return haveChanged(after, edition)
        ? Optional.of(standing(handle, catalogue, edition))
        : Optional.empty();
  }

  private boolean haveChanged(int after, int edition) {
    return handle
        .createQuery(
            """
            select exists (select from sentences
              where since_edition > :after and since_edition <= :edition)
            or exists (select from sentences
              where until_edition > :after and until_edition <= :edition)
            """)
        .bind("after", after)
        .bind("edition", edition)
        .mapTo(Boolean.class)
        .one();
  }

  /** All that stand in an edition. */
  static Sentences standing(Handle handle, Catalogue catalogue, int edition) {
    return new Sentences(
        handle
            .createQuery(
                """
                select text, correspondence_id, accents from sentences
                where since_edition <= :edition
                  and (until_edition is null or until_edition > :edition)
                order by id
                """)
            .bind("edition", edition)
            .map(new SentenceMapper(catalogue))
            .list());
  }
}
