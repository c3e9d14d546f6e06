package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Clauses in which somebody does something: <em>The goat sat on the boat.</em> */
final class Actions {

  private static final double PLACED = 0.6;
  private static final double ENDED = 0.25;
  private static final double ENDED_BY_TARGET = 0.7;
  private static final int CHILD = 4;

  /** How often statements use a mode. */
  private static final List<ClauseMode> MODES =
      List.of(
          ClauseMode.PAST,
          ClauseMode.PAST,
          ClauseMode.PAST,
          ClauseMode.PAST,
          ClauseMode.PAST,
          ClauseMode.CAN,
          ClauseMode.CAN,
          ClauseMode.ING,
          ClauseMode.ING,
          ClauseMode.PRESENT,
          ClauseMode.PRESENT,
          ClauseMode.WANT);

  private static final List<ClauseMode> ASKED =
      List.of(ClauseMode.PAST, ClauseMode.CAN, ClauseMode.CAN, ClauseMode.ING);

  private final ReadableWords readable;
  private final NounPhrases phrases;
  private final Copula copula;
  private final Closings closings;
  private final SeededRandom random;

  Actions(ReadableWords readable, NounPhrases phrases, Copula copula, SeededRandom random) {
    this.readable = readable;
    this.phrases = phrases;
    this.copula = copula;
    this.closings = new Closings(readable, random);
    this.random = random;
  }

  /** The goat sat on the boat. */
  Optional<Phrase> statement() {
    return random.among(MODES).flatMap(this::statement);
  }

  /** A statement of what happened. */
  Optional<Phrase> told() {
    return statement(ClauseMode.PAST);
  }

  private Optional<Phrase> statement(ClauseMode mode) {
    return switch (mode) {
      case PAST -> stated(mode, VerbForm.PAST, subject -> Optional.of(Phrase.EMPTY));
      case PRESENT -> present();
      case ING -> stated(mode, VerbForm.ING, subject -> copula.form(subject).map(Phrase::of));
      case CAN -> stated(mode, VerbForm.BASE, subject -> modal().map(Phrase::of));
      case WANT ->
          stated(
              mode,
              VerbForm.BASE,
              subject ->
                  readable.words().words(subject == Agreement.THIRD ? "wants to" : "want to"));
      case COMMAND -> Optional.empty();
    };
  }

  private Optional<Phrase> present() {
    VerbForm shape = random.of(0.5) ? VerbForm.THIRD : VerbForm.BASE;
    return stated(
        ClauseMode.PRESENT,
        shape,
        subject ->
            (subject == Agreement.THIRD) == (shape == VerbForm.THIRD)
                ? Optional.of(Phrase.EMPTY)
                : Optional.empty());
  }

  /** A verb in one of its forms, and who does it. */
  private record Act(Action action, NounPhrase subject) {

    Agreement agreement() {
      return subject.agreement();
    }
  }

  private Optional<Act> act(ClauseMode mode, VerbForm shape) {
    return readable
        .actions(mode, shape)
        .draw(random)
        .flatMap(action -> subject(action).map(subject -> new Act(action, subject)));
  }

  private interface Helper {
    /** The words between the subject and the verb; empty if they can't be read or don't agree. */
    Optional<Phrase> before(Agreement subject);
  }

  private Optional<Phrase> stated(ClauseMode mode, VerbForm shape, Helper helper) {
    return act(mode, shape)
        .filter(act -> mode == ClauseMode.CAN || !act.subject().isSpokenTo())
        .flatMap(act -> helper.before(act.agreement()).flatMap(help -> stated(act, help)));
  }

  private Optional<Phrase> stated(Act act, Phrase help) {
    return predicate(act).map(predicate -> act.subject().phrase().then(help).then(predicate));
  }

  /** Did the goat sit on the boat? */
  Optional<Phrase> question() {
    return random
        .among(ASKED)
        .flatMap(
            mode ->
                switch (mode) {
                  case ING -> asked(mode, VerbForm.ING, copula::form);
                  case CAN -> asked(mode, VerbForm.BASE, subject -> modal());
                  case PAST, PRESENT, COMMAND, WANT ->
                      asked(mode, VerbForm.BASE, subject -> readable.words().word("did"));
                });
  }

