package org.hedgerow.phonics;

import java.util.List;
import java.util.Set;

/** What a span is to the spans beside it; see {@link LeftContext}. */
enum SpanPart {
  OTHER,
  SPLIT,
  LONG_VOWEL,
  VOWEL_LETTER,
  S,
  T,
  CONSONANT,
  /** A consonant that no word ends in without an e. */
  E_CONSONANT,
  /** The same, but never inside a split grapheme. */
  E_STEM,
  R,
  STRESSED_R,
  VOWEL_PAIR,
  /** A consonant that takes a silent e, with that e. */
  WITH_E,
  /** Other letters that end in a silent e. */
  ENDS_IN_E,
  /** A consonant with its silent ue, as in league and antique. */
  WITH_UE,
  /** The ending -le. */
  LE,
  LONE_E,
  /** A vowel letter other than e without a sound. */
  MUTE_VOWEL,
  /** The ending -ed without a vowel sound. */
  SILENT_ED;

  boolean isMute() {
    return this == LONE_E || this == MUTE_VOWEL;
  }

  boolean isConsonant() {
    return this == S || this == T || this == CONSONANT || this == E_CONSONANT;
  }

  private static final Set<String> CONSONANTS_WITH_E =
      Set.of("ces", "gedʒ", "geʒ", "ses", "sez", "vev", "zez", "theð");
  private static final Set<String> ENDING_IN_E =
      Set.of("are", "ere", "ire", "ore", "ure", "yre", "dge");
  private static final Set<String> ENDING_IN_UE = Set.of("gueɡ", "quek", "ngueŋ");
  private static final Set<String> CONSONANTS_IN_SPLIT =
      Set.of("b", "c", "d", "f", "g", "k", "l", "m", "n", "p", "v", "z", "ch", "th");
  private static final Set<String> E_CONSONANTS = Set.of("vv", "cs", "gdʒ", "gʒ", "zz", "thð");
  private static final Set<String> E_STEMS = Set.of("guɡ", "quk", "dgdʒ");
  private static final Set<String> WEAK_VOWELS = Set.of("ə", "ɚ");

  /**
   * @param splits whether the letter says the same with a consonant and a silent e behind it
   * @param takesR whether the catalogue has a longer grapheme for this one with an r after it
   */
  static SpanPart of(Realisation realisation, boolean splits, boolean takesR) {
    Grapheme grapheme = realisation.grapheme();
    String letters = grapheme.text();
    String spelt = letters + Sound.joined(realisation.sounds());
    if (grapheme.isSplit()) {
      return SPLIT;
    }
    if (realisation.isSilent()) {
      return mute(letters);
    }
    if (letters.equals("ed")) {
      return realisation.sounds().size() == 1 ? SILENT_ED : OTHER;
    }
    if (letters.length() == 1 && isVowelSaid(letters, realisation.sounds())) {
      return splits ? LONG_VOWEL : VOWEL_LETTER;
    }
    if (isVowelAndR(letters) && isStressed(letters, realisation.sounds())) {
      return STRESSED_R;
    }
    return takesR ? VOWEL_PAIR : consonant(letters, spelt);
  }

  private static SpanPart mute(String letters) {
    if (letters.equals("e")) {
      return LONE_E;
    }
    return SilentE.VOWEL_LETTERS.contains(letters) ? MUTE_VOWEL : OTHER;
  }

  private static SpanPart consonant(String letters, String spelt) {
    if (CONSONANTS_WITH_E.contains(spelt)) {
      return WITH_E;
    }
    if (ENDING_IN_E.contains(letters)) {
      return ENDS_IN_E;
    }
    if (ENDING_IN_UE.contains(spelt)) {
      return WITH_UE;
    }
    if (spelt.equals("cʃ")) {
      return OTHER;
    }
    if (E_CONSONANTS.contains(spelt)) {
      return E_CONSONANT;
    }
    if (E_STEMS.contains(spelt)) {
      return E_STEM;
    }
    return switch (letters) {
      case "le" -> LE;
      case "r", "rr" -> R;
      case "s" -> S;
      case "t" -> T;
      default -> CONSONANTS_IN_SPLIT.contains(letters) ? CONSONANT : OTHER;
    };
  }

  private static boolean isVowelSaid(String letters, List<Sound> sounds) {
    return SilentE.VOWEL_LETTERS.contains(letters) && sounds.get(sounds.size() - 1).vowel();
  }

  /** A weak ending -ure is said as a weak -ur, so those letters keep their e in any case. */
  private static boolean isStressed(String letters, List<Sound> sounds) {
    boolean weak = sounds.stream().anyMatch(sound -> WEAK_VOWELS.contains(sound.ipa()));
    return sounds.get(0).vowel() && (!weak || letters.equals("ur"));
  }

  private static boolean isVowelAndR(String letters) {
    return letters.length() == 2
        && letters.charAt(1) == 'r'
        && SilentE.VOWEL_LETTERS.indexOf(letters.charAt(0)) >= 0;
  }
}
