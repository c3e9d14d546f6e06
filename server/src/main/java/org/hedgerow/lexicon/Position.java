package org.hedgerow.lexicon;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Span;

/** Where in a word a sound is heard. */
public enum Position {
  START,
  MIDDLE,
  END;

  /** The name in queries, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The position with this label, if there is one. */
  public static Optional<Position> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }

  /** Whether a span of an alignment is heard here; silent letters do not count. */
  boolean holds(Alignment alignment, Span span) {
    List<Span> heard = alignment.spans().stream().filter(each -> !each.sounds().isEmpty()).toList();
    boolean first = heard.get(0).equals(span);
    boolean last = heard.get(heard.size() - 1).equals(span);
    return switch (this) {
      case START -> first;
      case END -> last;
      case MIDDLE -> !first && !last;
    };
  }
}
