package org.hedgerow.lexicon;

import static java.util.Comparator.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/**
 * Finds among some words those that are spelt much like another: at most two letters are missing,
 * too many, others or have changed places (Damerau 1964). Immutable.
 *
 * <p>What would take long, for a hundred thousand words, is to look at each: so their letters are
 * kept side by side as sets of bits, which tell nearly all of them apart.
 */
final class NearbyWords {

  private static final int MAX_CHANGES = 2;
  private static final int MAX_WORDS = 3;

  private static final int ALPHABET = 26;
  private static final int ALL_LETTERS = (1 << ALPHABET) - 1;

  /** As far as lengths are told apart; no word of the bank is so long. */
  private static final int MAX_LENGTH = 63;

  private static final DamerauLevenshteinDistance DISTANCE =
      new DamerauLevenshteinDistance(MAX_CHANGES);

  private final List<Word> words;

  /** For each word the set of its letters, and above it how many there are. */
  private final int[] outlines;

  /**
   * @param words of which those are found that are common and fit for children
   */
  NearbyWords(List<Word> words) {
    this.words = words.stream().filter(NearbyWords::isFit).toList();
    this.outlines = this.words.stream().mapToInt(word -> outline(word.spelling())).toArray();
  }

  /** A word that is near another. */
  record Neighbour(Word word, int changes) {}

  /** Those that are near, in any order. */
  List<Neighbour> to(String spelling) {
    int sought = outline(spelling);
    List<Neighbour> near = new ArrayList<>();
    for (int id = 0; id < outlines.length; id++) {
      if (isAlike(outlines[id], sought)) {
        int changes = DISTANCE.apply(words.get(id).spelling(), spelling);
        if (changes > 0) {
          near.add(new Neighbour(words.get(id), changes));
        }
      }
    }
    return near;
  }

  /** The nearest of some, at most three; among those that are as near in the order of lists. */
  static List<String> nearest(Stream<Neighbour> neighbours) {
    return neighbours
        .sorted(
            comparing(Neighbour::changes)
                .thenComparing(Neighbour::word, Order.DEFAULT.comparator()))
        .limit(MAX_WORDS)
        .map(each -> each.word().spelling())
        .toList();
  }

  private static int outline(String spelling) {
    int letters = 0;
    for (int i = 0; i < spelling.length(); i++) {
      letters |= 1 << (spelling.charAt(i) - 'a');
    }
    return (letters & ALL_LETTERS) | Math.min(spelling.length(), MAX_LENGTH) << ALPHABET;
  }

  /** Each change makes at most one letter come, one go, and a word one longer or shorter. */
  private static boolean isAlike(int outline, int other) {
    return Math.abs((outline >>> ALPHABET) - (other >>> ALPHABET)) <= MAX_CHANGES
        && Integer.bitCount(outline & ~other & ALL_LETTERS) <= MAX_CHANGES
        && Integer.bitCount(other & ~outline & ALL_LETTERS) <= MAX_CHANGES;
  }

  private static boolean isFit(Word word) {
    return word.commonness() >= WordQuery.DEFAULT_COMMONNESS
        && !word.is(Tag.NOT_FOR_CHILDREN)
        && !word.is(Tag.NAME);
  }
}
