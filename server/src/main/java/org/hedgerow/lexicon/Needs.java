package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;

/** What full material for every value of every phonogram still lacks. */
public final class Needs {

  private Needs() {}

  /**
   * A value that children meet often, and of which much is lacking, comes first.
   *
   * @param times how often the value is met
   * @param gap as in {@link FullMaterial#gap}
   */
  private record Ranked(Correspondence value, int times, double gap) {
    static final Comparator<Ranked> GREATEST_FIRST =
        Comparator.comparingDouble((Ranked each) -> each.gap * each.times).reversed();

    static Ranked of(Correspondence value, int times, Lexicon lexicon, String accent) {
      Tally words = lexicon.tally(query(value, accent));
      return new Ranked(value, times, FullMaterial.gap(words, sentences(value, lexicon, accent)));
    }
  }

  /** For each value that the accent has, the greatest need first. */
  public static List<Need> in(Lexicon lexicon, String accent) {
    return ranked(lexicon, accent).stream().map(each -> need(each, lexicon, accent)).toList();
  }

  /** The values alone, which takes less time. */
  public static List<Correspondence> order(Lexicon lexicon, String accent) {
    return ranked(lexicon, accent).stream().map(Ranked::value).toList();
  }

  private static List<Ranked> ranked(Lexicon lexicon, String accent) {
    Regularity regularity = new Regularity(lexicon, accent);
    List<Ranked> ranked = new ArrayList<>();
    for (Correspondence value : lexicon.catalogue().correspondences()) {
      int times = regularity.times(value);
      if (value.isTaught() && times > 0) {
        ranked.add(Ranked.of(value, times, lexicon, accent));
      }
    }
    ranked.sort(Ranked.GREATEST_FIRST);
    return ranked;
  }

  private static Need need(Ranked ranked, Lexicon lexicon, String accent) {
    return Need.of(
        ranked.value,
        accent,
        ranked.times,
        lexicon.find(query(ranked.value, accent)),
        sentences(ranked.value, lexicon, accent));
  }

  private static WordQuery query(Correspondence value, String accent) {
    return WordQuery.of(accent, Standard.of(value));
  }

  private static int sentences(Correspondence value, Lexicon lexicon, String accent) {
    return lexicon.sentences().of(value, accent).size();
  }
}
