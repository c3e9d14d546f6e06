package org.hedgerow.app;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.Fault;
import org.hedgerow.web.query.Faults;
import org.hedgerow.web.query.PhonogramReader;

/**
 * What a person named on the command line, found in the bank with the same words for what is wrong
 * as the server has.
 *
 * @param target empty if no phonogram was named
 * @param accents their tags
 */
record Wanted(Optional<Correspondence> target, List<String> accents) {

  /**
   * @throws CommandFailedException if the bank doesn't have something
   */
  static Wanted find(
      Lexicon lexicon, Optional<String> phonogram, OptionalInt value, List<String> accents) {
    Faults faults = Faults.ofQuery();
    Optional<Correspondence> target =
        new PhonogramReader(lexicon.catalogue(), faults).target(phonogram, text(value));
    List<String> found =
        new AccentReader(lexicon, faults)
            .each("accent", accents).stream().map(each -> each.accent().tag()).toList();
    faults.list().stream().findFirst().map(Fault::message).ifPresent(Wanted::fail);
    return new Wanted(target, found);
  }

  private static Optional<String> text(OptionalInt value) {
    return value.isPresent() ? Optional.of(String.valueOf(value.getAsInt())) : Optional.empty();
  }

  private static void fail(String message) {
    throw new CommandFailedException(message);
  }
}
