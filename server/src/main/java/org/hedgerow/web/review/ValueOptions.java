package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Verdict;
import org.hedgerow.web.page.TaughtValues;

/** The phonogram values, as options of a field. */
record ValueOptions(Lexicon lexicon) {
  List<Option> options(String unchosen, String chosen) {
    List<Option> options = new ArrayList<>();
    options.add(Option.of("", unchosen, chosen));
    TaughtValues.of(lexicon).stream()
        .map(each -> Option.of(each.label(), TaughtValues.words(each), chosen))
        .forEach(options::add);
    return options;
  }

  /** The lists that something fits, in words: none if it is no good as it stands. */
  List<String> fitted(List<String> labels, Verdict verdict) {
    return verdict == Verdict.FAIL ? List.of() : labels.stream().map(this::words).toList();
  }

  /** Of a label such as {@code oa 1}; the label itself where there is no such value. */
  String words(String label) {
    return TaughtValues.labelled(lexicon, label).map(TaughtValues::words).orElse(label);
  }
}
