package org.hedgerow.web.sentences;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Range;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.AccentReader;
import org.hedgerow.web.query.ChoiceReader;
import org.hedgerow.web.query.Cursor;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.Paging;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.QueryString;

/**
 * A question for a list of sentences, with all defaults filled in.
 *
 * @param edition the edition that answers it
 * @param limit how many sentences to give at most
 * @param offset how many sentences of the list come before those asked for
 */
record SentenceRequest(int edition, SentenceFilter filter, int limit, int offset) {

  private static final String WORD = "word";
  private static final String MAX_LENGTH = "longest";
  private static final Range LENGTHS = new Range(1, 40);

  /** In the order in which questions are written. */
  public static final List<String> PARAMETERS =
      List.of(
          ParameterNames.PHONOGRAM,
          ParameterNames.VALUE,
          ParameterNames.ACCENT,
          WORD,
          MAX_LENGTH,
          ParameterNames.LIMIT,
          ParameterNames.AFTER);

  /**
   * Sentences that were found.
   *
   * @param total how many the whole list has
   * @param next the cursor to those after them; empty at the end of the list
   */
  public record Found(int total, List<Sentence> sentences, Optional<String> next) {}

  /**
   * @throws InvalidQueryException with all that is wrong
   */
  public static SentenceRequest read(Lexicon lexicon, Parameters parameters) {
    Optional<Cursor> after = Paging.cursor(parameters);
    ChoiceReader choices = new ChoiceReader(parameters);
    SentenceFilter filter =
        new SentenceFilter(
            value(lexicon, parameters),
            new AccentReader(lexicon, parameters.errors())
                .tags(ParameterNames.ACCENT, parameters.text(ParameterNames.ACCENT)),
            parameters.text(WORD).orElse("").toLowerCase(Locale.ROOT),
            choices.number(MAX_LENGTH, LENGTHS, LENGTHS.most()));
    int limit = Paging.limit(parameters);
    SentenceRequest start = new SentenceRequest(lexicon.edition(), filter, limit, 0);
    parameters.errors().throwIfAny();
    return after
        .map(cursor -> start.from(Paging.offset(cursor, start::place, parameters)))
        .orElse(start);
  }

  private static Optional<Correspondence> value(Lexicon lexicon, Parameters parameters) {
    return new PhonogramReader(lexicon.catalogue(), parameters.errors())
        .target(parameters.text(ParameterNames.PHONOGRAM), parameters.text(ParameterNames.VALUE));
  }

  private SentenceRequest from(int sentences) {
    return new SentenceRequest(edition, filter, limit, sentences);
  }

  private Cursor place(int sentences) {
    return Cursor.to(edition, sentences, list());
  }

  /** The list alone, however many sentences of it are asked for at once. */
  private QueryString list() {
    Map<String, String> parameters = new LinkedHashMap<>();
    filter.value().ifPresent(value -> put(value, parameters));
    parameters.put(ParameterNames.ACCENT, String.join(",", filter.accents()));
    if (!filter.word().isEmpty()) {
      parameters.put(WORD, filter.word());
    }
    parameters.put(MAX_LENGTH, String.valueOf(filter.longest()));
    return new QueryString(parameters);
  }

  private static void put(Correspondence value, Map<String, String> parameters) {
    parameters.put(ParameterNames.PHONOGRAM, value.grapheme().text());
    parameters.put(ParameterNames.VALUE, String.valueOf(value.value().orElseThrow()));
  }

  /** Every parameter with its default, by which the same sentences can be asked for again. */
  public QueryString resolved() {
    QueryString all = list().with(ParameterNames.LIMIT, String.valueOf(limit));
    return offset == 0 ? all : all.with(ParameterNames.AFTER, place(offset).toString());
  }

  /** The sentences that are asked for, in the order of the bank. */
  public Found find(Sentences sentences) {
    List<Sentence> all = filter.in(sentences);
    int from = Math.min(offset, all.size());
    int to = Math.min(from + limit, all.size());
    return new Found(
        all.size(),
        all.subList(from, to),
        to < all.size() ? Optional.of(place(to).toString()) : Optional.empty());
  }
}
