package org.hedgerow.phonics;

import java.util.List;
import java.util.Set;

/**
 * Which spans may stand next to each other. English gives every silent e one home: a split grapheme
 * if a long vowel letter stands one consonant before it, else the consonant ({@code ve se ce ge ze
 * the}) or vowel and r ({@code are ore ure}) that it follows; only then it stands alone or opens an
 * ending {@code ed}. And an r that follows a vowel of two letters belongs to it ({@code eer}), and
 * two vowel letters for one sound are one grapheme, never one letter and a silent one. A {@link
 * Context} remembers the little of the left neighbourhood which that takes.
 *
 * <p>The conventions are listed in {@code seed/gold/CONVENTIONS.md}.
 */
final class Adjacency {

  /** What has just been spelt. */
  enum Context {
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
  }

  /** What a realisation is to a silent e. */
  enum Part {
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
  }

  private static final char WORD_END = ' ';
  private static final char CONSONANT_Y = 'Y';

  private static final Set<String> CONSONANTS_WITH_E =
      Set.of("ces", "gedʒ", "geʒ", "ses", "sez", "vev", "zez", "theð");
  private static final Set<String> ENDING_IN_E =
      Set.of("are", "ere", "ire", "ore", "ure", "yre", "dge");
  private static final Set<String> ENDING_IN_UE = Set.of("gueɡ", "quek", "ngueŋ");
  private static final Set<String> CONSONANTS_IN_SPLIT =
      Set.of("b", "c", "d", "f", "g", "k", "l", "m", "n", "p", "v", "z", "ch", "th");
  private static final Set<String> LONG_SOUNDS =
      Set.of("aeɪ", "ei", "iaɪ", "ii", "ooʊ", "uu", "uju", "yaɪ");
  private static final Set<String> E_CONSONANTS = Set.of("vv", "cs", "gdʒ", "gʒ", "zz", "thð");
  private static final Set<String> E_STEMS = Set.of("guɡ", "quk", "dgdʒ");
  private static final Set<String> R_SOUNDS = Set.of("ɑɹ", "ɔɹ", "ɛɹ", "ɝ");
  private static final String VOWEL_LETTERS = "aeiouy";

  private Adjacency() {}

  /**
   * @param takesR whether the catalogue has a longer grapheme for this one with an r after it
   */
  static Part part(Realisation realisation, boolean takesR) {
    Grapheme grapheme = realisation.grapheme();
    String letters = grapheme.text();
    String spelt = letters + Sound.joined(realisation.sounds());
    if (grapheme.isSplit()) {
      return Part.SPLIT;
    }
    if (realisation.isSilent()) {
      return mute(letters);
    }
    if (letters.equals("ed")) {
      return realisation.sounds().size() == 1 ? Part.SILENT_ED : Part.OTHER;
    }
    if (letters.length() == 1 && isVowelSaid(letters, realisation.sounds())) {
      return LONG_SOUNDS.contains(spelt) ? Part.LONG_VOWEL : Part.VOWEL_LETTER;
    }
    if (isVowelAndR(letters)
        && (R_SOUNDS.contains(Sound.joined(realisation.sounds())) || spelt.equals("urɚ"))) {
      return Part.STRESSED_R;
    }
    return takesR ? Part.VOWEL_PAIR : consonant(letters, spelt);
  }

  private static Part mute(String letters) {
    if (letters.equals("e")) {
      return Part.LONE_E;
    }
    return VOWEL_LETTERS.contains(letters) ? Part.MUTE_VOWEL : Part.OTHER;
  }

  private static Part consonant(String letters, String spelt) {
    if (CONSONANTS_WITH_E.contains(spelt)) {
      return Part.WITH_E;
    }
    if (ENDING_IN_E.contains(letters)) {
      return Part.ENDS_IN_E;
    }
    if (ENDING_IN_UE.contains(spelt)) {
      return Part.WITH_UE;
    }
    if (spelt.equals("cʃ")) {
      return Part.OTHER;
    }
    if (E_CONSONANTS.contains(spelt)) {
      return Part.E_CONSONANT;
    }
    if (E_STEMS.contains(spelt)) {
      return Part.E_STEM;
    }
    return switch (letters) {
      case "le" -> Part.LE;
      case "r", "rr" -> Part.R;
      case "s" -> Part.S;
      case "t" -> Part.T;
      default -> CONSONANTS_IN_SPLIT.contains(letters) ? Part.CONSONANT : Part.OTHER;
    };
  }

