package org.hedgerow.web.page;

import java.util.List;
import org.hedgerow.phonics.Sound;

/**
 * Sounds in both ways they are shown.
 *
 * @param words in everyday letters
 * @param ipa in the phonetic alphabet; empty where nothing is heard
 */
public record SoundLabel(String words, String ipa) {

  public static SoundLabel of(List<Sound> sounds) {
    return new SoundLabel(SoundWords.of(sounds), Sound.joined(sounds));
  }

  boolean isSilent() {
    return ipa.isEmpty();
  }
}
