package org.hedgerow.phonics;

import java.util.Map;
import java.util.Optional;

/**
 * X-SAMPA, IPA written in plain characters.
 *
 * <p>Source: J. C. Wells, "Computer-coding the IPA: a proposed extension of SAMPA", University
 * College London, 1995.
 */
final class XSampa {

  private static final Map<String, String> IPA =
      Map.ofEntries(
          Map.entry("I", "ɪ"),
          Map.entry("E", "ɛ"),
          Map.entry("{", "æ"),
          Map.entry("A", "ɑ"),
          Map.entry("O", "ɔ"),
          Map.entry("U", "ʊ"),
          Map.entry("V", "ʌ"),
          Map.entry("@", "ə"),
          Map.entry("3`", "ɝ"),
          Map.entry("@`", "ɚ"),
          Map.entry("eI", "eɪ"),
          Map.entry("aI", "aɪ"),
          Map.entry("OI", "ɔɪ"),
          Map.entry("aU", "aʊ"),
          Map.entry("oU", "oʊ"),
          Map.entry("Q", "ɒ"),
          Map.entry("i:", "iː"),
          Map.entry("u:", "uː"),
          Map.entry("A:", "ɑː"),
          Map.entry("O:", "ɔː"),
          Map.entry("3:", "ɜː"),
          Map.entry("@U", "əʊ"),
          Map.entry("I@", "ɪə"),
          Map.entry("e@", "eə"),
          Map.entry("U@", "ʊə"),
          Map.entry("g", "ɡ"),
          Map.entry("tS", "tʃ"),
          Map.entry("dZ", "dʒ"),
          Map.entry("T", "θ"),
          Map.entry("D", "ð"),
          Map.entry("S", "ʃ"),
          Map.entry("Z", "ʒ"),
          Map.entry("N", "ŋ"),
          Map.entry("r\\", "ɹ"));

  private XSampa() {}

  static Optional<String> ipa(String symbol) {
    return Optional.ofNullable(IPA.get(symbol));
  }
}
