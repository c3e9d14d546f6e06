package org.hedgerow.review;

import java.util.List;
import org.hedgerow.reading.Finding;
import org.hedgerow.sentences.JudgedWord;
import org.hedgerow.sentences.SentenceFinding;

/**
 * A finding of the automatic check, recorded when a contribution was submitted.
 *
 * @param code of a {@link org.hedgerow.reading.FindingCode}, or one of our own
 * @param accent where it was found, or an empty text
 * @param letters positions from 0 of the letters it is about; may be empty
 * @param message for a teacher
 */
public record ContributionFinding(
    String code, String accent, List<Integer> letters, String message) {
  public ContributionFinding {
    letters = List.copyOf(letters);
  }

  static ContributionFinding of(SentenceFinding finding) {
    return new ContributionFinding(finding.code().label(), "", List.of(), finding.message());
  }

  /** About a word of a sentence, which the message names. */
  static ContributionFinding of(JudgedWord word, Finding finding) {
    return new ContributionFinding(
        finding.code().label(),
        finding.accent(),
        List.of(),
        "%s: %s".formatted(word.word(), finding.message()));
  }

  static ContributionFinding of(Finding finding) {
    return new ContributionFinding(
        finding.code().label(), finding.accent(), finding.letters(), finding.message());
  }
}
