package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Puts nouns into words: with an article, perhaps an adjective, perhaps another noun. */
final class NounPhrases {

  private static final double PRONOUN = 0.25;
  private static final double PAIRED = 0.2;
  private static final double DESCRIBED = 0.1;
  private static final double DESCRIBED_BY_TARGET = 0.45;

  private final Pantry pantry;
  private final Predicate<String> startsWithVowel;
  private final Chance chance;

  /**
   * @param startsWithVowel whether a word is said with a vowel first
   */
  NounPhrases(Pantry pantry, Predicate<String> startsWithVowel, Chance chance) {
    this.pantry = pantry;
    this.startsWithVowel = startsWithVowel;
    this.chance = chance;
  }

  /** Who does something. */
  Optional<NounPhrase> subject(Stock<NounForm> nouns, boolean people) {
    if (people && (nouns.isEmpty() || chance.of(PRONOUN))) {
      return pantry.pronouns(Role.SUBJECT).draw(chance, any -> true);
    }
    return oneOrTwo(nouns, Role.SUBJECT, any -> true);
  }

  /** What something is done to. */
  Optional<NounPhrase> object(Stock<NounForm> nouns, boolean people, Predicate<Noun> fits) {
    if (people && chance.of(PRONOUN / 2)) {
      return pantry.pronouns(Role.OBJECT).draw(chance, any -> true);
    }
    return oneOrTwo(nouns, Role.OBJECT, fits);
  }

  /** Where something is. */
  Optional<NounPhrase> landmark(Stock<NounForm> nouns, Predicate<Noun> fits) {
    return single(nouns, Role.PLACE, fits);
  }

  private Optional<NounPhrase> oneOrTwo(Stock<NounForm> nouns, Role role, Predicate<Noun> fits) {
    return chance.of(PAIRED) ? pair(nouns, role, fits) : single(nouns, role, fits);
  }

  /** Two of a kind, joined by <em>and</em>. */
  private Optional<NounPhrase> pair(Stock<NounForm> nouns, Role role, Predicate<Noun> fits) {
    return single(nouns, role, fits)
        .flatMap(
            first ->
                another(first.nouns().get(0), nouns, role, fits)
                    .flatMap(second -> pantry.word("and").map(and -> first.and(and, second))));
  }

  private Optional<NounPhrase> another(
      Noun first, Stock<NounForm> nouns, Role role, Predicate<Noun> fits) {
    return single(
        nouns,
        role,
        other -> !other.equals(first) && fits.test(other) && Kinship.between(first, other));
  }

  private Optional<NounPhrase> single(Stock<NounForm> nouns, Role role, Predicate<Noun> fits) {
    return nouns.draw(chance, form -> fits.test(form.noun())).flatMap(form -> put(form, role));
  }

  private Optional<NounPhrase> put(NounForm form, Role role) {
    List<Description> told = describe(form);
    Phrase named = new Phrase(told.stream().map(Description::piece).toList()).then(form.piece());
    return chance
        .among(Determiners.of(form, role))
        .flatMap(determiner -> introduce(determiner, named))
        .map(phrase -> phrase(phrase, form, told));
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
    Stock<Description> fitting = pantry.describing(form.noun());
    double probability = fitting.targets().isEmpty() ? DESCRIBED : DESCRIBED_BY_TARGET;
    return chance.of(probability)
        ? fitting.draw(chance, each -> each.adjective().before()).stream().toList()
        : List.of();
  }

  private Optional<Phrase> introduce(String determiner, Phrase named) {
    if (determiner.isEmpty()) {
      return Optional.of(named);
    }
    String first = named.pieces().get(0).text();
    String right = determiner.equals("a") && startsWithVowel.test(first) ? "an" : determiner;
    return pantry.word(right).map(piece -> Phrase.of(piece).then(named));
  }
}
