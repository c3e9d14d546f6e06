package org.hedgerow.reading;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * One reason why a word passes, fails or needs a look.
 *
 * @param accent the accent in which it was found, or an empty text if it is about the word itself
 * @param letters positions from 0 of the letters it is about; empty if it is about the whole word
 * @param message for a teacher
 */
public record Finding(FindingCode code, String accent, List<Integer> letters, String message) {

  public Finding {
    requireNonNull(code);
    requireNonNull(accent);
    letters = List.copyOf(letters);
    requireNonNull(message);
  }

  /** About the word itself, in any accent. */
  public static Finding ofWord(FindingCode code, String message) {
    return new Finding(code, "", List.of(), message);
  }
}
