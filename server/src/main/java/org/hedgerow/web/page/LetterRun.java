package org.hedgerow.web.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Letters of a word that stand side by side and look alike.
 *
 * @param phonogram whether they are printed as the phonogram, in red
 * @param concerned whether a finding is about them
 */
public record LetterRun(String letters, boolean phonogram, boolean concerned) {

  /** A word with the letters of its phonogram apart, by their positions from 0. */
  public static List<LetterRun> of(String spelling, Collection<Integer> phonogram) {
    return of(spelling, phonogram, List.of());
  }

  /**
   * @param concerned for each finding the positions of the letters that it is about; letters of two
   *     findings stay apart
   */
  public static List<LetterRun> of(
      String spelling, Collection<Integer> phonogram, List<List<Integer>> concerned) {
    List<Look> looks = new ArrayList<>();
    for (int i = 0; i < spelling.length(); i++) {
      looks.add(new Look(phonogram.contains(i), firstWith(i, concerned)));
    }
    List<LetterRun> pieces = new ArrayList<>();
    int start = 0;
    for (int end = 1; end <= spelling.length(); end++) {
      if (end == spelling.length() || !looks.get(end).equals(looks.get(start))) {
        pieces.add(looks.get(start).piece(spelling.substring(start, end)));
        start = end;
      }
    }
    return List.copyOf(pieces);
  }

  private static int firstWith(int letter, List<List<Integer>> groups) {
    for (int i = 0; i < groups.size(); i++) {
      if (groups.get(i).contains(letter)) {
        return i;
      }
    }
    return -1;
  }

  /** How one letter looks; {@code finding} is -1 where none is about it. */
  private record Look(boolean phonogram, int finding) {

    LetterRun piece(String letters) {
      return new LetterRun(letters, phonogram, finding >= 0);
    }
  }
}
