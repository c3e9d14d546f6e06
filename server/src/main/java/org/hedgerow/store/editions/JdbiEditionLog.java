package org.hedgerow.store.editions;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordChange;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Accents;
import org.hedgerow.store.database.Outage;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.jspecify.annotations.Nullable;

/** Reads the record of editions from the database. */
record JdbiEditionLog(Jdbi jdbi, Jdbi patient, Outage outage, List<AccentCatalogue> accents)
    implements EditionLog {
  private static final String EDITIONS =
      """
      select e.number, e.published_at as at, e.summary, a.display_name as by,
        e.contribution_id as contribution,
        (select count(*) from (
          select spelling from words where since_edition = e.number and since_edition > 1
          union select spelling from words where until_edition = e.number) as changed) as words
      from editions e left join accounts a on a.id = e.account_id
      """;

  private record Row(
      int number,
      Instant at,
      String summary,
      @Nullable String by,
      @Nullable Integer contribution,
      int words) {
    PublishedEdition edition() {
      return new PublishedEdition(
          number,
          at,
          summary,
          Optional.ofNullable(by),
          contribution == null ? OptionalInt.empty() : OptionalInt.of(contribution),
          words);
    }
  }

  @Override
  public List<PublishedEdition> before(int number, int most) {
    return outage.told(
        () ->
            jdbi.withHandle(
                handle ->
                    list(
                        handle
                            .createQuery(
                                EDITIONS
                                    + " where e.number < :number order by e.number desc limit :most")
                            .bind("number", number)
                            .bind("most", most))));
  }

  @Override
  public Optional<PublishedEdition> edition(int number) {
    return before(number + 1, 1).stream().filter(each -> each.number() == number).findFirst();
  }

  @Override
  public List<PublishedEdition> ofWord(String spelling, int newest) {
    return outage.told(
        () ->
            jdbi.withHandle(
                handle ->
                    list(
                        handle
                            .createQuery(
                                EDITIONS
                                    + """
                                       where e.number > 1 and e.number <= :newest and e.number in (
                                        select since_edition from words
                                        where spelling = :spelling and until_edition is null
                                        union select unnest(array[since_edition, until_edition])
                                        from words
                                        where spelling = :spelling and until_edition is not null)
                                      order by e.number desc
                                      """)
                            .bind("newest", newest)
                            .bind("spelling", spelling))));
  }

  /** All later than one, the newest first. */
  List<PublishedEdition> after(int number) {
    return outage.told(
        () ->
            connections(number)
                .withHandle(
                    handle ->
                        list(
                            handle
                                .createQuery(EDITIONS + " where e.number > :number order by 1 desc")
                                .bind("number", number))));
  }

  /** All from the first on may take long. */
  private Jdbi connections(int after) {
    return after == 0 ? patient : jdbi;
  }

  /**
   * A word that an edition changed.
   *
   * @param edition never the first
   */
  record ChangedWord(String spelling, int edition) {}

  /** In all editions later than one. */
  List<ChangedWord> changedWords(int number) {
    return outage.told(
        () ->
            connections(number)
                .withHandle(
                    handle ->
                        handle
                            .createQuery(
                                """
                            select spelling, since_edition as edition from words
                            where since_edition > greatest(:number, 1)
                            union
                            select spelling, until_edition from words
                            where until_edition is not null and until_edition > :number
                            order by 2
                            """)
                            .bind("number", number)
                            .mapTo(ChangedWord.class)
                            .list()));
  }

  private static List<PublishedEdition> list(Query query) {
    return query.mapTo(Row.class).map(Row::edition).list();
  }

  @Override
  public List<WordChange> changes(int number) {
    return outage.told(
        () ->
            jdbi.inTransaction(
                TransactionIsolationLevel.REPEATABLE_READ, handle -> changes(handle, number)));
  }

  private List<WordChange> changes(Handle handle, int number) {
    Map<String, Word> before = read(handle, WordVersions.endedIn(number));
    Map<String, Word> after = read(handle, WordVersions.begunIn(number));
    TreeSet<String> spellings = new TreeSet<>(before.keySet());
    spellings.addAll(after.keySet());
    return spellings.stream()
        .map(
            spelling ->
                new WordChange(
                    spelling,
                    Optional.ofNullable(before.get(spelling)),
                    Optional.ofNullable(after.get(spelling))))
        .toList();
  }

  private Map<String, Word> read(Handle handle, WordVersions versions) {
    Accents known = new Accents(accents.stream().map(AccentCatalogue::accent).toList());
    Map<String, Word> words = new TreeMap<>();
    new WordReader(handle, accents)
        .read(versions)
        .forEach(word -> words.put(word.spelling(), word.among(known)));
    return words;
  }
}
