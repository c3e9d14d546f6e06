package org.hedgerow.sentences;

import java.util.List;
import org.hedgerow.reading.Verdict;

/**
 * The judgement of a sentence.
 *
 * @param text as it was sent
 * @param targets how often the phonogram comes up
 * @param tokens in the order of the text
 * @param findings about the sentence; what was found of a word stands with the word
 */
public record SentenceCheck(
    String text,
    Verdict verdict,
    int targets,
    List<JudgedToken> tokens,
    List<SentenceFinding> findings) {

  public SentenceCheck {
    tokens = List.copyOf(tokens);
    findings = List.copyOf(findings);
  }
}
