package org.hedgerow.phonics;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * ARPAbet, the notation of the CMU Pronouncing Dictionary: a phone in capitals, and on vowels a
 * digit for stress (0 none, 1 primary, 2 secondary). Unstressed AH is /ə/ and unstressed ER is /ɚ/.
 *
 * <p>Source: the dictionary's own documentation and its file of phones.
 */
public final class Arpabet {

  private static final Map<String, String> IPA =
      Map.ofEntries(
          Map.entry("AA", "ɑ"),
          Map.entry("AE", "æ"),
          Map.entry("AH", "ʌ"),
          Map.entry("AO", "ɔ"),
          Map.entry("AW", "aʊ"),
          Map.entry("AY", "aɪ"),
          Map.entry("EH", "ɛ"),
          Map.entry("ER", "ɝ"),
          Map.entry("EY", "eɪ"),
          Map.entry("IH", "ɪ"),
          Map.entry("IY", "i"),
          Map.entry("OW", "oʊ"),
          Map.entry("OY", "ɔɪ"),
          Map.entry("UH", "ʊ"),
          Map.entry("UW", "u"),
          Map.entry("B", "b"),
          Map.entry("CH", "tʃ"),
          Map.entry("D", "d"),
          Map.entry("DH", "ð"),
          Map.entry("F", "f"),
          Map.entry("G", "ɡ"),
          Map.entry("HH", "h"),
          Map.entry("JH", "dʒ"),
          Map.entry("K", "k"),
          Map.entry("L", "l"),
          Map.entry("M", "m"),
          Map.entry("N", "n"),
          Map.entry("NG", "ŋ"),
          Map.entry("P", "p"),
          Map.entry("R", "ɹ"),
          Map.entry("S", "s"),
          Map.entry("SH", "ʃ"),
          Map.entry("T", "t"),
          Map.entry("TH", "θ"),
          Map.entry("V", "v"),
          Map.entry("W", "w"),
          Map.entry("Y", "j"),
          Map.entry("Z", "z"),
          Map.entry("ZH", "ʒ"));

  private static final Map<String, String> UNSTRESSED = Map.of("AH0", "ə", "ER0", "ɚ");

  private Arpabet() {}

  /** The IPA symbol of a phone such as {@code OW1}, if it is one. */
  public static Optional<String> ipa(String phone) {
    String unstressed = UNSTRESSED.get(phone);
    return Optional.ofNullable(
        unstressed != null ? unstressed : IPA.get(phone.replaceFirst("[012]$", "")));
  }

  /**
   * The IPA symbols of a pronunciation.
   *
   * @throws UnknownSoundException if a phone is none of ARPAbet's
   */
  public static List<String> toIpa(String phones) {
    return Arrays.stream(phones.split(" "))
        .map(phone -> ipa(phone).orElseThrow(() -> new UnknownSoundException(phone)))
        .toList();
  }
}
