package org.hedgerow.sentences.compose;

import java.util.Optional;
import java.util.Set;

/**
 * Clauses that say how or where something is: <em>The boat is big. The goat is on the boat.</em>
 */
final class States {

  /** Who can be with somebody who speaks. */
  private static final Set<String> COMPANY = Set.of("he", "she", "they");

  private static final double SECOND = 0.25;

  private final ReadableWords readable;
  private final NounPhrases phrases;
  private final Copula copula;
  private final Closings closings;
  private final SeededRandom random;

  States(ReadableWords readable, NounPhrases phrases, Copula copula, SeededRandom random) {
    this.readable = readable;
    this.phrases = phrases;
    this.copula = copula;
    this.closings = new Closings(readable, random);
    this.random = random;
  }

  /** The boat is big and red. */
  Optional<Phrase> quality() {
    return described().flatMap(said -> copula.stated(said.agreement()).map(said::stated));
  }

  /** Is the boat big? */
  Optional<Phrase> qualityAsked() {
    return described().flatMap(said -> copula.form(said.agreement()).map(said::asked));
  }

  /** The goat is on the boat. */
  Optional<Phrase> place() {
    return placed().flatMap(said -> copula.stated(said.agreement()).map(said::stated));
  }

  /** He will be on the boat with me. */
  Optional<Phrase> company() {
    return placed()
        .filter(said -> COMPANY.contains(said.subject().pieces().get(0).text()))
        .flatMap(
            said ->
                copula
                    .stated(said.agreement())
                    .flatMap(
                        be ->
                            readable.words().words("with me").map(me -> said.stated(be).then(me))));
  }

  /** Is the goat on the boat? */
  Optional<Phrase> placeAsked() {
    return placed().flatMap(said -> copula.form(said.agreement()).map(said::asked));
  }

  /** A subject and what is said of it. */
  private record Said(Phrase subject, Agreement agreement, Phrase predicate) {

    Phrase stated(Phrase be) {
      return subject.then(be).then(predicate);
    }

    Phrase asked(PhraseWord be) {
      return Phrase.of(be).then(subject).then(predicate);
    }
  }

  private Optional<Said> described() {
    return readable
        .descriptions()
        .draw(random, each -> each.adjective().after())
        .flatMap(
            first ->
                subject(first.adjective())
                    .map(
                        subject ->
                            new Said(
                                subject.phrase(),
                                subject.agreement(),
                                predicate(first, subject).then(closing(first.adjective())))));
  }

  private Phrase closing(Adjective adjective) {
    return adjective.passes() ? closings.draw(Closing.After.STATE) : Phrase.EMPTY;
  }

  private Optional<NounPhrase> subject(Adjective adjective) {
    return phrases
        .subject(readable.describedBy(adjective), adjective.nouns().allowsPeople())
        .filter(subject -> subject.told().stream().allMatch(adjective::goesWith));
  }

  private Phrase predicate(Description first, NounPhrase subject) {
    Phrase one = Phrase.of(first.piece());
    if (!random.of(SECOND)) {
      return one;
    }
    return second(first, subject)
        .flatMap(
            other -> readable.words().word("and").map(and -> one.then(and).then(other.piece())))
        .orElse(one);
  }

  private Optional<Description> second(Description first, NounPhrase subject) {
    return readable
        .descriptions()
        .draw(
            random,
            each ->
                each.adjective().after()
                    && each.adjective().isSaidWith(first.adjective())
                    && subject.told().stream().allMatch(each.adjective()::goesWith)
                    && describes(each.adjective(), subject));
  }

  private static boolean describes(Adjective adjective, NounPhrase subject) {
    return subject.nouns().isEmpty()
        ? adjective.nouns().allowsPeople()
        : subject.nouns().stream().allMatch(adjective.nouns()::allows);
  }

  private Optional<Said> placed() {
    return readable.situations().draw(random).flatMap(this::placed);
  }

  private Optional<Said> placed(Situation situation) {
    return phrases
        .subject(situation.subjects(), situation.people())
        .flatMap(
            subject ->
                where(situation, subject)
                    .map(
                        where ->
                            new Said(
                                subject.phrase(),
                                subject.agreement(),
                                where.then(closings.draw(Closing.After.PLACE)))));
  }

  private Optional<Phrase> where(Situation situation, NounPhrase subject) {
    return random
        .among(situation.places())
        .flatMap(place -> phrases.place(place, subject.nouns(), subject.size(), subject.owner()));
  }
}
