package org.hedgerow.web.page;

import java.util.List;
import org.hedgerow.reading.Finding;

/**
 * Why a word doesn't fit, or needs a look.
 *
 * @param word the word with the letters that it is about marked; empty if it is about all of them
 */
public record WordFinding(String message, List<LetterRun> word) {

  public static WordFinding of(String spelling, Finding finding) {
    List<LetterRun> word =
        finding.letters().isEmpty()
            ? List.of()
            : LetterRun.of(spelling, List.of(), List.of(finding.letters()));
    return new WordFinding(finding.message(), word);
  }
}
