package org.hedgerow.web.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.Verdict;
import org.hedgerow.review.Kind;
import org.hedgerow.review.Remark;
import org.hedgerow.sentences.SentenceFinding;

/**
 * One of the machine's findings.
 *
 * @param accent the names of those where it was found; empty if it is about the word itself
 * @param verdict {@code fail} or {@code look}
 * @param overruled why a reviewer says that it is wrong; empty if nobody does
 */
record ReasonView(
    String code, String letters, String message, String accent, String verdict, String overruled) {

  private static final Set<FindingCode> OVERRULABLE =
      Set.of(
          FindingCode.SMALL_MARGIN,
          FindingCode.NAME,
          FindingCode.NOT_FOR_CHILDREN,
          FindingCode.INFLECTED);

  /** The same found in several accents is said once. */
  static List<ReasonView> all(
      Kind kind,
      List<Remark> remarks,
      String word,
      Lexicon lexicon,
      Map<String, String> overruled) {
    Map<List<String>, ReasonView> merged = new LinkedHashMap<>();
    for (Remark remark : remarks) {
      ReasonView view = of(kind, remark, word, lexicon, overruled.getOrDefault(remark.code(), ""));
      merged.merge(List.of(view.code, view.letters, view.message), view, ReasonView::and);
    }
    return List.copyOf(merged.values());
  }

  private ReasonView and(ReasonView same) {
    String accents = accent + ", " + same.accent;
    return new ReasonView(code, letters, message, accents, verdict, overruled);
  }

  private static ReasonView of(
      Kind kind, Remark remark, String word, Lexicon lexicon, String overruled) {
    return new ReasonView(
        remark.code(),
        letters(remark, word),
        remark.message(),
        lexicon.accent(remark.accent()).map(each -> each.accent().name()).orElse(""),
        verdict(kind, remark).label(),
        overruled);
  }

  static Verdict verdict(Kind kind, Remark remark) {
    return SentenceFinding.Code.labelled(remark.code())
        .map(SentenceFinding.Code::verdict)
        .or(() -> ofWord(kind, remark.code()))
        .orElse(Verdict.LOOK);
  }

  /** Of a word in a sentence it is only why: whether it is blocked is said of the sentence. */
  private static Optional<Verdict> ofWord(Kind kind, String code) {
    return kind == Kind.SENTENCE
        ? Optional.empty()
        : FindingCode.labelled(code).map(FindingCode::verdict);
  }

  /** What follows from letters and sounds can't: there they are to be corrected. */
  boolean canBeOverruled() {
    return FindingCode.labelled(code).filter(OVERRULABLE::contains).isPresent();
  }

  private static String letters(Remark remark, String word) {
    StringBuilder letters = new StringBuilder();
    remark.letters().stream()
        .filter(letter -> letter < word.length())
        .forEach(letter -> letters.append(word.charAt(letter)));
    return letters.toString();
  }
}
