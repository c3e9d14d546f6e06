package org.hedgerow.sentences;

import static java.util.Comparator.comparing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Inflections;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Meaning;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Switch;
import org.hedgerow.reading.Verdict;

/**
 * Words that could stand in the place of one that a child can't read: of the same part of speech
 * and with a meaning of the same class, in the same form. For one that the bank doesn't hold, words
 * that are spelt much like it, for it may be a slip. All are allowed in the sentence.
 */
final class Replacements {

  private static final int MAX = 8;

  /** How many words are looked at, in the order of lists: approved, starter set, commonest. */
  private static final int LOOKED_AT = 60;

  private final Lexicon lexicon;
  private final SentenceStandard standard;
  private final WordJudge judge;

  Replacements(Lexicon lexicon, SentenceStandard standard, WordJudge judge) {
    this.lexicon = lexicon;
    this.standard = standard;
    this.judge = judge;
  }

  /**
   * The best first.
   *
   * @param present words that stand in the sentence already
   * @param lacking whether the sentence needs more words with the phonogram, which come first then
   */
  List<String> of(String word, Set<String> present, boolean lacking) {
    return lexicon
        .word(word)
        .map(known -> of(known, lacking).filter(other -> !present.contains(other)))
        .orElseGet(() -> meant(word, lacking))
        .filter(this::isAllowed)
        .distinct()
        .limit(MAX)
        .toList();
  }

  private Stream<String> of(Word word, boolean lacking) {
    Optional<TagFilter> alike = alike(word);
    if (alike.isEmpty()) {
      return Stream.empty();
    }
    Standard targets = standard.standard();
    Standard plain = standard.withoutTarget();
    return (lacking ? Stream.of(targets, plain) : Stream.of(plain, targets))
        .flatMap(measure -> forms(word, alike.get(), measure))
        .filter(form -> !form.equals(word.spelling()));
  }

  /**
   * What a word may be a slip of: first the words with the phonogram, if the sentence needs more. A
   * shortened form is none: <em>can't</em> isn't meant for <em>cat</em>.
   */
  private Stream<String> meant(String word, boolean lacking) {
    if (word.indexOf(WordJudge.APOSTROPHE) >= 0) {
      return Stream.empty();
    }
    return lexicon.nearby(word).stream().sorted(comparing(near -> !(lacking && isTarget(near))));
  }

  private boolean isTarget(String word) {
    return judge.judge(word).judgement() == TokenJudgement.TARGET;
  }

  private boolean isAllowed(String word) {
    return judge.judge(word).verdict() == Verdict.PASS;
  }

  private static Optional<TagFilter> alike(Word word) {
    Set<Meaning> meanings =
        word.meanings().stream()
            .limit(1)
            .flatMap(label -> Meaning.labelled(label).stream())
            .collect(Collectors.toSet());
    return word.partsOfSpeech().stream()
        .findFirst()
        .flatMap(PartOfSpeech::labelled)
        .filter(part -> part != PartOfSpeech.FUNCTION)
        .map(part -> new TagFilter(0, false, Optional.of(part), meanings, false));
  }

  private Stream<String> forms(Word word, TagFilter alike, Standard measure) {
    Optional<Tag> form = Inflections.formOf(word);
    WordQuery query =
        WordQuery.of(standard.accents().get(0), ofBases(measure))
            .withAccents(standard.accents())
            .withTags(alike);
    return lexicon.first(LOOKED_AT, query).stream()
        .flatMap(other -> inForm(other.spelling(), form).stream());
  }

  /** Without inflected forms, which are made of these words where they are wanted. */
  private static Standard ofBases(Standard measure) {
    return new Standard(
        measure.rules().with(Switch.INFLECTED_FORMS, false), measure.targets(), measure.taught());
  }

  private Optional<String> inForm(String base, Optional<Tag> form) {
    return form.isEmpty()
        ? Optional.of(base)
        : lexicon.inflections().form(base, form.get().reason());
  }
}
