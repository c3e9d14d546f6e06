package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Puts nouns into words: with an article, perhaps an adjective, perhaps another noun. */
final class NounPhrases {

  private final ReadableWords readable;
  private final Predicate<String> startsWithVowel;
  private final Style style;
  private final SeededRandom random;

  /**
   * @param startsWithVowel whether a word is said with a vowel first
   */
  NounPhrases(
      ReadableWords readable, Predicate<String> startsWithVowel, Style style, SeededRandom random) {
    this.readable = readable;
    this.startsWithVowel = startsWithVowel;
    this.style = style;
    this.random = random;
  }

  /** Who does something. */
  Optional<NounPhrase> subject(WordPool<NounForm> nouns, boolean people) {
    WordPool<NounPhrase> pronouns = readable.pronouns(NounRole.SUBJECT);
    if (people && (nouns.isEmpty() || random.of(style.pronoun(pronouns)))) {
      return pronouns.draw(random);
    }
    return oneOrTwo(nouns, NounRole.SUBJECT, "", any -> true);
  }

  /** What something is done to. */
  Optional<NounPhrase> object(
      WordPool<NounForm> nouns, boolean people, String owner, Predicate<Noun> fits) {
    WordPool<NounPhrase> pronouns = readable.pronouns(NounRole.OBJECT);
    if (people && random.of(style.pronoun(pronouns) / 2)) {
      return pronouns.draw(random);
    }
    return oneOrTwo(nouns, NounRole.OBJECT, owner, fits);
  }

  /**
   * Where something is.
   *
   * @param things what is there
   * @param size of the biggest of them
   */
  Optional<Phrase> place(ReadablePlace place, List<Noun> things, int size, String owner) {
    String preposition = place.preposition().text();
    return single(
            place.nouns(),
            NounRole.PLACE,
            owner,
            noun -> !things.contains(noun) && Capacity.isAt(preposition, noun, size))
        .map(landmark -> Phrase.of(place.preposition()).then(landmark.phrase()));
  }

  private Optional<NounPhrase> oneOrTwo(
      WordPool<NounForm> nouns, NounRole role, String owner, Predicate<Noun> fits) {
    return random.of(style.paired())
        ? pair(nouns, role, owner, fits)
        : single(nouns, role, owner, fits);
  }

  /** Two of a kind and in the same number, joined by <em>and</em>. */
  private Optional<NounPhrase> pair(
      WordPool<NounForm> nouns, NounRole role, String owner, Predicate<Noun> fits) {
    return nouns
        .draw(random, form -> fits.test(form.noun()))
        .flatMap(
            first ->
                nouns
                    .draw(
                        random,
                        second ->
                            fits.test(second.noun()) && first.goesWith(second, style.kinship()))
                    .flatMap(second -> pair(first, second, role, owner)));
  }

  private Optional<NounPhrase> pair(NounForm first, NounForm second, NounRole role, String owner) {
    return determiner(first, role, owner)
        .flatMap(
            word ->
                put(first, word)
                    .flatMap(
                        one ->
                            like(word, second, role, owner)
                                .flatMap(other -> put(second, other))
                                .flatMap(two -> and(one, two))));
  }

  private Optional<NounPhrase> and(NounPhrase one, NounPhrase two) {
    return readable.words().word("and").map(and -> one.and(and, two));
  }

  private Optional<NounPhrase> single(
      WordPool<NounForm> nouns, NounRole role, String owner, Predicate<Noun> fits) {
    return nouns
        .draw(random, form -> fits.test(form.noun()))
        .flatMap(form -> determiner(form, role, owner).flatMap(word -> put(form, word)));
  }

  /** The same, if it suits the other noun: his coat and his hat, but my mum and the man. */
  private Optional<String> like(String determiner, NounForm other, NounRole role, String owner) {
    List<String> suiting = Determiners.of(other, role, owner);
    return suiting.contains(determiner) || suiting.contains(Determiners.NUMBER)
        ? Optional.of(determiner)
        : determiner(other, role, owner);
  }

  private Optional<String> determiner(NounForm form, NounRole role, String owner) {
    return random.among(Determiners.of(form, role, owner)).map(this::numbered);
  }

  private String numbered(String determiner) {
    return determiner.equals(Determiners.NUMBER)
        ? readable.words().numbers().draw(random).map(PhraseWord::text).orElse("")
        : determiner;
  }

  private Optional<NounPhrase> put(NounForm form, String determiner) {
    List<Description> told = describe(form);
    Phrase named = new Phrase(told.stream().map(Description::piece).toList()).then(form.piece());
    return introduce(determiner, named).map(phrase -> phrase(phrase, form, told));
  }

  private static NounPhrase phrase(Phrase words, NounForm form, List<Description> told) {
    return new NounPhrase(
        words,
        form.agreement(),
        List.of(form.noun()),
        told.stream().map(Description::adjective).toList());
  }

  /** One adjective or none. */
  private List<Description> describe(NounForm form) {
    WordPool<Description> fitting = readable.describing(form.noun());
    double probability =
        fitting.targets().isEmpty() ? style.described() : style.describedByTarget();
    return random.of(probability)
        ? fitting.draw(random, each -> each.adjective().before()).stream().toList()
        : List.of();
  }

  private Optional<Phrase> introduce(String determiner, Phrase named) {
    if (determiner.isEmpty()) {
      return Optional.of(named);
    }
    String first = named.pieces().get(0).text();
    String right = determiner.equals("a") && startsWithVowel.test(first) ? "an" : determiner;
    return readable.words().word(right).map(piece -> Phrase.of(piece).then(named));
  }
}