  private interface Opener {
    Optional<PhraseWord> before(Agreement subject);
  }

  private Optional<Phrase> asked(ClauseMode mode, VerbForm shape, Opener opener) {
    return act(mode, shape)
        .flatMap(
            act ->
                opener
                    .before(act.agreement())
                    .filter(open -> asks(open, act.subject()))
                    .flatMap(open -> asked(act, open)));
  }

  private Optional<Phrase> asked(Act act, PhraseWord open) {
    return predicate(act)
        .map(predicate -> Phrase.of(open).then(act.subject().phrase()).then(predicate));
  }

  /** Put the soap on the boat. */
  Optional<Phrase> command() {
    return readable
        .actions(ClauseMode.COMMAND, VerbForm.BASE)
        .draw(random)
        .flatMap(
            action ->
                rest(action, List.of(), CHILD, "your")
                    .map(rest -> Phrase.of(action.verb()).then(rest)));
  }

  private Optional<NounPhrase> subject(Action action) {
    return phrases.subject(action.subjects(), action.frame().subject().allowsPeople());
  }

  private Optional<Phrase> predicate(Act act) {
    NounPhrase subject = act.subject();
    return rest(act.action(), subject.nouns(), subject.size(), subject.owner())
        .map(rest -> Phrase.of(act.action().verb()).then(rest));
  }

  /** All that follows the verb. */
  private Optional<Phrase> rest(Action action, List<Noun> subjects, int size, String owner) {
    if (action.frame().object().isEmpty()) {
      return surroundings(action, subjects, size, owner);
    }
    Predicate<Noun> fits =
        noun -> !subjects.contains(noun) && (!action.frame().smaller() || noun.size() < size);
    return phrases
        .object(action.objects(), takesPeople(action), owner, fits)
        .flatMap(
            object ->
                surroundings(action, object.nouns(), object.size(), owner)
                    .map(rest -> object.phrase().then(rest)));
  }

  private static boolean takesPeople(Action action) {
    return action.frame().object().map(Selection::allowsPeople).orElse(false);
  }

  private Optional<Phrase> surroundings(Action action, List<Noun> things, int size, String owner) {
    boolean placed = action.frame().placeNeeded() || random.of(PLACED);
    Optional<Phrase> place =
        placed ? place(action, things, size, owner) : Optional.of(Phrase.EMPTY);
    if (place.isEmpty() && !action.frame().placeNeeded()) {
      place = Optional.of(Phrase.EMPTY);
    }
    return place.flatMap(where -> ending(action, where));
  }

  private Optional<Phrase> place(Action action, List<Noun> things, int size, String owner) {
    return random
        .among(action.places())
        .flatMap(place -> phrases.place(place, things, size, owner));
  }

  private Optional<Phrase> ending(Action action, Phrase where) {
    WordPool<Phrase> rests = action.rests();
    if (action.frame().restNeeded()) {
      return rests.draw(random).map(rest -> rest.then(where));
    }
    double ended = rests.targets().isEmpty() ? ENDED : ENDED_BY_TARGET;
    return Optional.of(
        where.length() == 0 && random.of(ended)
            ? rests.draw(random).orElse(Phrase.EMPTY)
            : where.then(closings.draw(after(where))));
  }

  private static Closing.After after(Phrase where) {
    return where.length() == 0 ? Closing.After.ACTION : Closing.After.PLACE;
  }

  /** One asks whether oneself can or may, and of others whether they can, will, did or are. */
  private static boolean asks(PhraseWord opener, NounPhrase subject) {
    return switch (opener.text()) {
      case "can" -> true;
      case "may" -> subject.isSpeaker();
      case "must", "might" -> false;
      default -> !subject.isSpeaker();
    };
  }

  private Optional<PhraseWord> modal() {
    return readable.words().modals().draw(random);
  }
}
