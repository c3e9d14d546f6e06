package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;

/**
 * Clauses that say how or where something is: <em>The boat is big. The goat is on the boat.</em>
 */
final class States {

  private static final double SECOND = 0.4;
  private static final List<String> WHERE = List.of("on", "on", "in", "in", "by", "under", "at");

  private final Pantry pantry;
  private final NounPhrases phrases;
  private final Being being;
  private final Chance chance;
  private final Stock<NounForm> movable;

  States(Pantry pantry, NounPhrases phrases, Being being, Chance chance) {
    this.pantry = pantry;
    this.phrases = phrases;
    this.being = being;
    this.chance = chance;
    this.movable = pantry.nouns().where(form -> isMovable(form.noun()));
  }

  /** What can lie or stand about: no part of a body, nothing without a body of its own. */
  private static boolean isMovable(Noun noun) {
    return noun.size() > 0
        && (noun.is("thing") || noun.is("animal") || noun.is("person"))
        && !noun.is("body")
        && !noun.is("part");
  }

  /** The boat is big and red. */
  Optional<Phrase> quality() {
    return described().flatMap(said -> being.form(said.agreement()).map(said::stated));
  }

  /** Is the boat big? */
  Optional<Phrase> qualityAsked() {
    return described().flatMap(said -> being.form(said.agreement()).map(said::asked));
  }

  /** The goat is on the boat. */
  Optional<Phrase> place() {
    return placed().flatMap(said -> being.form(said.agreement()).map(said::stated));
  }

  /** Is the goat on the boat? */
  Optional<Phrase> placeAsked() {
    return placed().flatMap(said -> being.form(said.agreement()).map(said::asked));
  }

  /** A subject and what is said of it. */
  private record Said(Phrase subject, Agreement agreement, Phrase predicate) {

    Phrase stated(Piece be) {
      return subject.then(be).then(predicate);
    }

    Phrase asked(Piece be) {
      return Phrase.of(be).then(subject).then(predicate);
    }
  }

  private Optional<Said> described() {
    return pantry
        .descriptions()
        .draw(chance, each -> each.adjective().after())
        .flatMap(
            first ->
                subject(first.adjective())
                    .map(
                        subject ->
                            new Said(
                                subject.phrase(), subject.agreement(), predicate(first, subject))));
  }

  private Optional<NounPhrase> subject(Adjective adjective) {
    return phrases
        .subject(pantry.describedBy(adjective), adjective.nouns().allowsPeople())
        .filter(subject -> subject.told().stream().allMatch(adjective::goesWith));
  }

  private Phrase predicate(Description first, NounPhrase subject) {
    Phrase one = Phrase.of(first.piece());
    if (!chance.of(SECOND)) {
      return one;
    }
    return second(first, subject)
        .flatMap(other -> pantry.word("and").map(and -> one.then(and).then(other.piece())))
        .orElse(one);
  }

  private Optional<Description> second(Description first, NounPhrase subject) {
    return pantry
        .descriptions()
        .draw(
            chance,
            each ->
                each.adjective().after()
                    && each.adjective().goesWith(first.adjective())
                    && subject.told().stream().allMatch(each.adjective()::goesWith)
                    && describes(each.adjective(), subject));
  }

  private static boolean describes(Adjective adjective, NounPhrase subject) {
    return subject.nouns().isEmpty()
        ? adjective.nouns().allowsPeople()
        : subject.nouns().stream().allMatch(adjective.nouns()::allows);
  }

  private Optional<Said> placed() {
    return phrases
        .subject(movable, true)
        .flatMap(
            subject ->
                where(subject)
                    .map(where -> new Said(subject.phrase(), subject.agreement(), where)));
  }

  private Optional<Phrase> where(NounPhrase subject) {
    return chance.among(WHERE).flatMap(preposition -> where(preposition, subject));
  }

  private Optional<Phrase> where(String preposition, NounPhrase subject) {
    return pantry
        .word(preposition)
        .flatMap(
            word ->
                phrases
                    .landmark(
                        pantry.landmarks(preposition),
                        noun ->
                            !subject.names(noun) && Room.isAt(preposition, noun, subject.size()))
                    .map(landmark -> Phrase.of(word).then(landmark.phrase())));
  }
}
