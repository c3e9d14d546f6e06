package org.hedgerow.sentences;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.reading.Verdict;

/**
 * One reason about a sentence as a whole.
 *
 * @param start where in the text it is about, in UTF-16 units
 * @param end after the last unit; the same as start where it is about the whole sentence
 * @param message for a teacher: what is wrong, and what to do
 */
public record SentenceFinding(Code code, int start, int end, String message) {

  /** The kinds of findings; codes are stable, programs may depend on them. */
  public enum Code {
    /** There is nothing to read. */
    NO_WORDS(Verdict.FAIL),
    /** The phonogram does not come up often enough. */
    TOO_FEW_TARGETS(Verdict.FAIL),
    /** There are words that the child can't read. */
    BLOCKED_WORDS(Verdict.FAIL),
    /** Letters of other scripts, symbols, emoji. */
    UNREADABLE(Verdict.FAIL),
    /** It is longer than wanted. */
    TOO_LONG(Verdict.LOOK),
    /** Digits stand for a word. */
    NUMBER(Verdict.LOOK),
    /** It does not start with a capital. */
    NO_CAPITAL(Verdict.LOOK),
    /** It does not end with a full stop, a question mark or an exclamation mark. */
    NO_FINAL_MARK(Verdict.LOOK);

    private final Verdict verdict;

    Code(Verdict verdict) {
      this.verdict = verdict;
    }

    /** The best verdict that a sentence with such a finding can get. */
    public Verdict verdict() {
      return verdict;
    }

    /** The code with this label, if there is one. */
    public static Optional<Code> labelled(String label) {
      return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
    }

    /** The code in answers, in lower case with hyphens. */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
