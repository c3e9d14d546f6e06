package org.hedgerow.sentences.compose;

import java.util.Set;

/**
 * @param nouns that it may describe
 * @param kind what it says: <em>size, colour, taste…</em>
 * @param before whether it stands before its noun
 * @param after whether it stands after <em>is</em>
 * @param against adjectives that it can't stand beside
 */
public record Adjective(
    String text, Selection nouns, String kind, boolean before, boolean after, Set<String> against) {

  private static final Set<String> PASSING =
      Set.of("temperature", "weather", "mood", "sound", "light");

  private static final Set<Set<String>> TOGETHER =
      Set.of(
          Set.of("size", "colour"),
          Set.of("size", "mood"),
          Set.of("size", "age"),
          Set.of("temperature", "state"),
          Set.of("temperature", "taste"),
          Set.of("feel", "colour"),
          Set.of("feel", "temperature"),
          Set.of("state", "age"));

  public Adjective {
    against = Set.copyOf(against);
  }

  /**
   * Whether it tells what a thing is like, not how somebody is now: <em>big</em>, not
   * <em>asleep</em>.
   */
  private boolean isQuality() {
    return before;
  }

  /** Whether it comes and goes with the hour or the season: <em>cold, dark, happy</em>. */
  boolean passes() {
    return PASSING.contains(kind);
  }

  /** Whether both can be said of one thing. */
  public boolean goesWith(Adjective other) {
    return isQuality()
        && other.isQuality()
        && !kind.equals(other.kind)
        && !against.contains(other.text)
        && !other.against.contains(text);
  }

  /** Whether people say both in one breath: <em>big and red, cold and wet</em>. */
  boolean isSaidWith(Adjective other) {
    return goesWith(other) && TOGETHER.contains(Set.of(kind, other.kind));
  }
}
