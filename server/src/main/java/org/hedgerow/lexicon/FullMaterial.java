package org.hedgerow.lexicon;

/** What full material for one value of a phonogram needs: common practice, no source. */
public final class FullMaterial {

  /** Words that a person stands behind, for a list. */
  public static final int WORDS = 12;

  /** Words with a picture, for a picture box. */
  public static final int PICTURES = 8;

  /** Sentences, for a set of strips. */
  public static final int SENTENCES = 3;

  /** Where these figures come from. */
  public static final String REASON = "based on common practice";

  private FullMaterial() {}

  static int lacking(int there, int enough) {
    return Math.max(0, enough - there);
  }

  /** Of what is enough of everything, the share that is lacking: from 0 to 1. */
  static double gap(Tally words, int sentences) {
    double trusted = (double) lacking(words.trusted(), WORDS) / WORDS;
    double drawn = (double) lacking(words.drawn(), PICTURES) / PICTURES;
    double said = (double) lacking(sentences, SENTENCES) / SENTENCES;
    return (trusted + drawn + said) / 3;
  }
}
