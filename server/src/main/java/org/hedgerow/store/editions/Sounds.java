package org.hedgerow.store.editions;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.Sound;

/** How the tables write sounds: IPA symbols of one accent separated by single spaces. */
final class Sounds {
  private Sounds() {}

  static List<Sound> read(String text, Accent accent) {
    List<Sound> sounds = new ArrayList<>();
    int start = 0;
    while (start < text.length()) {
      int space = text.indexOf(' ', start);
      int end = space < 0 ? text.length() : space;
      sounds.add(sound(text.substring(start, end), accent));
      start = end + 1;
    }
    return List.copyOf(sounds);
  }

  private static Sound sound(String symbol, Accent accent) {
    return accent
        .sound(symbol)
        .orElseThrow(
            () -> new IllegalStateException("/%s/ is no sound of %s".formatted(symbol, accent)));
  }
}
