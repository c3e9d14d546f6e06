package org.hedgerow.store.editions;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Accents;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/**
 * Publishes an edition within somebody's transaction: first {@link #publish}, which lets only one
 * transaction through at a time, then read what stands and change it. When the transaction commits,
 * every server on the database is told.
 */
public final class EditionWriter {
  /** What servers listen to; the message is the number of the edition. */
  static final String CHANNEL = "hedgerow_edition";

  private final Handle handle;
  private final List<AccentCatalogue> accents;
  private final Accents known;

  /**
   * @param accents of any edition: all have the same
   */
  public EditionWriter(Handle handle, List<AccentCatalogue> accents) {
    this.handle = handle;
    this.accents = accents;
    this.known = new Accents(accents.stream().map(AccentCatalogue::accent).toList());
  }

  /**
   * Begins the next edition. Nobody else publishes until the transaction ends, so that editions
   * have no gaps and are committed in order. Whoever locks other rows too locks them before.
   *
   * @param summary what is changed, for people to read
   * @param account who decided; empty for the program itself
   * @param contribution what was approved, if that is why
   * @param at when
   * @return the number of the edition
   */
  public int publish(String summary, OptionalInt account, OptionalInt contribution, Instant at) {
    lock();
    int number =
        handle
            .createQuery(
                """
                insert into editions (number, published_at, summary, account_id, contribution_id)
                select max(number) + 1, :at, :summary, :account, :contribution from editions
                returning number
                """)
            .bind("summary", summary)
            .bind("at", at)
            .bind("account", account)
            .bind("contribution", contribution)
            .mapTo(Integer.class)
            .one();
    handle.execute("select pg_notify(?, ?)", CHANNEL, String.valueOf(number));
    return number;
  }

  /** Makes others who want to publish wait until the transaction ends. */
  public void lock() {
    handle.execute("lock table editions in share row exclusive mode");
  }

  /** A word as it stands, changes of this transaction among them; empty if it doesn't stand. */
  public Optional<Word> current(String spelling) {
    return read(
        handle
            .createQuery(
                "select id from words where spelling = :spelling and until_edition is null")
            .bind("spelling", spelling));
  }

  /** A word as it stood in an edition; empty if it didn't. */
  public Optional<Word> at(String spelling, int edition) {
    return read(
        handle
            .createQuery(
                """
                select id from words where spelling = :spelling
                  and since_edition <= :edition and until_edition > :edition
                union all
                select id from words where spelling = :spelling
                  and since_edition <= :edition and until_edition is null
                """)
            .bind("spelling", spelling)
            .bind("edition", edition));
  }

  private Optional<Word> read(Query idOfVersion) {
    return idOfVersion
        .mapTo(Integer.class)
        .findOne()
        .flatMap(
            id -> new WordReader(handle, accents).read(WordVersions.only(id)).stream().findFirst())
        .map(word -> word.among(known));
  }

  /**
   * Lets a word stand so from an edition on, whether it stood before or is new.
   *
   * @param word {@link Word#since} doesn't matter
   * @param edition of this transaction
   */
  public void replace(Word word, int edition) {
    replace(List.of(word), edition);
  }

  /** As {@link #replace(Word, int)}, for many words at once. */
  public void replace(List<Word> words, int edition) {
    end(words.stream().map(Word::spelling).toList(), edition);
    new WordWriter(handle, accents).write(words, edition);
  }

  /**
   * Lets a word stand no more from an edition on.
   *
   * @param edition of this transaction
   * @return whether it stood in the edition before
   */
  public boolean withdraw(String spelling, int edition) {
    return end(List.of(spelling), edition) > 0;
  }

  /** How many of some words stood in the edition before; they don't in this one. */
  private int end(List<String> spellings, int edition) {
    dropOwnVersions(spellings, edition);
    return handle
        .createUpdate(
            "update words set until_edition = :edition"
                + " where spelling = any(:spellings) and until_edition is null")
        .bind("edition", edition)
        .bindArray("spellings", String.class, spellings)
        .execute();
  }

  /** A version that this transaction made itself was never in any edition. */
  private void dropOwnVersions(List<String> spellings, int edition) {
    List<Integer> own =
        handle
            .createQuery(
                "select id from words where spelling = any(:spellings)"
                    + " and until_edition is null and since_edition = :edition")
            .bind("edition", edition)
            .bindArray("spellings", String.class, spellings)
            .mapTo(Integer.class)
            .list();
    if (!own.isEmpty()) {
      delete("pronunciations", "word_id", own);
      delete("words", "id", own);
    }
  }

  private void delete(String table, String column, List<Integer> values) {
    handle
        .createUpdate("delete from %s where %s = any(:values)".formatted(table, column))
        .bindArray("values", Integer.class, values)
        .execute();
  }
}
