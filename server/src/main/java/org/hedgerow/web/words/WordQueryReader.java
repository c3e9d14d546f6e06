package org.hedgerow.web.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.query.Cursor;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.Paging;
import org.hedgerow.web.query.Parameters;

/** Turns parameters into a question for a list of words, and says everything that is wrong. */
public final class WordQueryReader {

  public static final String PHONOGRAM = "phonogram";
  public static final String VALUE = "value";
  public static final String ACCENT = "accent";
  static final String SOUND = "sound";
  static final String SHAPE = "shape";
  static final String LETTERS = "letters";
  static final String SYLLABLES = "syllables";
  static final String POSITION = "position";
  static final String COMMONNESS = "commonness";
  static final String STATUS = "status";
  static final String PICTURABLE = "picturable";
  static final String PICTURED = "pictured";
  static final String PART_OF_SPEECH = "part-of-speech";
  public static final String MEANING = "meaning";
  static final String MARK = "mark";
  static final String DIFFERS_IN = "differs-in";
  public static final String INCLUDE = "include";
  public static final String RULES = "rules";
  public static final String TAUGHT = "taught";
  static final String SORT = "sort";
  public static final String LIMIT = "limit";
  public static final String AFTER = "after";

  /** The parameters that make a list, in the order in which questions are written. */
  public static final List<String> PARAMETERS =
      List.of(
          PHONOGRAM,
          VALUE,
          ACCENT,
          SOUND,
          SHAPE,
          LETTERS,
          SYLLABLES,
          POSITION,
          COMMONNESS,
          STATUS,
          PICTURABLE,
          PICTURED,
          PART_OF_SPEECH,
          MEANING,
          MARK,
          DIFFERS_IN,
          INCLUDE,
          RULES,
          TAUGHT,
          SORT,
          LIMIT,
          AFTER,
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
