package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where in a word a correspondence can stand.
 *
 * @param rule what is asked
 * @param letters the letters one of which must follow, for {@link Rule#BEFORE_LETTERS}
 */
public record SpellingContext(Rule rule, String letters) {

  /** What a place asks of its neighbours. */
  public enum Rule {
    /** Nothing. */
    ANYWHERE,
    /** To be at the first letter. */
    START,
    /** To be at the last letter. */
    END,
    /** To be at the last letter, or before a final {@code s}, {@code d} or {@code ed}. */
    STEM_END,
    /** To be directly before a vowel sound. */
    BEFORE_VOWEL,
    /** To be at the end, or before a consonant sound. */
    NOT_BEFORE_VOWEL,
    /** To be before one of some letters. */
    BEFORE_LETTERS,
    /** To be at the last letter, or before a final {@code ly} or {@code ness}, after /t/ or /d/. */
    AFTER_T_OR_D,
    /** To be at the last letter, after a hissing sound: /s z ʃ ʒ tʃ dʒ/. */
    AFTER_SIBILANT,
    /** To be directly after the sound /s/, /z/ or /ð/. */
    AFTER_FRICATIVE
  }

  /** No condition. */
  public static final SpellingContext ANYWHERE = new SpellingContext(Rule.ANYWHERE, "");

  private static final String BEFORE = "before ";
  private static final Set<String> AFTER_STEM = Set.of("", "s", "d", "ed");
  private static final Set<String> AFTER_PARTICIPLE = Set.of("", "ly", "ness");
  private static final Set<String> ALVEOLAR_STOPS = Set.of("t", "d");
  private static final Set<String> FRICATIVES = Set.of("s", "z", "ð");
  private static final Set<String> SIBILANTS = Set.of("s", "z", "ʃ", "ʒ", "tʃ", "dʒ");

  public SpellingContext {
    requireNonNull(rule);
    requireNonNull(letters);
  }

  /**
   * Reads the catalogue's words for a place: nothing, {@code start}, {@code end}, {@code stem end},
   * {@code before vowel}, {@code not before vowel}, {@code after t d}, {@code after sibilant},
   * {@code after fricative}, or {@code before} and letters, as in {@code before f k m v}.
   *
   * @throws IllegalArgumentException for any other text
   */
  public static SpellingContext parse(String text) {
    return switch (text) {
      case "" -> ANYWHERE;
      case "start" -> new SpellingContext(Rule.START, "");
      case "end" -> new SpellingContext(Rule.END, "");
      case "stem end" -> new SpellingContext(Rule.STEM_END, "");
      case "before vowel" -> new SpellingContext(Rule.BEFORE_VOWEL, "");
      case "not before vowel" -> new SpellingContext(Rule.NOT_BEFORE_VOWEL, "");
      case "after t d" -> new SpellingContext(Rule.AFTER_T_OR_D, "");
      case "after sibilant" -> new SpellingContext(Rule.AFTER_SIBILANT, "");
      case "after fricative" -> new SpellingContext(Rule.AFTER_FRICATIVE, "");
      default -> beforeLetters(text);
    };
  }

  /** The catalogue's words for it, as {@link #parse} reads them. */
  public String text() {
    return switch (rule) {
      case ANYWHERE -> "";
      case START -> "start";
      case END -> "end";
      case STEM_END -> "stem end";
      case BEFORE_VOWEL -> "before vowel";
      case NOT_BEFORE_VOWEL -> "not before vowel";
      case BEFORE_LETTERS -> BEFORE + String.join(" ", letters.split(""));
      case AFTER_T_OR_D -> "after t d";
      case AFTER_SIBILANT -> "after sibilant";
      case AFTER_FRICATIVE -> "after fricative";
    };
  }

  private static SpellingContext beforeLetters(String text) {
    if (!text.matches("before( [a-z])+")) {
      throw new IllegalArgumentException(
          "a place is start, end, stem end, before vowel, not before vowel, after t d, after"
              + " sibilant, after fricative, or before some letters, but not: "
              + text);
    }
    return new SpellingContext(
        Rule.BEFORE_LETTERS, text.substring(BEFORE.length()).replace(" ", ""));
  }

  /**
   * Whether letters {@code from} to {@code to} (exclusive) of a spelling stand at this place.
   *
   * @param soundBefore the sound before theirs, or null at the start
   * @param soundAfter the sound after theirs, or null at the end
   */
  boolean holds(
      String spelling, int from, int to, @Nullable Sound soundBefore, @Nullable Sound soundAfter) {
    return switch (rule) {
      case ANYWHERE -> true;
      case START -> from == 0;
      case END -> to == spelling.length();
      case STEM_END -> spelling.length() - to <= 2 && AFTER_STEM.contains(spelling.substring(to));
      case BEFORE_VOWEL -> isVowel(soundAfter);
      case NOT_BEFORE_VOWEL -> !isVowel(soundAfter);
      case BEFORE_LETTERS -> to < spelling.length() && letters.indexOf(spelling.charAt(to)) >= 0;
      case AFTER_T_OR_D ->
          AFTER_PARTICIPLE.contains(spelling.substring(to)) && isOneOf(ALVEOLAR_STOPS, soundBefore);
      case AFTER_SIBILANT -> to == spelling.length() && isOneOf(SIBILANTS, soundBefore);
      case AFTER_FRICATIVE -> isOneOf(FRICATIVES, soundBefore);
    };
  }

  private static boolean isVowel(@Nullable Sound sound) {
    return sound != null && sound.vowel();
  }

  private static boolean isOneOf(Set<String> sounds, @Nullable Sound sound) {
    return sound != null && sounds.contains(sound.ipa());
  }
}
