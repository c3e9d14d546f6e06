package org.hedgerow.web.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.ContributionFinding;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.sentences.SentenceFinding;

/**
 * One of the machine's findings.
 *
 * @param accent the names of those where it was found; empty if it is about the word itself
 * @param verdict {@code fail} or {@code look}
 * @param overruled why a reviewer says that it is wrong; empty if nobody does
 */
record FindingView(
    String code, String letters, String message, String accent, String verdict, String overruled) {

  private static final Set<FindingCode> OVERRULABLE =
      Set.of(
          FindingCode.SMALL_MARGIN,
          FindingCode.NAME,
          FindingCode.NOT_FOR_CHILDREN,
          FindingCode.INFLECTED);

  /** The same found in several accents is said once. */
  static List<FindingView> all(
      ContributionKind kind,
      List<ContributionFinding> remarks,
      String word,
      Lexicon lexicon,
      Map<String, String> overruled) {
    Map<List<String>, FindingView> merged = new LinkedHashMap<>();
    for (ContributionFinding remark : remarks) {
      FindingView view = of(kind, remark, word, lexicon, overruled.getOrDefault(remark.code(), ""));
      merged.merge(List.of(view.code, view.letters, view.message), view, FindingView::and);
    }
    return List.copyOf(merged.values());
  }

  private FindingView and(FindingView same) {
    String accents = accent + ", " + same.accent;
    return new FindingView(code, letters, message, accents, verdict, overruled);
  }

  private static FindingView of(
      ContributionKind kind,
      ContributionFinding remark,
      String word,
      Lexicon lexicon,
      String overruled) {
    return new FindingView(
        remark.code(),
        letters(remark, word),
        remark.message(),
        lexicon.accent(remark.accent()).map(each -> each.accent().name()).orElse(""),
        verdict(kind, remark).label(),
        overruled);
  }

  static Verdict verdict(ContributionKind kind, ContributionFinding remark) {
    return SentenceFinding.Code.labelled(remark.code())
        .map(SentenceFinding.Code::verdict)
        .or(() -> ofWord(kind, remark.code()))
        .orElse(Verdict.LOOK);
  }

  /** Of a word in a sentence it is only why: whether it is blocked is said of the sentence. */
  private static Optional<Verdict> ofWord(ContributionKind kind, String code) {
    return kind == ContributionKind.SENTENCE
        ? Optional.empty()
        : FindingCode.labelled(code).map(FindingCode::verdict);
  }

  /** What follows from letters and sounds can't: there they are to be corrected. */
  boolean canBeOverruled() {
    return FindingCode.labelled(code).filter(OVERRULABLE::contains).isPresent();
  }

  private static String letters(ContributionFinding remark, String word) {
    StringBuilder letters = new StringBuilder();
    remark.letters().stream()
        .filter(letter -> letter < word.length())
        .forEach(letter -> letters.append(word.charAt(letter)));
    return letters.toString();
  }
}
