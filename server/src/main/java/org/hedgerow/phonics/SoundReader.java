package org.hedgerow.phonics;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a pronunciation: symbols separated by spaces, in the accent's IPA, in ARPAbet or in
 * X-SAMPA. A pronunciation is read in the first notation that knows every one of its symbols.
 */
public final class SoundReader {

  /** Everyday spellings of IPA symbols that are not quite the inventory's. */
  private static final Map<String, String> LOOSE = Map.of("g", "ɡ", "r", "ɹ", "ʧ", "tʃ", "ʤ", "dʒ");

  /** Says what a symbol is in IPA, if it is a symbol of the notation. */
  private interface Notation {
    Optional<String> ipa(String symbol);
  }

  private static final List<Notation> NOTATIONS =
      List.of(
          Optional::of, Arpabet::ipa, symbol -> XSampa.ipa(symbol).or(() -> Optional.of(symbol)));

  private final Accent accent;

  public SoundReader(Accent accent) {
    this.accent = accent;
  }

  /**
   * @throws UnknownSoundException if no notation reads them all, naming the first symbol that isn't
   *     read in the notation that reads most
   */
  public List<Sound> read(String pronunciation) {
    List<String> symbols = Arrays.asList(pronunciation.trim().split("\\s+"));
    return NOTATIONS.stream()
        .map(notation -> all(symbols, notation))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseThrow(() -> unknown(symbols));
  }

  private Optional<List<Sound>> all(List<String> symbols, Notation notation) {
    List<Sound> sounds =
        symbols.stream().flatMap(symbol -> known(symbol, notation).stream()).toList();
    return sounds.size() == symbols.size() ? Optional.of(sounds) : Optional.empty();
  }

  private Optional<Sound> known(String symbol, Notation notation) {
    return notation.ipa(symbol).map(ipa -> LOOSE.getOrDefault(ipa, ipa)).flatMap(accent::sound);
  }

  /** {@code K OW1 T} where there is no /oʊ/ is meant in ARPAbet, and only OW1 is at error. */
  private UnknownSoundException unknown(List<String> symbols) {
    Notation meant = NOTATIONS.get(0);
    for (Notation each : NOTATIONS) {
      if (read(symbols, each) > read(symbols, meant)) {
        meant = each;
      }
    }
    Notation notation = meant;
    String symbol =
        symbols.stream().filter(each -> known(each, notation).isEmpty()).findFirst().orElseThrow();
    return new UnknownSoundException(symbol, ipa(symbol, notation));
  }

  private long read(List<String> symbols, Notation notation) {
    return symbols.stream().filter(symbol -> known(symbol, notation).isPresent()).count();
  }

  /** What a symbol means in IPA: in its notation, else where it is one. */
  private static String ipa(String symbol, Notation notation) {
    return notation
        .ipa(symbol)
        .filter(ipa -> !ipa.equals(symbol))
        .or(() -> Arpabet.ipa(symbol))
        .or(() -> XSampa.ipa(symbol))
        .orElse(symbol);
  }
}
