package org.hedgerow.phonics;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads a pronunciation: symbols separated by spaces, in the accent's IPA, in ARPAbet or in
 * X-SAMPA. A pronunciation is read in the first notation that knows every one of its symbols.
 */
public final class SoundReader {

  /** Everyday spellings of IPA symbols that are not quite the inventory's. */
  private static final Map<String, String> LOOSE = Map.of("g", "ɡ", "r", "ɹ", "ʧ", "tʃ", "ʤ", "dʒ");

  private final Accent accent;

  public SoundReader(Accent accent) {
    this.accent = accent;
  }

  /**
   * @throws UnknownSoundException naming the first symbol that IPA does not know, if no notation
   *     reads them all
   */
  public List<Sound> read(String pronunciation) {
    List<String> symbols = Arrays.asList(pronunciation.trim().split("\\s+"));
    return all(symbols, Optional::of)
        .or(() -> all(symbols, symbol -> Arpabet.ipa(symbol)))
        .or(() -> all(symbols, symbol -> XSampa.ipa(symbol).or(() -> Optional.of(symbol))))
        .orElseThrow(() -> new UnknownSoundException(firstUnknown(symbols)));
  }

  private Optional<List<Sound>> all(
      List<String> symbols, Function<String, Optional<String>> notation) {
    List<Sound> sounds =
        symbols.stream()
            .flatMap(symbol -> notation.apply(symbol).flatMap(this::known).stream())
            .toList();
    return sounds.size() == symbols.size() ? Optional.of(sounds) : Optional.empty();
  }

  private Optional<Sound> known(String ipa) {
    return accent.sound(LOOSE.getOrDefault(ipa, ipa));
  }

  private String firstUnknown(List<String> symbols) {
    return symbols.stream().filter(symbol -> known(symbol).isEmpty()).findFirst().orElseThrow();
  }
}
