package org.hedgerow.lexicon;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.hedgerow.seed.SeededLexicon;

/** Editions of the seeded words, with their record, without a database. */
public final class MemoryEditions implements Editions, EditionLog {
  private static final Instant BEGINNING = Instant.parse("2026-05-01T08:00:00Z");

  private final List<Lexicon> editions = new ArrayList<>(List.of(SeededLexicon.get()));
  private final List<String> summaries = new ArrayList<>(List.of("The starter set."));
  private final List<Consumer<Lexicon>> preparations = new ArrayList<>();
  private Changes changes = Changes.NONE;

  /** Publishes the next edition. */
  public synchronized MemoryEditions publish(String summary, Changes more) {
    changes = changes.and(more);
    Lexicon next = editions.get(0).edition(editions.size() + 1, changes);
    preparations.forEach(each -> each.accept(next));
    editions.add(next);
    summaries.add(summary);
    return this;
  }

  /** A word of the newest edition, as approved. */
  public synchronized Word approved(String spelling) {
    Word word = newest().word(spelling).orElseThrow();
    return new Word(
        spelling,
        Status.APPROVED,
        word.commonness(),
        editions.size() + 1,
        word.tags(),
        word.pronunciations());
  }

  @Override
  public synchronized Lexicon newest() {
    return editions.get(editions.size() - 1);
  }

  @Override
  public synchronized Optional<Lexicon> at(int number) {
    return number >= 1 && number <= editions.size()
        ? Optional.of(editions.get(number - 1))
        : Optional.empty();
  }

  @Override
  public synchronized void beforeEach(Consumer<Lexicon> preparation) {
    preparations.add(preparation);
  }

  @Override
  public EditionLog log() {
    return this;
  }

  @Override
  public synchronized List<PublishedEdition> before(int number, int most) {
    List<PublishedEdition> found = new ArrayList<>();
    for (int each = Math.min(number - 1, editions.size());
        each > 0 && found.size() < most;
        each--) {
      found.add(record(each));
    }
    return found;
  }

  @Override
  public synchronized Optional<PublishedEdition> edition(int number) {
    return at(number).map(lexicon -> record(number));
  }

  private PublishedEdition record(int number) {
    return new PublishedEdition(
        number,
        BEGINNING.plusSeconds(number),
        summaries.get(number - 1),
        number == 1 ? Optional.empty() : Optional.of("Mary Bloggs"),
        OptionalInt.empty(),
        changes(number).size());
  }

  @Override
  public synchronized List<WordChange> changes(int number) {
    if (number == 1) {
      return List.of();
    }
    Lexicon before = editions.get(number - 2);
    Lexicon after = editions.get(number - 1);
    TreeSet<String> spellings = new TreeSet<>();
    changes.words().forEach(word -> spellings.add(word.spelling()));
    spellings.addAll(changes.withdrawn());
    return spellings.stream()
        .map(each -> new WordChange(each, before.word(each), after.word(each)))
        .filter(change -> !change.before().equals(change.after()))
        .toList();
  }

  @Override
  public synchronized List<PublishedEdition> ofWord(String spelling, int newest) {
    return before(newest + 1, newest).stream()
        .filter(
            edition ->
                changes(edition.number()).stream()
                    .anyMatch(change -> change.spelling().equals(spelling)))
        .toList();
  }
}
