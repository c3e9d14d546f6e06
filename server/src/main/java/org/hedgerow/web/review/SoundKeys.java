package org.hedgerow.web.review;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.CorrespondenceClass;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.web.page.SoundWords;

/** The sounds of an accent, each with its plainest spelling and a word that shows it. */
final class SoundKeys {
  private final Lexicon lexicon;
  private final AccentCatalogue accent;
  private final Map<String, SoundKey> keys = new LinkedHashMap<>();

  SoundKeys(Lexicon lexicon, AccentCatalogue accent) {
    this.lexicon = lexicon;
    this.accent = accent;
    accent.accent().inventory().forEach(sound -> keys.put(sound.ipa(), key(sound)));
  }

  /** In the order of the inventory, vowels first. */
  List<SoundKey> all() {
    return List.copyOf(keys.values());
  }

  Optional<SoundKey> of(Sound sound) {
    return Optional.ofNullable(keys.get(sound.ipa()));
  }

  private SoundKey key(Sound sound) {
    List<Sound> alone = List.of(sound);
    String words = SoundWords.of(accent.accent().tag(), alone);
    return accent.realisations().stream()
        .filter(each -> each.sounds().equals(alone))
        .filter(each -> shows(each.correspondence(), alone))
        .min(
            Comparator.comparingInt(SoundKeys::plainness)
                .thenComparing(
                    each -> lexicon.occurrences(accent.accent().tag(), each),
                    Comparator.reverseOrder()))
        .map(Realisation::correspondence)
        .map(
            plain ->
                new SoundKey(
                    sound.ipa(), plain.grapheme().text(), plain.keyWord(), words, sound.vowel()))
        .orElseGet(() -> new SoundKey(sound.ipa(), "", "", words, sound.vowel()));
  }

  private boolean shows(Correspondence correspondence, List<Sound> sounds) {
    List<List<Sound>> ways = correspondence.soundsIn(accent.accent());
    return !correspondence.keyWord().isEmpty() && !ways.isEmpty() && ways.get(0).equals(sounds);
  }

  /** Letters that always go together show a sound best: {@code sh} rather than {@code ti}. */
  private static int phonogramsPlainness(Realisation realisation) {
    if (realisation.grapheme().letterCount() == 1) {
      return 3;
    }
    return realisation.correspondence().readsAsOne() ? 1 : 2;
  }

  private static boolean isWeak(Realisation realisation) {
    return realisation.sounds().stream().anyMatch(Sound::isSchwa);
  }

  private static int plainness(Realisation realisation) {
    CorrespondenceClass kind = realisation.correspondence().kind();
    return switch (kind) {
      case BASIC -> 0;
      case PHONOGRAM -> phonogramsPlainness(realisation);
      case DOUBLED, ENDING -> 4;
      case SILENT, IRREGULAR -> isWeak(realisation) ? 0 : 5;
    };
  }
}
