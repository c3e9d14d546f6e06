package org.hedgerow.web.words;

import java.util.Optional;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.web.query.Cursor;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.QueryString;

/**
 * A question for a list of words, with all defaults filled in.
 *
 * @param edition the edition that answers it
 * @param phonogram the value each word must hold
 * @param sound the sound each word must hold
 * @param query what the index is asked
 * @param limit how many words to give at most
 * @param offset how many words of the list come before those asked for
 * @param resolved every parameter with its default, by which the same list can be asked for again;
 *     not {@code after}
 */
record WordRequest(
    int edition,
    Optional<Correspondence> phonogram,
    Optional<Sound> sound,
    WordQuery query,
    int limit,
    int offset,
    QueryString resolved) {

  /** The list alone, however many words of it are asked for at once, and however its edition is. */
  QueryString list() {
    return resolved.without(ParameterNames.LIMIT).without(EditionChoice.PARAMETER);
  }

  /** A place in the list, so many words from its start. */
  Cursor place(int words) {
    return Cursor.to(edition, words, list());
  }

  /** The cursor to where the words asked for begin; empty at the start of the list. */
  public Optional<String> after() {
    return offset == 0 ? Optional.empty() : Optional.of(place(offset).toString());
  }

  /** The same question for the words after some. */
  WordRequest from(int words) {
    return new WordRequest(edition, phonogram, sound, query, limit, words, resolved);
  }
}
