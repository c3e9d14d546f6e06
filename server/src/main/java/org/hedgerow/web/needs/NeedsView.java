package org.hedgerow.web.needs;

import java.util.List;
import org.hedgerow.lexicon.FullMaterial;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Need;
import org.hedgerow.lexicon.Word;

/** What full material needs, and what it lacks for each value in each accent. */
record NeedsView(int edition, List<String> accent, Full enough, List<Entry> needs) {

  /**
   * @param reason where the figures come from
   */
  record Full(int words, int pictures, int sentences, String reason) {}

  record Words(int total, int approved, int starter, int other) {}

  record Lacking(int words, int pictures, int sentences) {}

  /**
   * @param times how often the value is met in words of common use
   * @param candidates words to review next
   * @param toPicture words to find a picture for next
   */
  record Entry(
      String phonogram,
      int value,
      String accent,
      String keyWord,
      int times,
      Words words,
      int picturable,
      int pictures,
      int sentences,
      Lacking lacking,
      List<String> candidates,
      List<String> toPicture) {

    public static Entry of(Need need) {
      return new Entry(
          need.value().grapheme().text(),
          need.value().value().orElseThrow(),
          need.accent(),
          need.value().keyWord(),
          need.times(),
          new Words(need.words(), need.approved(), need.starter(), need.other()),
          need.picturable(),
          need.pictures(),
          need.sentences(),
          new Lacking(need.lackingWords(), need.lackingPictures(), need.lackingSentences()),
          spellings(need.candidates()),
          spellings(need.toPicture()));
    }

    private static List<String> spellings(List<Word> words) {
      return words.stream().map(Word::spelling).toList();
    }
  }

  static NeedsView of(Lexicon lexicon, List<String> accents, List<Need> needs) {
    return new NeedsView(
        lexicon.edition(),
        accents,
        new Full(
            FullMaterial.WORDS, FullMaterial.PICTURES, FullMaterial.SENTENCES, FullMaterial.REASON),
        needs.stream().map(Entry::of).toList());
  }
}
