package org.hedgerow.review;

import java.util.List;

/**
 * Letters that belong together, and what they say.
 *
 * @param letters positions from 0, ascending
 * @param sound IPA, several sounds with spaces between; empty where they are silent
 */
public record LetterGroup(List<Integer> letters, String sound) {
  public LetterGroup {
    letters = Given.list(letters);
    sound = Given.text(sound);
  }
}
