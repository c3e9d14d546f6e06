package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Shape;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.ClosestName;
import org.hedgerow.web.query.Paging;
import org.hedgerow.web.query.ParameterValues;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.RulesReader;
import org.hedgerow.web.query.SoundNameReader;
import org.hedgerow.web.query.ValidationError;

/** Reads the texts of {@link WordParameters}; what is wrong is added to the errors of the query. */
final class WordReaders {

  /** Shapes that teachers ask for, to name one where what they typed is none. */
  private static final List<String> SHAPES =
      List.of("cvc", "vc", "ccvc", "cvcc", "ccvcc", "cv", "vcc", "cccvc", "cvccc");

  private WordReaders() {}

  static Optional<Correspondence> phonogram(String text, ParameterValues before) {
    return new PhonogramReader(before.lexicon().catalogue(), before.given().errors())
        .target(Optional.of(text), before.given().text("value"));
  }

  static Optional<Correspondence> value(String text, ParameterValues before) {
    if (!before.given().has("phonogram")) {
      new PhonogramReader(before.lexicon().catalogue(), before.given().errors())
          .target(Optional.empty(), Optional.of(text));
    }
    return before.find(WordParameters.PHONOGRAM);
  }

  static String number(Correspondence value) {
    return String.valueOf(value.value().orElseThrow());
  }

  static Optional<List<AccentCatalogue>> accents(String text, ParameterValues before) {
    return accents(Optional.of(text), before);
  }

  static Optional<List<AccentCatalogue>> accents(Optional<String> text, ParameterValues before) {
    return Optional.of(
        new AccentReader(before.lexicon(), before.given().errors()).list("accent", text));
  }

  static String tags(List<AccentCatalogue> accents) {
    return accents.stream().map(WordReaders::tag).collect(joining(","));
  }

  static String tag(AccentCatalogue accent) {
    return accent.accent().tag();
  }

  /** A sound that each of the accents must have. */
  static Optional<Sound> sound(String text, ParameterValues before) {
    Optional<Sound> sound = Optional.empty();
    for (AccentCatalogue accent : before.get(WordParameters.ACCENT)) {
      sound = new SoundNameReader(accent, before.given().errors()).one("sound", text);
    }
    return sound;
  }

  static Optional<String> shape(String text, ParameterValues before) {
    String shape = text.toLowerCase(Locale.ROOT);
    if (Pattern.matches(Shape.FORM, shape)) {
      return Optional.of(shape);
    }
    before.given().errors().add(unknownShape(shape));
    return Optional.empty();
  }

  private static ValidationError unknownShape(String shape) {
    return ValidationError.unknown(
        ProblemType.UNKNOWN_SHAPE,
        "shape",
        "There is no shape %s. Write c for each consonant and v for each vowel, 8 at most."
            .formatted(Quoted.of(shape)),
        ClosestName.to(shape, SHAPES),
        "For cat that is cvc.");
  }

  static void requireTarget(ParameterValues before) {
    if (!before.given().has("phonogram") && !before.given().has("sound")) {
      before
          .given()
          .errors()
          .invalid(
              "position",
              "position needs a phonogram or a sound. Say which one, or leave position out.");
    }
  }

  /** An accent other than those in which the words must pass. */
  static Optional<AccentCatalogue> differsIn(String text, ParameterValues before) {
    if (before.get(WordParameters.ACCENT).stream()
        .anyMatch(accent -> tag(accent).equalsIgnoreCase(text))) {
      before
          .given()
          .errors()
          .invalid(
              "differs-in",
              "differs-in must be another accent than those in which the words must pass."
                  + " Name another, or leave it out.");
      return Optional.empty();
    }
    return Optional.of(
        new AccentReader(before.lexicon(), before.given().errors())
            .one("differs-in", Optional.of(text)));
  }

  static Optional<ReadingRules> rules(String text, ParameterValues before) {
    return rules(Optional.of(text), before);
  }

  static Optional<ReadingRules> rules(Optional<String> text, ParameterValues before) {
    return Optional.of(
        new RulesReader(before.lexicon().plans().rules(), before.given().errors())
            .read("rules", text));
  }

  /** How many words there may be depends on the format of the answer. */
  static Optional<Integer> limit(String text, ParameterValues before) {
    return Optional.of(Paging.limit(before.given()));
  }
}
