package org.hedgerow.web.words;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.QueryString;
import org.hedgerow.web.query.TaughtReader;
import org.hedgerow.web.query.ValidationErrors;

/** Says what children would have to know for a word to fit its list after all. */
final class OnceTaught {

  private final Lexicon lexicon;
  private final WordRequest request;

  OnceTaught(Lexicon lexicon, WordRequest request) {
    this.lexicon = lexicon;
    this.request = request;
  }

  /** Empty if more stands in the way than phonograms that can be taught. */
  Optional<FittingList> of(CheckedWord subject, QueryString here) {
    Set<Correspondence> missing = missing(subject);
    if (missing.isEmpty() || !passesWith(missing, subject)) {
      return Optional.empty();
    }
    Set<Correspondence> taught = new HashSet<>(request.query().standard().taught());
    taught.addAll(missing);
    QueryString wider =
        here.without(ParameterNames.AFTER)
            .with(WordParameters.TAUGHT.name(), String.join(",", labels(taught)))
            .with(PageQuestion.WORD, subject.spelling());
    String name = "once %s taught".formatted(listed(labels(missing)));
    return Optional.of(new FittingList(name, ListAddress.ofList(wider)));
  }

  private Set<Correspondence> missing(CheckedWord subject) {
    Standard standard = request.query().standard();
    return request.query().accents().stream()
        .flatMap(accent -> subject.saidIn(accent).stream())
        .map(Pronunciation::alignment)
        .flatMap(Optional::stream)
        .flatMap(alignment -> alignment.spans().stream())
        .filter(span -> isMissing(span, standard))
        .map(Span::correspondence)
        .collect(Collectors.toSet());
  }

  private static boolean isMissing(Span span, Standard standard) {
    return span.correspondence().isTaught()
        && !standard.isTarget(span.correspondence())
        && !standard.allows(span.realisation(), false);
  }

  private boolean passesWith(Set<Correspondence> missing, CheckedWord subject) {
    Standard standard = request.query().standard();
    Set<Correspondence> taught = new HashSet<>(standard.taught());
    taught.addAll(missing);
    Standard wider = new Standard(standard.rules(), standard.targets(), taught);
    return new WordChecker(lexicon.catalogue())
            .check(subject, wider, request.query().accents())
            .verdict()
        == Verdict.PASS;
  }

  private List<String> labels(Set<Correspondence> taught) {
    return new TaughtReader(lexicon, request.query().accents().get(0), ValidationErrors.ofQuery())
        .labels(taught);
  }

  /** As in {@code ch is} or {@code ch, er2 are}. */
  private static String listed(List<String> labels) {
    return String.join(", ", labels) + (labels.size() == 1 ? " is" : " are");
  }
}
