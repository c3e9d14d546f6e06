package org.hedgerow.review;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.Actor;
import org.hedgerow.seed.SeededLexicon;

/** The words and sentences of a bank in memory, by the editions that changed them. */
final class MemoryBank implements BankStore {

  /** What stands under a name, from an edition on; empty where it was withdrawn. */
  private record Versions<T>(Map<String, NavigableMap<Integer, Optional<T>>> all) {
    Optional<T> at(String name, int edition) {
      return Optional.ofNullable(all.get(name))
          .map(versions -> versions.floorEntry(edition))
          .flatMap(Map.Entry::getValue);
    }

    void put(String name, int edition, Optional<T> version) {
      all.computeIfAbsent(name, missing -> new TreeMap<>()).put(edition, version);
    }

    void forget(int after) {
      all.values().forEach(versions -> versions.tailMap(after, false).clear());
    }
  }

  private final Versions<Word> words = new Versions<>(new HashMap<>());
  private final Versions<Sentence> sentences = new Versions<>(new HashMap<>());
  private final TreeMap<Integer, Curriculum> teachings =
      new TreeMap<>(Map.of(1, SeededLexicon.curriculum()));
  private int newest = 1;

  MemoryBank() {
    for (String spelling : ReviewRecords.WORDS) {
      words.put(spelling, 1, SeededLexicon.get().word(spelling));
    }
  }

  /** The rules and sequences of the same editions. */
  CurriculumStore curriculum() {
    return new CurriculumStore() {
      @Override
      public Curriculum current() {
        return teachings.lastEntry().getValue();
      }

      @Override
      public int publish(Curriculum changed, String summary, Actor by, Instant at) {
        teachings.put(++newest, changed);
        return newest;
      }
    };
  }

  int newest() {
    return newest;
  }

  /** As if later editions had not been published. */
  void returnTo(int edition) {
    words.forget(edition);
    sentences.forget(edition);
    teachings.tailMap(edition, false).clear();
    newest = edition;
  }

  @Override
  public void lock() {}

  @Override
  public Optional<Word> word(String spelling) {
    return words.at(spelling, newest);
  }

  @Override
  public Optional<Word> word(String spelling, int edition) {
    return words.at(spelling, edition);
  }

  @Override
  public Optional<Sentence> sentence(String text) {
    return sentences.at(text, newest);
  }

  @Override
  public Optional<Sentence> sentence(String text, int edition) {
    return sentences.at(text, edition);
  }

  @Override
  public int publish(Change change, String summary, Actor by, int contributionId, Instant at) {
    newest++;
    change.words().forEach(word -> words.put(word.spelling(), newest, stands(word)));
    change.withdrawnWords().forEach(each -> words.put(each, newest, Optional.empty()));
    change.sentences().forEach(each -> sentences.put(each.text(), newest, Optional.of(each)));
    change.withdrawnSentences().forEach(each -> sentences.put(each, newest, Optional.empty()));
    return newest;
  }

  private Optional<Word> stands(Word word) {
    return Optional.of(word.since(newest));
  }
}
