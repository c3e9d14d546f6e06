package org.hedgerow.web.page;

import java.util.List;
import org.hedgerow.phonics.Sound;

/**
 * Sounds in both ways they are shown.
 *
 * @param words in everyday letters
 * @param ipa in the phonetic alphabet; empty where nothing is heard
 */
public record Says(String words, String ipa) {

  public static Says of(List<Sound> sounds) {
    return new Says(SoundWords.of(sounds), Sound.joined(sounds));
  }

  boolean isSilent() {
    return ipa.isEmpty();
  }
}
