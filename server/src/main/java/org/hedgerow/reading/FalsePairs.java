package org.hedgerow.reading;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Span;

/**
 * Finds letters that look like a phonogram but say separate sounds, each on its own: the s and h of
 * <em>mishap</em>. Which phonograms a reader takes for one wherever their letters meet is said in
 * the catalogue.
 */
public final class FalsePairs {

  /**
   * One find.
   *
   * @param grapheme the phonogram that the letters look like
   * @param letters their positions
   */
  public record Pair(String grapheme, List<Integer> letters) {}

  private static final int LETTERS = 26;

  private final Set<String> readAsOne;
  private final int longest;
  private final boolean[] beginnings = new boolean[LETTERS * LETTERS];

  public FalsePairs(Catalogue catalogue) {
    this.readAsOne =
        catalogue.correspondences().stream()
            .filter(Correspondence::readsAsOne)
            .map(each -> each.grapheme().text())
            .collect(toUnmodifiableSet());
    this.longest = readAsOne.stream().mapToInt(String::length).max().orElse(0);
    readAsOne.forEach(
        letters -> beginnings[beginning(letters.charAt(0), letters.charAt(1))] = true);
  }

  private static int beginning(char first, char second) {
    return (first - 'a') * LETTERS + second - 'a';
  }

  /** All finds in a word, in the order of their first letter. */
  public List<Pair> in(Alignment alignment) {
    List<Pair> pairs = new ArrayList<>();
    List<Span> spans = alignment.spans();
    for (int start = 0; start + 1 < spans.size(); start++) {
      if (canBegin(spans.get(start), spans.get(start + 1))) {
        addPairs(spans, start, pairs);
      }
    }
    return pairs;
  }

  /** A quick look that spares most letters the closer one. */
  private boolean canBegin(Span first, Span second) {
    return isAlone(first)
        && isAlone(second)
        && beginnings[
            beginning(first.grapheme().text().charAt(0), second.grapheme().text().charAt(0))];
  }

  private void addPairs(List<Span> spans, int start, List<Pair> pairs) {
    StringBuilder letters = new StringBuilder();
    int first = spans.get(start).firstLetter();
    for (int end = start; end < spans.size() && letters.length() < longest; end++) {
      if (!isAlone(spans.get(end)) || spans.get(end).firstLetter() != first + letters.length()) {
        return;
      }
      letters.append(spans.get(end).grapheme());
      if (readAsOne.contains(letters.toString())) {
        pairs.add(pair(letters.toString(), first));
      }
    }
  }

  private static Pair pair(String letters, int first) {
    return new Pair(letters, IntStream.range(first, first + letters.length()).boxed().toList());
  }

  private static boolean isAlone(Span span) {
    return span.letters().size() == 1;
  }
}
