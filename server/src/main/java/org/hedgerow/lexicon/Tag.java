package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * Something known of a word.
 *
 * @param kind what is said: one of the constants here
 * @param value what it is; several with spaces between, the first the most important
 * @param reason where that comes from, for a teacher
 */
public record Tag(String kind, String value, String reason) {

  /** It is only a name. */
  public static final String NAME = "name";

  /** Why it isn't for small children. */
  public static final String NOT_FOR_CHILDREN = "not-for-children";

  /** The word of which it is a regular form. */
  public static final String INFLECTED = "inflected";

  /** The word of which it is an irregular form. */
  public static final String BASE = "base";

  /** {@link PartOfSpeech parts of speech}, the commonest first. */
  public static final String PART_OF_SPEECH = "part-of-speech";

  /** {@link Meaning meaning classes}, that of the commonest sense first. */
  public static final String MEANING = "meaning";

  /** How well it can be shown in a picture, from 0 to 3. */
  public static final String PICTURABLE = "picturable";

  /** The id of a picture that shows it. */
  public static final String PICTURE = "picture";

  /** It belongs to the starter set. */
  public static final String STARTER = "starter";

  /** The only spelling of English that writes it so: {@code american} or {@code british}. */
  public static final String REGION = "region";

  /** Before the code of a finding that reviewers overruled; the reason is theirs. */
  public static final String OVERRULED = "overruled-";

  public Tag {
    requireNonNull(kind);
    requireNonNull(value);
    requireNonNull(reason);
  }

  /** The values, where there are several. */
  public List<String> values() {
    return List.of(value.split(" "));
  }
}
