package org.hedgerow.phonics;

/**
 * The little of the left neighbourhood that decides which span may come next. English gives every
 * silent e one home: a split grapheme if a long vowel letter stands one consonant before it, else
 * the consonant ({@code ve se ce ge ze the}) or vowel and r ({@code are ore ure}) that it follows;
 * only then it stands alone or opens an ending {@code ed}. An r after a vowel belongs to it unless
 * another vowel sound comes directly after. And two vowel letters for one sound are one grapheme,
 * never one letter and a silent one.
 *
 * <p>The conventions are listed in {@code seed/gold/CONVENTIONS.md}.
 */
enum LeftContext {
  PLAIN,
  /** A vowel letter that says anything but a long sound. */
  VOWEL,
  /** A vowel letter saying the sound it has in a split grapheme. */
  LONG,
  /** The same and one consonant. */
  LONG_CONSONANT,
  /** A consonant that a silent e would join. */
  E_HOME,
  /** An r, or a vowel letter and r, that a silent e would join. */
  STRESSED_R,
  /** A vowel letter without a sound. */
  MUTE,
  /** A vowel that makes a longer grapheme with the r after it. */
  VOWEL_PAIR,
  /** The first letter of a split grapheme. */
  SPLIT_HEAD,
  /** The same and an s, which a t may follow. */
  SPLIT_S,
  /** The same and its consonant; the e must follow. */
  SPLIT_BODY,
  /** The silent e of a split grapheme. */
  CLOSED;

  boolean isOpen() {
    return this == SPLIT_HEAD || this == SPLIT_S || this == SPLIT_BODY;
  }

  boolean canClose() {
    return this == SPLIT_S || this == SPLIT_BODY;
  }

  /** Whether the part may follow, given the letter and the kind of sound after it. */
  boolean allows(SpanPart part, char letterAfter, boolean vowelAfter) {
    boolean beforeR = letterAfter == 'r';
    if (part == SpanPart.WITH_E && (beforeR || SilentE.joins(letterAfter))) {
      return false;
    }
    if (part == SpanPart.ENDS_IN_E && SilentE.isNeedlessBefore(letterAfter)) {
      return false;
    }
    if ((part == SpanPart.LONE_E || part == SpanPart.WITH_UE) && SilentE.joins(letterAfter)) {
      return false;
    }
    return switch (this) {
      case PLAIN -> true;
      case VOWEL ->
          part != SpanPart.SILENT_ED && !part.isMute() && (vowelAfter || part != SpanPart.R);
      case LONG ->
          part != SpanPart.SILENT_ED
              && part != SpanPart.WITH_E
              && !part.isMute()
              && (vowelAfter || part != SpanPart.R);
      case LONG_CONSONANT, E_HOME ->
          part != SpanPart.SILENT_ED && (part != SpanPart.LONE_E || beforeR);
      case STRESSED_R -> part != SpanPart.SILENT_ED && part != SpanPart.LONE_E;
      case MUTE ->
          part != SpanPart.VOWEL_LETTER && part != SpanPart.LONG_VOWEL && part != SpanPart.LE;
      case CLOSED -> part != SpanPart.LE;
      case VOWEL_PAIR -> part != SpanPart.R;
      case SPLIT_HEAD -> part.isConsonant();
      case SPLIT_S -> part == SpanPart.T;
      case SPLIT_BODY -> false;
    };
  }

  /** The context after a part that is allowed. */
  LeftContext after(SpanPart part) {
    if (this == SPLIT_HEAD) {
      return part == SpanPart.S ? SPLIT_S : SPLIT_BODY;
    }
    if (this == SPLIT_S) {
      return SPLIT_BODY;
    }
    if (this == LONG && part.isConsonant()) {
      return LONG_CONSONANT;
    }
    return switch (part) {
      case SPLIT -> SPLIT_HEAD;
      case LONG_VOWEL -> LONG;
      case VOWEL_LETTER -> VOWEL;
      case S, E_CONSONANT, E_STEM -> E_HOME;
      case R, STRESSED_R -> STRESSED_R;
      case MUTE_VOWEL -> MUTE;
      case VOWEL_PAIR -> VOWEL_PAIR;
      case OTHER, T, CONSONANT, WITH_E, ENDS_IN_E, WITH_UE, LE, LONE_E, SILENT_ED -> PLAIN;
    };
  }
}
