package org.hedgerow.web.page;

import java.util.List;
import org.hedgerow.reading.Finding;

/**
 * Why a word doesn't fit, or needs a look.
 *
 * @param word the word with the letters that it is about marked; empty if it is about all of them
 */
public record Reason(String message, List<Piece> word) {

  public static Reason of(String spelling, Finding finding) {
    List<Piece> word =
        finding.letters().isEmpty()
            ? List.of()
            : Piece.of(spelling, List.of(), List.of(finding.letters()));
    return new Reason(finding.message(), word);
  }
}
