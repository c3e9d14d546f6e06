package org.hedgerow.store.review;

import java.time.Instant;
import java.util.Optional;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.pictures.CleanPicture;
import org.hedgerow.review.Upload;
import org.hedgerow.review.UploadStore;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Pictures that people sent, in their table. */
record JdbiUploads(Handle handle) implements UploadStore {
  private static final String BY_ID =
      "select id, media_type, content, width, height from uploads where id = :id";

  private static final String VISIBLE =
      BY_ID
          + """
           and (account_id = :account
            or exists (
              select 1 from contributions
              where kind = 'picture' and state <> 'draft'
                and contributions.content #>> '{proposal,upload}' = :id))
          """;

  @Override
  public void add(Upload upload, int accountId, Instant now) {
    handle
        .createUpdate(
            """
            insert into uploads (id, media_type, content, width, height, account_id, at)
            values (:id, :mediaType, :content, :width, :height, :account, :at)
            on conflict (id) do nothing
            """)
        .bind("id", upload.id())
        .bind("mediaType", upload.picture().mediaType())
        .bind("content", upload.picture().content().toArray())
        .bind("width", upload.picture().width())
        .bind("height", upload.picture().height())
        .bind("account", accountId)
        .bind("at", now)
        .execute();
  }

  @Override
  public Optional<Upload> find(String id) {
    return found(handle.createQuery(BY_ID).bind("id", id));
  }

  @Override
  public Optional<Upload> visible(String id, int accountId) {
    return found(handle.createQuery(VISIBLE).bind("id", id).bind("account", accountId));
  }

  private static Optional<Upload> found(Query query) {
    return query
        .map(
            (row, context) ->
                new Upload(
                    row.getString("id"),
                    new CleanPicture(
                        row.getString("media_type"),
                        Bytes.of(row.getBytes("content")),
                        row.getInt("width"),
                        row.getInt("height"))))
        .findOne();
  }
}
