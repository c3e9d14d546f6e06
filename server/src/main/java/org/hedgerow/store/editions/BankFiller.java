package org.hedgerow.store.editions;

import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.archive.LoadedTables;
import org.hedgerow.store.database.AdvisoryLock;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** Puts the first edition into an empty bank, wholly or not at all. */
public final class BankFiller {
  /** How many steps of writing a word takes, for those who show how far it is. */
  public static final int STEPS_FOR_A_WORD = WordWriter.STEPS_FOR_A_WORD;

  private final Jdbi jdbi;
  private final Runnable waiting;

  public BankFiller(BankDatabase bank) {
    this(bank, () -> {});
  }

  /**
   * @param waiting run before waiting for another who fills the bank
   */
  public BankFiller(BankDatabase bank, Runnable waiting) {
    this.jdbi = bank.patient();
    this.waiting = waiting;
  }

  /** Whether the bank has no edition yet. */
  public boolean isEmpty() {
    return jdbi.withHandle(BankFiller::isEmpty);
  }

  /**
   * Fills the bank if it is empty; of several programs that try at the same time the others wait
   * for the first.
   *
   * @param edition asked for only if it is needed
   * @param summary what the edition is, for people to read
   * @param step run {@link #STEPS_FOR_A_WORD} times for every word
   * @return whether it was empty
   * @throws DatabaseUnavailableException if the database doesn't take it
   */
  public boolean fill(Supplier<FirstEdition> edition, String summary, Runnable step) {
    try {
      boolean filled =
          jdbi.inTransaction(
              handle -> {
                AdvisoryLock.FILLING.take(handle, waiting);
                handle.execute("lock table editions in share row exclusive mode");
                boolean empty = isEmpty(handle);
                if (empty) {
                  write(handle, edition.get(), summary, step);
                }
                return empty;
              });
      if (filled) {
        LoadedTables.settle(jdbi);
      }
      return filled;
    } catch (JdbiException | UncheckedIOException problem) {
      throw new DatabaseUnavailableException(
          "The word bank can't be filled and stays empty (%s). Is there room on the database's disk?"
              .formatted(reason(problem)),
          problem);
    }
  }

  /**
   * Gives a bank that was filled before sets of rules and sequences were kept in it those of the
   * first edition.
   *
   * @param curriculum asked for only if it is needed
   */
  public void addCurriculum(Function<Catalogue, Curriculum> curriculum) {
    jdbi.useTransaction(
        handle -> {
          if (lacksTeaching(handle)) {
            handle.execute("lock table editions in share row exclusive mode");
            addCurriculum(handle, curriculum);
          }
        });
  }

  private static void addCurriculum(Handle handle, Function<Catalogue, Curriculum> curriculum) {
    if (lacksTeaching(handle)) {
      Catalogue catalogue = new CatalogueReader(handle).read().get(0).catalogue();
      new CurriculumWriter(handle, catalogue).writeFirst(curriculum.apply(catalogue));
    }
  }

  private static boolean lacksTeaching(Handle handle) {
    return lacks(handle, "rule_sets");
  }

  /** Whether it was filled before it had a table, in which there is never nothing afterwards. */
  private static boolean lacks(Handle handle, String table) {
    return handle
        .createQuery(
            "select exists (select from editions) and not exists (select from %s)".formatted(table))
        .mapTo(Boolean.class)
        .one();
  }

  /**
   * Gives a bank that was filled before sight words were kept in it those of the first edition.
   *
   * @param sets asked for only if it is needed
   */
  public void addSightWords(Supplier<SightWordSets> sets) {
    jdbi.useTransaction(
        handle -> {
          if (lacks(handle, "sight_words")) {
            handle.execute("lock table editions in share row exclusive mode");
            addSightWords(handle, sets);
          }
        });
  }

  private static void addSightWords(Handle handle, Supplier<SightWordSets> sets) {
    if (lacks(handle, "sight_words")) {
      Catalogue catalogue = new CatalogueReader(handle).read().get(0).catalogue();
      new CurriculumWriter(handle, catalogue).writeFirst(sets.get());
    }
  }

  private static boolean isEmpty(Handle handle) {
    return handle
        .createQuery("select not exists (select from editions)")
        .mapTo(Boolean.class)
        .one();
  }

  /**
   * Lets the first edition have been published at a time, where it is said to be later: an invented
   * history begins with it.
   */
  public void firstPublishedBy(Instant at) {
    jdbi.useHandle(
        handle ->
            handle.execute(
                "update editions set published_at = ? where number = ? and published_at > ?",
                at,
                FirstEdition.FIRST,
                at));
  }

  private static void write(Handle handle, FirstEdition edition, String summary, Runnable step) {
    handle.execute(
        "insert into editions (number, summary) values (?, ?)", edition.number(), summary);
    new CatalogueWriter(handle, edition.accents()).write();
    new WordWriter(handle, edition.accents()).writeFirst(edition, step);
    new CurriculumWriter(handle, edition.accents().get(0).catalogue())
        .writeFirst(edition.curriculum());
    SentenceWriter sentences = new SentenceWriter(handle, edition.accents().get(0).catalogue());
    edition.sentences().all().forEach(each -> sentences.add(each, edition.number()));
  }

  /** What the database itself says; the exceptions around it speak of statements. */
  private static String reason(Throwable problem) {
    Throwable root = problem;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return String.valueOf(root.getMessage()).lines().findFirst().orElse("");
  }
}
