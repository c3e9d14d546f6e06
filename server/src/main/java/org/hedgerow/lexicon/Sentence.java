package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.hedgerow.phonics.Correspondence;

/**
 * A sentence of the bank.
 *
 * @param text with its capital and its final mark
 * @param value the phonogram value that it is for
 * @param accents tags of the accents in which it is right
 */
public record Sentence(String text, Correspondence value, List<String> accents) {
  public Sentence {
    requireNonNull(text);
    requireNonNull(value);
    accents = List.copyOf(accents);
  }
}
