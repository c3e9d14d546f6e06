package org.hedgerow.sentences.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Words that follow each other. Immutable. */
record Phrase(List<PhraseWord> pieces) {

  private static final Set<String> SPEAKERS = Set.of("I", "we");
  private static final Set<String> SPOKEN_OF = Set.of("me", "us");

  static final Phrase EMPTY = new Phrase(List.of());

  Phrase {
    pieces = List.copyOf(pieces);
  }

  static Phrase of(PhraseWord... pieces) {
    return new Phrase(List.of(pieces));
  }

  Phrase then(Phrase next) {
    if (pieces.isEmpty() || next.pieces.isEmpty()) {
      return pieces.isEmpty() ? next : this;
    }
    List<PhraseWord> all = new ArrayList<>(pieces.size() + next.pieces.size());
    all.addAll(pieces);
    all.addAll(next.pieces);
    return new Phrase(all);
  }

  Phrase then(PhraseWord next) {
    return then(of(next));
  }

  /** The same with a comma at its end. */
  Phrase withComma() {
    List<PhraseWord> all = new ArrayList<>(pieces);
    all.set(all.size() - 1, all.get(all.size() - 1).withComma());
    return new Phrase(all);
  }

  /** The same with <em>an</em> for <em>a</em> where the next word is said with a vowel first. */
  Phrase withArticles(Predicate<String> startsWithVowel) {
    List<PhraseWord> all = new ArrayList<>(pieces);
    for (int at = 0; at + 1 < all.size(); at++) {
      PhraseWord piece = all.get(at);
      if (piece.text().equals("a") && startsWithVowel.test(all.get(at + 1).word())) {
        all.set(at, new PhraseWord("an", piece.lemma(), piece.target(), piece.sight()));
      }
    }
    return new Phrase(all);
  }

  int length() {
    return pieces.size();
  }

  int targets() {
    return (int) pieces.stream().filter(PhraseWord::target).count();
  }

  /** The words that mean something, as they stand in a dictionary. */
  List<String> lemmas() {
    return content().map(PhraseWord::lemma).toList();
  }

  /** Whether it says a word twice, which reads like a slip. */
  boolean repeats() {
    return content().map(PhraseWord::lemma).distinct().count() < content().count();
  }

  /** Whether it says of us what is done with us: <em>we swam with me</em>. */
  boolean clashes() {
    return says(SPEAKERS) && says(SPOKEN_OF);
  }

  private boolean says(Set<String> words) {
    return pieces.stream().map(PhraseWord::text).anyMatch(words::contains);
  }

  private Stream<PhraseWord> content() {
    return pieces.stream().filter(PhraseWord::isContent);
  }
}
