package org.hedgerow.web.page;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;

/** The phonogram values to choose from, as people call them: {@code oa as in boat}. */
public final class TaughtValues {

  private TaughtValues() {}

  /** All of them, by alphabet and number. */
  public static List<Correspondence> of(Lexicon lexicon) {
    return lexicon.catalogue().correspondences().stream()
        .filter(Correspondence::isTaught)
        .sorted(
            Comparator.comparing(Correspondence::grapheme)
                .thenComparing(each -> each.value().orElse(0)))
        .toList();
  }

  /** The value with a label such as {@code oa 1}, if there is one. */
  public static Optional<Correspondence> labelled(Lexicon lexicon, String label) {
    return of(lexicon).stream().filter(each -> each.label().equals(label)).findFirst();
  }

  /** As in {@code oa as in boat}. */
  public static String words(Correspondence value) {
    return "%s as in %s".formatted(value.grapheme(), value.keyWord());
  }
}
