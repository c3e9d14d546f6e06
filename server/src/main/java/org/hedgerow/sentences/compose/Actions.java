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
  private static final List<Mode> MODES =
      List.of(
          Mode.PAST,
          Mode.PAST,
          Mode.PAST,
          Mode.PAST,
          Mode.PAST,
          Mode.CAN,
          Mode.CAN,
          Mode.ING,
          Mode.ING,
          Mode.PRESENT,
          Mode.PRESENT,
          Mode.WANT);

  private static final List<Mode> ASKED = List.of(Mode.PAST, Mode.CAN, Mode.CAN, Mode.ING);

  private final Pantry pantry;
  private final NounPhrases phrases;
  private final Being being;
  private final Closings closings;
  private final Chance chance;

  Actions(Pantry pantry, NounPhrases phrases, Being being, Chance chance) {
    this.pantry = pantry;
    this.phrases = phrases;
    this.being = being;
    this.closings = new Closings(pantry, chance);
    this.chance = chance;
  }

  /** The goat sat on the boat. */
  Optional<Phrase> statement() {
    return chance.among(MODES).flatMap(this::statement);
  }

  /** A statement of what happened. */
  Optional<Phrase> told() {
    return statement(Mode.PAST);
  }

  private Optional<Phrase> statement(Mode mode) {
    return switch (mode) {
      case PAST -> stated(mode, Shape.PAST, subject -> Optional.of(Phrase.EMPTY));
      case PRESENT -> present();
      case ING -> stated(mode, Shape.ING, subject -> being.form(subject).map(Phrase::of));
      case CAN -> stated(mode, Shape.BASE, subject -> modal().map(Phrase::of));
      case WANT ->
          stated(
              mode,
              Shape.BASE,
              subject -> pantry.words().words(subject == Agreement.THIRD ? "wants to" : "want to"));
      case COMMAND -> Optional.empty();
    };
  }

  private Optional<Phrase> present() {
    Shape shape = chance.of(0.5) ? Shape.THIRD : Shape.BASE;
    return stated(
        Mode.PRESENT,
        shape,
        subject ->
            (subject == Agreement.THIRD) == (shape == Shape.THIRD)
                ? Optional.of(Phrase.EMPTY)
                : Optional.empty());
  }

  /** A verb in one of its forms, and who does it. */
  private record Act(Action action, NounPhrase subject) {

    Agreement agreement() {
      return subject.agreement();
    }
  }

  private Optional<Act> act(Mode mode, Shape shape) {
    return pantry
        .actions(mode, shape)
        .draw(chance)
        .flatMap(action -> subject(action).map(subject -> new Act(action, subject)));
  }

  private interface Helper {
    /** The words between the subject and the verb; empty if they can't be read or don't agree. */
    Optional<Phrase> before(Agreement subject);
  }

  private Optional<Phrase> stated(Mode mode, Shape shape, Helper helper) {
    return act(mode, shape)
        .filter(act -> mode == Mode.CAN || !act.subject().isSpokenTo())
        .flatMap(act -> helper.before(act.agreement()).flatMap(help -> stated(act, help)));
  }

  private Optional<Phrase> stated(Act act, Phrase help) {
    return predicate(act).map(predicate -> act.subject().phrase().then(help).then(predicate));
  }

  /** Did the goat sit on the boat? */
  Optional<Phrase> question() {
    return chance
        .among(ASKED)
        .flatMap(
            mode ->
                switch (mode) {
                  case ING -> asked(mode, Shape.ING, being::form);
                  case CAN -> asked(mode, Shape.BASE, subject -> modal());
                  case PAST, PRESENT, COMMAND, WANT ->
                      asked(mode, Shape.BASE, subject -> pantry.words().word("did"));
                });
  }

  private interface Opener {
    Optional<Piece> before(Agreement subject);
  }

  private Optional<Phrase> asked(Mode mode, Shape shape, Opener opener) {
    return act(mode, shape)
        .flatMap(
            act ->
                opener
                    .before(act.agreement())
                    .filter(open -> asks(open, act.subject()))
                    .flatMap(open -> asked(act, open)));
  }

  private Optional<Phrase> asked(Act act, Piece open) {
    return predicate(act)
        .map(predicate -> Phrase.of(open).then(act.subject().phrase()).then(predicate));
  }

  /** Put the soap on the boat. */
  Optional<Phrase> command() {
    return pantry
        .actions(Mode.COMMAND, Shape.BASE)
        .draw(chance)
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
    boolean placed = action.frame().placeNeeded() || chance.of(PLACED);
    Optional<Phrase> place =
        placed ? place(action, things, size, owner) : Optional.of(Phrase.EMPTY);
    if (place.isEmpty() && !action.frame().placeNeeded()) {
      place = Optional.of(Phrase.EMPTY);
    }
    return place.flatMap(where -> ending(action, where));
  }

  private Optional<Phrase> place(Action action, List<Noun> things, int size, String owner) {
    return chance
        .among(action.places())
        .flatMap(place -> phrases.place(place, things, size, owner));
  }

  private Optional<Phrase> ending(Action action, Phrase where) {
    Stock<Phrase> rests = action.rests();
    if (action.frame().restNeeded()) {
      return rests.draw(chance).map(rest -> rest.then(where));
    }
    double ended = rests.targets().isEmpty() ? ENDED : ENDED_BY_TARGET;
    return Optional.of(
        where.length() == 0 && chance.of(ended)
            ? rests.draw(chance).orElse(Phrase.EMPTY)
            : where.then(closings.draw(after(where))));
  }

  private static Closing.After after(Phrase where) {
    return where.length() == 0 ? Closing.After.ACTION : Closing.After.PLACE;
  }

  /** One asks whether oneself can or may, and of others whether they can, will, did or are. */
  private static boolean asks(Piece opener, NounPhrase subject) {
    return switch (opener.text()) {
      case "can" -> true;
      case "may" -> subject.isSpeaker();
      case "must", "might" -> false;
      default -> !subject.isSpeaker();
    };
  }

  private Optional<Piece> modal() {
    return pantry.words().modals().draw(chance);
  }
}
