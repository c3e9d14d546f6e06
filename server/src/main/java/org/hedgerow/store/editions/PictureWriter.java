package org.hedgerow.store.editions;

import org.hedgerow.lexicon.Picture;
import org.jdbi.v3.core.Handle;

/** Puts approved pictures into their table. */
public record PictureWriter(Handle handle) {
  public void add(Picture picture, int edition) {
    handle
        .createUpdate(
            """
            insert into pictures (id, title, author, licence, licence_href, source, version,
              media_type, content, since_edition)
            values (:id, :title, :author, :licence, :licenceHref, :source, :version, :mediaType,
              :content, :edition)
            """)
        .bind("id", picture.id())
        .bind("title", picture.title())
        .bind("author", picture.author())
        .bind("licence", picture.licence())
        .bind("licenceHref", picture.licenceHref())
        .bind("source", picture.source())
        .bind("version", picture.version())
        .bind("mediaType", picture.mediaType())
        .bind("content", picture.content().bytes().toArray())
        .bind("edition", edition)
        .execute();
  }
}
