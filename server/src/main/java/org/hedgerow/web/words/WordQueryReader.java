package org.hedgerow.web.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.query.Cursor;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.Paging;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;

/** Turns parameters into a question for a list of words, and says everything that is wrong. */
final class WordQueryReader {

  /** The parameters that make a list, in the order in which questions are written. */
  public static final List<String> PARAMETERS =
      List.of(
          ParameterNames.PHONOGRAM,
          ParameterNames.VALUE,
          ParameterNames.ACCENT,
          ParameterNames.SOUND,
          ParameterNames.SHAPE,
          ParameterNames.LETTERS,
          ParameterNames.SYLLABLES,
          ParameterNames.POSITION,
          ParameterNames.COMMONNESS,
          ParameterNames.STATUS,
          ParameterNames.PICTURABLE,
          ParameterNames.PICTURED,
          ParameterNames.PART_OF_SPEECH,
          ParameterNames.MEANING,
          ParameterNames.MARK,
          ParameterNames.DIFFERS_IN,
          ParameterNames.INCLUDE,
          ParameterNames.RULES,
          ParameterNames.TAUGHT,
          ParameterNames.SORT,
          ParameterNames.LIMIT,
          ParameterNames.AFTER,
          EditionChoice.PARAMETER);

  private final Lexicon lexicon;

  public WordQueryReader(Lexicon lexicon) {
    this.lexicon = lexicon;
  }

  /**
   * @param given the values of each parameter, by its name
   * @throws InvalidQueryException with all that is wrong
   */
  public WordRequest read(Map<String, List<String>> given) {
    return read(new Parameters(given, PARAMETERS));
  }

  /**
   * @param parameters perhaps with others beside, and faults found in them
   * @throws InvalidQueryException with all that is wrong
   */
  public WordRequest read(Parameters parameters) {
    Optional<Cursor> after = Paging.cursor(parameters);
    WordRequest start = new WordRequestParts(lexicon, parameters).request();
    parameters.faults().throwIfAny();
    return after
        .map(cursor -> start.from(Paging.offset(cursor, start::place, parameters)))
        .orElse(start);
  }
}
