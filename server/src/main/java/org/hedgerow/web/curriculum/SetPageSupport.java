package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.security.FormTokens;

/** What the pages about rules and sequences share. */
record SetPageSupport(Editions editions, PageWriter writer, FormTokens forms) {
  private static final int MAX_LENGTH = 20_000;

  void show(Context context, String template, Object page) {
    writer.write(context, template, Map.of("page", page));
    context.header(Header.CACHE_CONTROL, "no-store");
  }

  Lexicon newest() {
    return editions.newest();
  }

  /** The edition as in which a form is to be filled in: the one that is named, else the newest. */
  Lexicon edition(Context context) {
    String named = asked(context, EditionChoice.PARAMETER);
    if (named.isEmpty()) {
      return newest();
    }
    ValidationErrors errors = ValidationErrors.ofQuery();
    Lexicon edition = EditionChoice.named(editions, named, errors);
    errors.throwIfAny();
    return edition;
  }

  /**
   * @param path of the sets
   * @param name of the one in the form
   */
  EarlierVersion former(Context context, String path, String name) {
    String named = asked(context, EditionChoice.PARAMETER);
    String notice =
        named.isEmpty()
            ? ""
            : "This is how it was in edition %s. Save it, and it counts again.".formatted(named);
    return new EarlierVersion(notice, path + "/edit", name, newest().edition());
  }

  static ProblemException missing(String name, Lexicon edition) {
    return Problem.of(
            ProblemType.NOT_FOUND,
            "Edition %d has nothing called %s. Go back and choose another."
                .formatted(edition.edition(), Quoted.of(name)))
        .exception();
  }

  /**
   * After something was done, so that loading the page again doesn't do it again.
   *
   * @param name of what was changed
   */
  void goOn(Context context, String path, int edition, String name) {
    context.header(Header.CACHE_CONTROL, "no-store");
    context.redirect(path + "?edition=" + edition + "&name=" + name, HttpStatus.SEE_OTHER);
  }

  String token(Context context) {
    return forms.token(context);
  }

  /** What was sent in a field, cut off where nobody types on. */
  static String sent(Context context, String field) {
    String text = Optional.ofNullable(context.formParam(field)).orElse("");
    return text.length() > MAX_LENGTH ? text.substring(0, MAX_LENGTH) : text;
  }

  static String asked(Context context, String parameter) {
    return Optional.ofNullable(context.queryParam(parameter)).orElse("");
  }

  /** The edition that has just been made, in words; empty if none was. */
  static String done(Context context) {
    return made(context)
        .map("Done. Edition %d has it; the editions before keep what they had."::formatted)
        .orElse("");
  }

  /**
   * The form filled in as the set was before it was just changed.
   *
   * @param path of the sets
   * @param holds whether an edition has a set of a name; a new one can't be put back
   */
  Optional<String> undo(Context context, String path, BiPredicate<Lexicon, String> holds) {
    String name = asked(context, "name");
    return made(context)
        .flatMap(edition -> editions.at(edition - 1))
        .filter(before -> holds.test(before, name))
        .map(before -> "%s/edit?name=%s&edition=%d".formatted(path, name, before.edition()));
  }

  private static Optional<Integer> made(Context context) {
    return Optional.of(asked(context, EditionChoice.PARAMETER))
        .filter(edition -> edition.matches("[0-9]{1,9}"))
        .map(Integer::valueOf);
  }

  static Map<String, String> errors(RejectedException refused) {
    Map<String, String> errors = new LinkedHashMap<>();
    for (FieldError error : refused.errors()) {
      errors.merge(field(error), error.message(), (one, other) -> one + " " + other);
    }
    return errors;
  }

  /** Of the form, in which a list is one field. */
  private static String field(FieldError error) {
    return error.field().split("\\[", 2)[0];
  }
}
