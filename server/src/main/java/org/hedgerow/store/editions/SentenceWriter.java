package org.hedgerow.store.editions;

import java.util.Optional;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.phonics.Catalogue;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Sentences in their table, within somebody's transaction. */
public record SentenceWriter(Handle handle, Catalogue catalogue) {
  private static final String SELECT =
      "select text, correspondence_id, accents from sentences where text = :text and ";

  public Optional<Sentence> current(String text) {
    return read(handle.createQuery(SELECT + "until_edition is null").bind("text", text));
  }

  public Optional<Sentence> at(String text, int edition) {
    return read(
        handle
            .createQuery(
                SELECT
                    + "since_edition <= :edition and (until_edition is null or until_edition > :edition)")
            .bind("text", text)
            .bind("edition", edition));
  }

  private Optional<Sentence> read(Query query) {
    return query.map(new SentenceMapper(catalogue)).findOne();
  }

  public void add(Sentence sentence, int edition) {
    handle
        .createUpdate(
            """
            insert into sentences (text, correspondence_id, accents, since_edition)
            values (:text, :correspondence, :accents, :edition)
            """)
        .bind("text", sentence.text())
        .bind("correspondence", sentence.value().id())
        .bindArray("accents", String.class, sentence.accents())
        .bind("edition", edition)
        .execute();
  }

  public void withdraw(String text, int edition) {
    handle.execute(
        "update sentences set until_edition = ? where text = ? and until_edition is null",
        edition,
        text);
  }
}