  private static boolean isVowelSaid(String letters, List<Sound> sounds) {
    return VOWEL_LETTERS.contains(letters) && sounds.get(sounds.size() - 1).vowel();
  }

  private static boolean isVowelAndR(String letters) {
    return letters.length() == 2
        && letters.charAt(1) == 'r'
        && VOWEL_LETTERS.indexOf(letters.charAt(0)) >= 0;
  }

  /** Whether the part may follow, given the letter and the kind of sound after it. */
  static boolean allows(Context context, Part part, char letterAfter, boolean vowelAfter) {
    boolean beforeR = letterAfter == 'r';
    if (part == Part.WITH_E && (beforeR || joinsE(letterAfter))) {
      return false;
    }
    if (part == Part.ENDS_IN_E && needsNoE(letterAfter)) {
      return false;
    }
    if ((part == Part.LONE_E || part == Part.WITH_UE) && joinsE(letterAfter)) {
      return false;
    }
    return switch (context) {
      case PLAIN -> true;
      case VOWEL -> part != Part.SILENT_ED && !part.isMute() && (vowelAfter || part != Part.R);
      case LONG ->
          part != Part.SILENT_ED
              && part != Part.WITH_E
              && !part.isMute()
              && (vowelAfter || part != Part.R);
      case LONG_CONSONANT, E_HOME -> part != Part.SILENT_ED && (part != Part.LONE_E || beforeR);
      case STRESSED_R -> part != Part.SILENT_ED && part != Part.LONE_E;
      case MUTE -> part != Part.VOWEL_LETTER && part != Part.LONG_VOWEL && part != Part.LE;
      case CLOSED -> part != Part.LE;
      case VOWEL_PAIR -> part != Part.R;
      case SPLIT_HEAD -> part.isConsonant();
      case SPLIT_S -> part == Part.T;
      case SPLIT_BODY -> false;
    };
  }

  /** The letter at a position; a y that begins a syllable counts as none of the vowel letters. */
  static char letterAt(String spelling, int position) {
    if (position >= spelling.length()) {
      return WORD_END;
    }
    char letter = spelling.charAt(position);
    boolean opens =
        letter == 'y'
            && position + 1 < spelling.length()
            && VOWEL_LETTERS.indexOf(spelling.charAt(position + 1)) >= 0;
    return opens ? CONSONANT_Y : letter;
  }

  /** Letters before which c and g are soft and r is said without the help of an e. */
  static boolean needsNoE(char letter) {
    return letter == 'e' || letter == 'i' || letter == 'y';
  }

  /** Letters that make one grapheme with an e before them, so that the e is not silent. */
  private static boolean joinsE(char letter) {
    return needsNoE(letter) || letter == 'u';
  }

  /** The context after a part that is allowed. */
  static Context after(Context context, Part part) {
    if (context == Context.SPLIT_HEAD) {
      return part == Part.S ? Context.SPLIT_S : Context.SPLIT_BODY;
    }
    if (context == Context.SPLIT_S) {
      return Context.SPLIT_BODY;
    }
    if (context == Context.LONG && part.isConsonant()) {
      return Context.LONG_CONSONANT;
    }
    return switch (part) {
      case SPLIT -> Context.SPLIT_HEAD;
      case LONG_VOWEL -> Context.LONG;
      case VOWEL_LETTER -> Context.VOWEL;
      case S, E_CONSONANT, E_STEM -> Context.E_HOME;
      case R, STRESSED_R -> Context.STRESSED_R;
      case MUTE_VOWEL -> Context.MUTE;
      case VOWEL_PAIR -> Context.VOWEL_PAIR;
      case OTHER, T, CONSONANT, WITH_E, ENDS_IN_E, WITH_UE, LE, LONE_E, SILENT_ED -> Context.PLAIN;
    };
  }
}
