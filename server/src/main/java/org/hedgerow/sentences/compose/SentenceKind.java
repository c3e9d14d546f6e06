package org.hedgerow.sentences.compose;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a sentence does. */
public enum SentenceKind {
  STATEMENT("."),
  QUESTION("?"),
  COMMAND(".");

  private final String mark;

  SentenceKind(String mark) {
    this.mark = mark;
  }

  /** What it ends with. */
  public String mark() {
    return mark;
  }

  /** The name in answers and queries, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind with this label, if there is one. */
  public static Optional<SentenceKind> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
