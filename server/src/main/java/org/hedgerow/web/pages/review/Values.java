package org.hedgerow.web.pages.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;

/** The phonogram values, as people choose them: {@code oa as in boat}. */
record Values(Lexicon lexicon) {
  List<Option> options(String unchosen, String chosen) {
    List<Option> options = new ArrayList<>();
    options.add(Option.of("", unchosen, chosen));
    lexicon.catalogue().correspondences().stream()
        .filter(Correspondence::isTaught)
        .sorted(
            Comparator.comparing(Correspondence::grapheme)
                .thenComparing(each -> each.value().orElse(0)))
        .map(each -> Option.of(each.label(), words(each), chosen))
        .forEach(options::add);
    return options;
  }

  /** Of a label such as {@code oa 1}; the label itself where there is no such value. */
  String words(String label) {
    return lexicon.catalogue().correspondences().stream()
        .filter(each -> each.isTaught() && each.label().equals(label))
        .findFirst()
        .map(Values::words)
        .orElse(label);
  }

  private static String words(Correspondence value) {
    return "%s as in %s".formatted(value.grapheme(), value.keyWord());
  }
}
