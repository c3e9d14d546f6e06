package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;

/** What full material for every value of every phonogram still lacks. */
public final class Needs {

  /** A value that children meet often, and of which much is lacking, comes first. */
  private static final Comparator<Need> GREATEST_FIRST =
      Comparator.comparingDouble((Need need) -> need.gap() * need.times()).reversed();

  private Needs() {}

  /** For each value that the accent has, the greatest need first. */
  public static List<Need> in(Lexicon lexicon, String accent) {
    Regularity regularity = new Regularity(lexicon, accent);
    List<Need> needs = new ArrayList<>();
    for (Correspondence value : lexicon.catalogue().correspondences()) {
      int times = regularity.times(value);
      if (value.isTaught() && times > 0) {
        List<Word> words = lexicon.find(WordQuery.of(accent, Standard.of(value)));
        int sentences = lexicon.sentences().of(value, accent).size();
        needs.add(Need.of(value, accent, times, words, sentences));
      }
    }
    needs.sort(GREATEST_FIRST);
    return needs;
  }
}
