package org.hedgerow.web.query;

import static java.util.Comparator.comparingInt;

import java.util.List;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;

/** Finds common words of the bank that are spelt much like another. */
public final class NearbyWords {

  private static final int MOST_CHANGES = 2;
  private static final int MOST_WORDS = 3;

  private static final LevenshteinDistance DISTANCE = new LevenshteinDistance(MOST_CHANGES);

  private NearbyWords() {}

  private record Neighbour(String spelling, int changes) {}

  /** At most three, the nearest first; none that isn't fit for children. */
  public static List<String> to(String spelling, Lexicon lexicon) {
    return lexicon.words().stream()
        .filter(word -> isAsLong(word, spelling) && isFit(word))
        .map(word -> new Neighbour(word.spelling(), DISTANCE.apply(word.spelling(), spelling)))
        .filter(each -> each.changes() > 0)
        .sorted(comparingInt(Neighbour::changes))
        .limit(MOST_WORDS)
        .map(Neighbour::spelling)
        .toList();
  }

  private static boolean isFit(Word word) {
    return word.commonness() >= WordQuery.DEFAULT_COMMONNESS
        && !word.is(Tag.NOT_FOR_CHILDREN)
        && !word.is(Tag.NAME);
  }

  private static boolean isAsLong(Word word, String spelling) {
    return Math.abs(word.spelling().length() - spelling.length()) <= MOST_CHANGES;
  }
}
