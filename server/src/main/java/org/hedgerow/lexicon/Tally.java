package org.hedgerow.lexicon;

/**
 * What some words are good for. Tallies of words that have none in common add up, so that a list of
 * which little has changed needn't be counted again.
 *
 * @param total how many words there are
 * @param approved how many are approved by people
 * @param starter how many of the others belong to the starter set
 * @param picturable how many can be drawn or better
 * @param pictures how many have a picture
 * @param drawn how many of those that can be drawn have a picture
 */
public record Tally(int total, int approved, int starter, int picturable, int pictures, int drawn) {

  public static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0);

  static Tally of(Iterable<Word> words) {
    Tally sum = NONE;
    for (Word word : words) {
      sum = sum.plus(of(word));
    }
    return sum;
  }

  private static Tally of(Word word) {
    boolean approved = word.status() == Status.APPROVED;
    boolean drawable = Picturability.isDrawable(word);
    boolean pictured = Picturability.hasPicture(word);
    return new Tally(
        1,
        one(approved),
        one(!approved && word.isStarter()),
        one(drawable),
        one(pictured),
        one(drawable && pictured));
  }

  private static int one(boolean counts) {
    return counts ? 1 : 0;
  }

  Tally plus(Tally more) {
    return with(more, 1);
  }

  Tally minus(Tally fewer) {
    return with(fewer, -1);
  }

  private Tally with(Tally others, int times) {
    return new Tally(
        total + times * others.total,
        approved + times * others.approved,
        starter + times * others.starter,
        picturable + times * others.picturable,
        pictures + times * others.pictures,
        drawn + times * others.drawn);
  }

  public int seeded() {
    return total - approved;
  }

  /** Those that nobody stands behind. */
  public int other() {
    return total - trusted();
  }

  /** Those that somebody stands behind. */
  int trusted() {
    return approved + starter;
  }
}
