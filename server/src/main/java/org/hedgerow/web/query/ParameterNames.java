package org.hedgerow.web.query;

/** The names of query parameters that more than one subject reads. */
public final class ParameterNames {
  public static final String PHONOGRAM = "phonogram";
  public static final String VALUE = "value";
  public static final String ACCENT = "accent";
  public static final String SOUND = "sound";
  public static final String SHAPE = "shape";
  public static final String LETTERS = "letters";
  public static final String SYLLABLES = "syllables";
  public static final String POSITION = "position";
  public static final String COMMONNESS = "commonness";
  public static final String STATUS = "status";
  public static final String PICTURABLE = "picturable";
  public static final String PICTURED = "pictured";
  public static final String PART_OF_SPEECH = "part-of-speech";
  public static final String MEANING = "meaning";
  public static final String MARK = "mark";
  public static final String DIFFERS_IN = "differs-in";
  public static final String INCLUDE = "include";
  public static final String RULES = "rules";
  public static final String TAUGHT = "taught";
  public static final String SORT = "sort";
  public static final String LIMIT = "limit";
  public static final String AFTER = "after";
  public static final String FIND = "find";
  public static final String FOR = "for";

  private ParameterNames() {}
}
