package org.hedgerow.lexicon;

import java.util.List;
import java.util.function.Predicate;
import org.hedgerow.phonics.Correspondence;

/**
 * What there is for one value of a phonogram in one accent, and what is lacking.
 *
 * @param times how often the value is met in words of common use
 * @param approved words of its default list that people have approved
 * @param starter others that belong to the starter set
 * @param other words that pass and that nobody stands behind yet
 * @param picturable words that can be drawn, or better
 * @param pictures those of them that have a picture
 * @param sentences reviewed sentences
 * @param candidates the best words to review next: the most picturable, then the commonest first
 * @param toPicture the words that a picture is best found for next
 */
public record Need(
    Correspondence value,
    String accent,
    int times,
    int approved,
    int starter,
    int other,
    int picturable,
    int pictures,
    int sentences,
    List<Word> candidates,
    List<Word> toPicture) {

  private static final int MAX_CANDIDATES = 12;

  static Need of(Correspondence value, String accent, int times, List<Word> words, int sentences) {
    List<Word> drawable = words.stream().filter(Picturability::isDrawable).toList();
    return new Need(
        value,
        accent,
        times,
        count(words, Need::isApproved),
        count(words, word -> !isApproved(word) && word.isStarter()),
        count(words, word -> !isTrusted(word)),
        drawable.size(),
        count(drawable, Picturability::hasPicture),
        sentences,
        best(words, word -> !isTrusted(word)),
        best(drawable, word -> !Picturability.hasPicture(word)));
  }

  private static int count(List<Word> words, Predicate<Word> condition) {
    return (int) words.stream().filter(condition).count();
  }

  private static List<Word> best(List<Word> words, Predicate<Word> condition) {
    return words.stream()
        .filter(condition)
        .sorted(Picturability.MOST_PICTURABLE_FIRST)
        .limit(MAX_CANDIDATES)
        .toList();
  }

  private static boolean isApproved(Word word) {
    return word.status() == Status.APPROVED;
  }

  private static boolean isTrusted(Word word) {
    return isApproved(word) || word.isStarter();
  }

  public int words() {
    return approved + starter + other;
  }

  /** How many more words somebody has to stand behind. */
  public int lackingWords() {
    return FullMaterial.lacking(approved + starter, FullMaterial.WORDS);
  }

  public int lackingPictures() {
    return FullMaterial.lacking(pictures, FullMaterial.PICTURES);
  }

  public int lackingSentences() {
    return FullMaterial.lacking(sentences, FullMaterial.SENTENCES);
  }
}
