package org.hedgerow.web.page;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Sound;

/**
 * Sounds as a teacher would write them to somebody who reads no phonetic alphabet. A help to the
 * ear beside the key word, not a notation: several sounds may share one (common practice, no
 * source).
 */
public final class SoundWords {

  private static final Map<String, String> WORDS =
      Map.ofEntries(
          entry("æ", "short a"),
          entry("ɛ", "short e"),
          entry("ɪ", "short i"),
          entry("ʌ", "short u"),
          entry("ʊ", "short oo"),
          entry("u", "long oo"),
          entry("ɑ", "“ah”"),
          entry("ɔ", "“aw”"),
          entry("i", "“ee”"),
          entry("eɪ", "“ay”"),
          entry("aɪ", "“eye”"),
          entry("ɔɪ", "“oy”"),
          entry("aʊ", "“ow”"),
          entry("oʊ", "“oh”"),
          entry("ə", "“uh”"),
          entry("ɚ", "“er”"),
          entry("ɝ", "“er”"),
          entry("tʃ", "“ch”"),
          entry("dʒ", "“j”"),
          entry("ʃ", "“sh”"),
          entry("ʒ", "“zh”"),
          entry("θ", "“th”"),
          entry("ð", "“th”"),
          entry("ŋ", "“ng”"),
          entry("ɡ", "“g”"),
          entry("ɹ", "“r”"),
          entry("j", "“y”"),
          entry("ɑɹ", "“ar”"),
          entry("ɔɹ", "“or”"),
          entry("ɛɹ", "“air”"),
          entry("ɪɹ", "“ear”"),
          entry("ʊɹ", "“oor”"),
          entry("aɪɚ", "“ire”"),
          entry("aʊɚ", "“our”"),
          entry("ju", "“you”"),
          entry("jʊɹ", "“your”"),
          entry("kw", "“kw”"),
          entry("ks", "“ks”"),
          entry("ɡz", "“gz”"),
          entry("əl", "“ul”"),
          entry("ɪd", "“id”"),
          entry("ɪz", "“iz”"),
          entry("e", "short e"),
          entry("ɒ", "short o"),
          entry("iː", "“ee”"),
          entry("uː", "long oo"),
          entry("ɑː", "“ah”"),
          entry("ɔː", "“aw”"),
          entry("ɜː", "“er”"),
          entry("əʊ", "“oh”"),
          entry("ɪə", "“ear”"),
          entry("eə", "“air”"),
          entry("ʊə", "“oor”"),
          entry("ɪəɹ", "“ear”"),
          entry("eəɹ", "“air”"),
          entry("ʊəɹ", "“oor”"),
          entry("ɔːɹ", "“or”"),
          entry("ɜːɹ", "“er”"),
          entry("aɪə", "“ire”"),
          entry("aʊə", "“our”"),
          entry("juː", "“you”"),
          entry("jʊ", "“you”"),
          entry("jʊə", "“your”"),
          entry("a", "short a"),
          entry("o", "“oh”"),
          entry("ʉ", "“oo”"),
          entry("ʌʉ", "“ow”"),
          entry("jʉ", "“you”"),
          entry("aɹ", "“ar”"),
          entry("oɹ", "“or”"),
          entry("eɹ", "“air”"),
          entry("iɹ", "“ear”"),
          entry("ʉɹ", "“oor”"),
          entry("jʉɹ", "“your”"),
          entry("ʌɹ", "“ur”"),
          entry("əɹ", "“er”"),
          entry("aɪəɹ", "“ire”"),
          entry("ʌʉəɹ", "“our”"),
          entry("ʍ", "“wh”"),
          entry("x", "“ch” as in loch"));

  /** Where a symbol stands for another sound than in the accents above. */
  private static final Map<String, Map<String, String>> ELSEWHERE =
      Map.of(
          "en-GB-scotland",
          Map.of("e", "“ay”", "ɔ", "short o", "ɛɹ", "“er”", "ɪɹ", "“ir”", "ɔɹ", "“or”"));

  private SoundWords() {}

  /** As in an accent, where it matters. */
  public static String of(String accent, List<Sound> sounds) {
    String word = ELSEWHERE.getOrDefault(accent, Map.of()).get(Sound.joined(sounds));
    return word == null ? of(sounds) : word;
  }

  /** As in {@code “oh”} or {@code short a}; the phonetic symbols where there is nothing better. */
  public static String of(List<Sound> sounds) {
    String ipa = Sound.joined(sounds);
    if (ipa.isEmpty()) {
      return "silent";
    }
    return WORDS.getOrDefault(ipa, ipa.matches("[a-z]") ? "“" + ipa + "”" : "/" + ipa + "/");
  }
}
