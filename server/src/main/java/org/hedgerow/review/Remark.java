package org.hedgerow.review;

import java.util.List;
import org.hedgerow.reading.Finding;
import org.hedgerow.sentences.JudgedWord;
import org.hedgerow.sentences.SentenceFinding;

/**
 * What the machine found about a contribution when it was submitted.
 *
 * @param code of a {@link org.hedgerow.reading.FindingCode}, or one of our own
 * @param accent where it was found, or an empty text
 * @param letters positions from 0 of the letters it is about; may be empty
 * @param message for a teacher
 */
public record Remark(String code, String accent, List<Integer> letters, String message) {
  public Remark {
    letters = List.copyOf(letters);
  }

  static Remark of(SentenceFinding finding) {
    return new Remark(finding.code().label(), "", List.of(), finding.message());
  }

  /** About a word of a sentence, which the message names. */
  static Remark of(JudgedWord word, Finding finding) {
    return new Remark(
        finding.code().label(),
        finding.accent(),
        List.of(),
        "%s: %s".formatted(word.word(), finding.message()));
  }

  static Remark of(Finding finding) {
    return new Remark(
        finding.code().label(), finding.accent(), finding.letters(), finding.message());
  }
}
