package org.hedgerow.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;

/** The phonogram values that sentences can be for, as one field of a form. */
final class SentenceValues {

  private SentenceValues() {}

  static List<Choice> choices(Lexicon lexicon, Optional<Correspondence> chosen) {
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", "No phonogram", chosen.isEmpty()));
    taught(lexicon).stream()
        .map(each -> new Choice(each.label(), words(each), chosen.filter(each::equals).isPresent()))
        .forEach(choices::add);
    return choices;
  }

  /** Of a label such as {@code oa 1}. */
  static Optional<Correspondence> labelled(Lexicon lexicon, String label) {
    return taught(lexicon).stream().filter(each -> each.label().equals(label)).findFirst();
  }

  private static List<Correspondence> taught(Lexicon lexicon) {
    return lexicon.catalogue().correspondences().stream()
        .filter(Correspondence::isTaught)
        .sorted(
            Comparator.comparing(Correspondence::grapheme)
                .thenComparing(each -> each.value().orElse(0)))
        .toList();
  }

  static String words(Correspondence value) {
    return "%s as in %s".formatted(value.grapheme(), value.keyWord());
  }
}
