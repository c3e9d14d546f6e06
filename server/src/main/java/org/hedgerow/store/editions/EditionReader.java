package org.hedgerow.store.editions;

import static java.util.stream.Collectors.toCollection;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hedgerow.lexicon.Changes;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.store.BankDatabase;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** Reads editions of the bank into memory: the first whole, later ones by what they changed. */
public final class EditionReader {
  private final Jdbi jdbi;
  private final Jdbi patient;
  private final StoredPictures pictures;

  public EditionReader(BankDatabase bank) {
    this.jdbi = bank.jdbi();
    this.patient = bank.patient();
    this.pictures = new StoredPictures(bank.jdbi(), bank.outage());
  }

  /**
   * What was changed after one edition.
   *
   * @param edition the last edition whose changes are in it
   */
  record Later(int edition, Changes changes) {}

  /**
   * The first edition.
   *
   * @throws IllegalStateException if the bank is empty
   */
  public FirstEdition first() {
    return patient.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, EditionReader::first);
  }

  private static FirstEdition first(Handle handle) {
    List<AccentCatalogue> accents = new CatalogueReader(handle).read();
    if (accents.isEmpty()) {
      throw new IllegalStateException("the bank is empty");
    }
    return new FirstEdition(
        FirstEdition.FIRST,
        accents,
        new WordReader(handle, accents).read(WordVersions.FIRST),
        new CurriculumReader(handle, accents.get(0).catalogue()).at(FirstEdition.FIRST),
        MaterialReader.standing(handle, accents.get(0).catalogue(), FirstEdition.FIRST));
  }

  /** The number of the newest edition; 0 if the bank is empty. */
  public int newestNumber() {
    return jdbi.withHandle(EditionReader::newestNumber);
  }

  private static int newestNumber(Handle handle) {
    return handle
        .createQuery("select coalesce(max(number), 0) from editions")
        .mapTo(Integer.class)
        .one();
  }

  /**
   * The newest edition, however long it takes.
   *
   * @param first the first with its index
   */
  public Lexicon newest(Lexicon first) {
    Later later = since(patient, first.accents(), FirstEdition.FIRST);
    return first.edition(later.edition(), later.changes());
  }

  /** All that editions changed after one, up to the newest; nothing more is read if it is that. */
  Later since(List<AccentCatalogue> accents, int edition) {
    return since(jdbi, accents, edition);
  }

  private Later since(Jdbi connections, List<AccentCatalogue> accents, int edition) {
    return connections.withHandle(
        handle -> {
          int newest = newestNumber(handle);
          return newest <= edition
              ? new Later(edition, Changes.NONE)
              : new Later(newest, changes(handle, accents, edition, newest));
        });
  }

  /**
   * All that editions changed after the first.
   *
   * @param edition the last of them, which must exist
   */
  Changes changesAt(List<AccentCatalogue> accents, int edition) {
    return jdbi.withHandle(handle -> changes(handle, accents, FirstEdition.FIRST, edition));
  }

  /** What later editions do meanwhile changes nothing of it, so no transaction is needed. */
  private Changes changes(Handle handle, List<AccentCatalogue> accents, int after, int edition) {
    List<Word> words = new WordReader(handle, accents).read(WordVersions.between(after, edition));
    Set<String> withdrawn = ended(handle, after, edition);
    words.forEach(word -> withdrawn.remove(word.spelling()));
    Catalogue catalogue = accents.get(0).catalogue();
    MaterialReader material = new MaterialReader(handle, catalogue, pictures);
    return new Changes(
        words,
        withdrawn,
        new CurriculumReader(handle, catalogue).changed(after, edition),
        material.pictures(after, edition),
        material.sentences(after, edition));
  }

  /** Spellings of words of which a version ended; another may have begun. */
  private static Set<String> ended(Handle handle, int after, int edition) {
    return handle
        .createQuery(
            "select spelling from words where until_edition > :after and until_edition <= :edition")
        .bind("after", after)
        .bind("edition", edition)
        .mapTo(String.class)
        .collect(toCollection(HashSet::new));
  }
}
