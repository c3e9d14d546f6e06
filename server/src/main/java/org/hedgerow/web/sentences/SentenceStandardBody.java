package org.hedgerow.web.sentences;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.web.http.BodyParts;
import org.hedgerow.web.query.RulesReader;
import org.hedgerow.web.query.SightWordsReader;
import org.hedgerow.web.query.TaughtReader;
import org.hedgerow.web.query.ValidationErrors;
import org.jspecify.annotations.Nullable;

/** What sentences are to be measured by, as it is sent. */
record SentenceStandardBody(
    @Nullable String phonogram,
    @Nullable Integer value,
    @Nullable List<String> accent,
    @Nullable List<String> accents,
    @Nullable String rules,
    @Nullable List<String> taught,
    @Nullable String sightWords,
    @Nullable Integer minimum,
    @Nullable Integer maximum) {

  private static final int MAX_TARGETS = 20;
  private static final int MAX_WORDS = 40;
  private static final int MIN_WORDS = 3;

  /**
   * A standard, whatever is wrong, and what it was read from with all defaults filled in.
   *
   * @param errors what is wrong is added to them
   */
  Read read(Lexicon lexicon, ValidationErrors errors) {
    Optional<Correspondence> target = BodyParts.target(lexicon, phonogram, value, errors);
    List<String> tags = BodyParts.accents(lexicon, accent, accents, errors);
    ReadingRules chosen =
        new RulesReader(lexicon.plans().rules(), errors).read("rules", Optional.ofNullable(rules));
    TaughtReader reader = new TaughtReader(lexicon, tags.get(0), errors);
    Set<Correspondence> known =
        reader.readEach("taught", Optional.ofNullable(taught).orElse(List.of()));
    Optional<SightWords> sight =
        new SightWordsReader(lexicon.plans().sightWords(), errors)
            .chosen("sightWords", Optional.ofNullable(sightWords));
    int least =
        number("minimum", minimum, SentenceStandard.DEFAULT_TARGETS, 0, MAX_TARGETS, errors);
    int most =
        number("maximum", maximum, SentenceStandard.DEFAULT_WORDS, MIN_WORDS, MAX_WORDS, errors);
    SentenceStandard standard =
        new SentenceStandard(
            new Standard(chosen, target.map(Set::of).orElse(Set.of()), known),
            tags,
            sight.map(SightWords::asSet).orElse(Set.of()),
            least,
            most);
    return new Read(
        standard,
        new SentenceQuery(
            target.map(each -> each.grapheme().text()),
            target.map(Correspondence::value).orElse(OptionalInt.empty()),
            tags,
            chosen.label(),
            reader.labels(known),
            sight.map(SightWords::name).orElse(SightWordSets.NO_WORDS),
            least,
            most));
  }

  /** What was read. */
  record Read(SentenceStandard standard, SentenceQuery query) {}

  static int number(
      String name,
      @Nullable Integer sent,
      int usual,
      int least,
      int most,
      ValidationErrors errors) {
    int number = sent == null ? usual : sent;
    if (number < least || number > most) {
      errors.invalid(name, "%s is %d. It may be %d to %d.".formatted(name, number, least, most));
      return usual;
    }
    return number;
  }
}
