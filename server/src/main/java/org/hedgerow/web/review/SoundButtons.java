package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.review.ProposedPronunciation;

/**
 * The buttons of a block of sounds: {@code say-0-oʊ} adds a sound to the first block, {@code
 * unsay-0} takes its last away.
 */
final class SoundButtons {
  private SoundButtons() {}

  static ProposedPronunciation after(String button, ProposedPronunciation spoken, int block) {
    String say = "say-" + block + "-";
    if (button.startsWith(say)) {
      return withSounds(spoken, spoken.sounds() + " " + button.substring(say.length()));
    }
    return button.equals("unsay-" + block)
        ? withSounds(spoken, spoken.sounds().replaceFirst("(^|\\s+)\\S+$", ""))
        : spoken;
  }

  private static ProposedPronunciation withSounds(ProposedPronunciation spoken, String sounds) {
    return new ProposedPronunciation(spoken.accent(), sounds, List.of());
  }
}
