package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.lexicon.Lexicon;

/** What a command does with the words of the bank. */
@FunctionalInterface
interface LexiconTask {
  /**
   * @param out for the answer
   * @param errors for remarks about it
   * @return the exit code
   */
  int run(Lexicon lexicon, PrintWriter out, PrintWriter errors);
}
