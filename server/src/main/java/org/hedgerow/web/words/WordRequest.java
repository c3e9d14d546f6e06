package org.hedgerow.web.words;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.Standard;
import org.hedgerow.web.query.Cursor;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.Paging;
import org.hedgerow.web.query.Parameter;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.ParameterValues;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.QueryString;

/**
 * A query for a list of words, with all defaults filled in.
 *
 * @param query what the index is asked
 * @param resolved every parameter with its default, by which the same list can be asked for again;
 *     not {@code after}
 * @param offset how many words of the list come before those asked for
 */
record WordRequest(ParameterValues values, WordQuery query, QueryString resolved, int offset) {

  /**
   * @param lexicon the edition that the parameters choose
   * @param given perhaps with others beside, and errors found in them
   * @throws InvalidQueryException with all that is wrong
   */
  static WordRequest read(Lexicon lexicon, Parameters given) {
    Optional<Cursor> after = Paging.cursor(given);
    WordRequest start = of(ParameterValues.read(lexicon, given, WordParameters.ALL));
    given.errors().throwIfAny();
    return after
        .map(cursor -> start.from(Paging.offset(cursor, start::place, given)))
        .orElse(start);
  }

  private static WordRequest of(ParameterValues values) {
    return new WordRequest(values, query(values), values.texts(), 0);
  }

  private static WordQuery query(ParameterValues values) {
    Optional<Letters> letters = values.find(WordParameters.LETTERS);
    return new WordQuery(
        values.get(WordParameters.ACCENT).stream().map(each -> each.accent().tag()).toList(),
        standard(values),
        values.find(WordParameters.SHAPE),
        letters.flatMap(Letters::count),
        letters.flatMap(Letters::only),
        values.find(WordParameters.SYLLABLES),
        values.find(WordParameters.POSITION),
        values.find(WordParameters.RIME).map(RimeFilter::rimes).orElse(Set.of()),
        values.get(WordParameters.COMMONNESS),
        values.get(WordParameters.STATUS),
        tags(values),
        values.find(WordParameters.DIFFERS_IN).map(each -> each.accent().tag()),
        values.get(WordParameters.INCLUDE).stream()
            .map(Inclusion::tag)
            .collect(toUnmodifiableSet()),
        values.get(WordParameters.SORT));
  }

  private static TagFilter tags(ParameterValues values) {
    return new TagFilter(
        values.get(WordParameters.PICTURABLE),
        values.get(WordParameters.PICTURED),
        values.find(WordParameters.PART_OF_SPEECH),
        values.get(WordParameters.MEANING),
        values.find(WordParameters.MARK).isPresent());
  }

  private static Standard standard(ParameterValues values) {
    return new Standard(
        values.get(WordParameters.RULES),
        targets(values),
        values.get(WordParameters.TAUGHT).values());
  }

  /** Without a phonogram, a list for a sound is one for all of its spellings. */
  private static Set<Correspondence> targets(ParameterValues values) {
    Optional<Correspondence> phonogram = values.find(WordParameters.PHONOGRAM);
    Optional<Sound> sound = values.find(WordParameters.SOUND);
    if (phonogram.isPresent() || sound.isEmpty()) {
      return phonogram.map(Set::of).orElse(Set.of());
    }
    List<Sound> alone = List.of(sound.get());
    return values.get(WordParameters.ACCENT).stream()
        .flatMap(accent -> accent.realisations().stream())
        .filter(realisation -> realisation.sounds().equals(alone))
        .map(Realisation::correspondence)
        .collect(toUnmodifiableSet());
  }

  /** The same list from its start, with another value for a parameter. */
  <T> WordRequest with(Parameter<T> parameter, T value) {
    return of(values.with(parameter, value));
  }

  /** The same list from its start, without a parameter. */
  WordRequest without(Parameter<?> parameter) {
    return of(values.without(parameter));
  }

  /** The edition that answers it. */
  int edition() {
    return values.lexicon().edition();
  }

  /** The value each word must hold. */
  Optional<Correspondence> phonogram() {
    return values.find(WordParameters.PHONOGRAM);
  }

  /** The sound each word must hold. */
  Optional<Sound> sound() {
    return values.find(WordParameters.SOUND);
  }

  /** How many words to give at most. */
  int limit() {
    return values.get(WordParameters.LIMIT);
  }

  /** The list alone, however many words of it are asked for at once, and however its edition is. */
  private QueryString list() {
    return resolved.without(ParameterNames.LIMIT).without(EditionChoice.PARAMETER);
  }

  /** A place in the list, so many words from its start. */
  Cursor place(int words) {
    return Cursor.to(edition(), words, list());
  }

  /** The cursor to where the words asked for begin; empty at the start of the list. */
  Optional<String> after() {
    return offset == 0 ? Optional.empty() : Optional.of(place(offset).toString());
  }

  /** The same query for the words after some. */
  private WordRequest from(int words) {
    return new WordRequest(values, query, resolved, words);
  }
}
