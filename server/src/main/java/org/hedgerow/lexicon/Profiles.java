package org.hedgerow.lexicon;

import java.util.Arrays;

/**
 * The profiles of some words: for each the numbers that it holds, hardly ever more than ten of more
 * than a thousand, packed one behind the other. Words are added in the order of their own numbers,
 * from 0; after that it isn't changed.
 */
final class Profiles {
  private static final int DEFAULT_LENGTH = 8;

  private final int[] starts;
  private char[] numbers;
  private int word;
  private int end;

  /**
   * @param words how many will be added
   */
  Profiles(int words) {
    this.starts = new int[words + 1];
    this.numbers = new char[words * DEFAULT_LENGTH];
  }

  /** Adds a number below 65,536 to the profile of the next word; again makes no difference. */
  void mark(int number) {
    for (int i = starts[word]; i < end; i++) {
      if (numbers[i] == number) {
        return;
      }
    }
    if (end == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * end + DEFAULT_LENGTH);
    }
    numbers[end++] = (char) number;
  }

  /** Ends the profile of the next word. */
  void endWord() {
    starts[++word] = end;
    if (word == starts.length - 1) {
      numbers = Arrays.copyOf(numbers, end);
    }
  }

  /**
   * Whether a word holds any of some numbers.
   *
   * @param bits a bit for each number
   */
  boolean holdsAnyOf(int id, long[] bits) {
    for (int i = starts[id]; i < starts[id + 1]; i++) {
      int number = numbers[i];
      if ((bits[number >> 6] & 1L << number) != 0) {
        return true;
      }
    }
    return false;
  }
}
