package org.hedgerow.app;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;

/**
 * Looks up what the command line names, with the same error messages as the server has.
 *
 * @param target empty if no phonogram was named
 * @param accents their tags
 */
record RequestedTarget(Optional<Correspondence> target, List<String> accents) {

  /**
   * @throws CommandFailedException if the bank doesn't have something
   */
  static RequestedTarget find(
      Lexicon lexicon, Optional<String> phonogram, OptionalInt value, List<String> accents) {
    ValidationErrors errors = ValidationErrors.ofQuery();
    Optional<Correspondence> target =
        new PhonogramReader(lexicon.catalogue(), errors).target(phonogram, text(value));
    List<String> found =
        new AccentReader(lexicon, errors)
            .each("accent", accents).stream().map(each -> each.accent().tag()).toList();
    errors.list().stream()
        .findFirst()
        .map(ValidationError::message)
        .ifPresent(RequestedTarget::fail);
    return new RequestedTarget(target, found);
  }

  private static Optional<String> text(OptionalInt value) {
    return value.isPresent() ? Optional.of(String.valueOf(value.getAsInt())) : Optional.empty();
  }

  private static void fail(String message) {
    throw new CommandFailedException(message);
  }
}
