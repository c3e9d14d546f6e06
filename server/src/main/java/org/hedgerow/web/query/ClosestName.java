package org.hedgerow.web.query;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what was meant by a name that doesn't exist. */
public final class ClosestName {

  private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();
  private static final int MAX_LENGTH = 40;

  private ClosestName() {}

  /** The nearest name, unless more than half of the text would have to change. */
  public static Optional<String> to(String text, Collection<String> names) {
    return closest(text, names).filter(name -> distance(text, name) * 2 <= longer(text, name));
  }

  /**
   * The nearest name, however far; where several are as near, the one with the same letters in
   * another order ({@code ao} is meant for {@code oa}), then the first.
   */
  static Optional<String> closest(String text, Collection<String> names) {
    if (text.length() > MAX_LENGTH) {
      return Optional.empty();
    }
    return names.stream().min(Comparator.comparingInt(name -> distance(text, name)));
  }

  private static int distance(String text, String name) {
    return sameLetters(text, name) ? 1 : DISTANCE.apply(text, name) * 2;
  }

  private static boolean sameLetters(String text, String name) {
    return text.length() == name.length() && Arrays.equals(sorted(text), sorted(name));
  }

  private static int[] sorted(String text) {
    return text.chars().sorted().toArray();
  }

  private static int longer(String text, String name) {
    return 2 * Math.max(text.length(), name.length());
  }
}
