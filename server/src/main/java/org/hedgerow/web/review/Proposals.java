package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;

/** What the bank proposes before anybody has said how a word sounds. */
record Proposals(Lexicon lexicon) {
  private static final String WORD = "[a-z]{1,40}";

  /**
   * The sounds of a word in an accent: the bank's entry where it has one, else a guess from the
   * letters; an empty text where nothing comes out.
   */
  String sounds(String spelling, String accent) {
    if (!spelling.matches(WORD) || lexicon.accent(accent).isEmpty()) {
      return "";
    }
    return entry(spelling, accent)
        .or(() -> lexicon.guess(spelling, accent))
        .map(said -> Sound.spaced(said.sounds()))
        .orElse("");
  }

  private Optional<Pronunciation> entry(String spelling, String accent) {
    return lexicon.word(spelling).stream()
        .flatMap(word -> word.pronunciationsIn(accent).stream())
        .filter(said -> knows(accent, said.sounds()))
        .findFirst();
  }

  /** An accent that falls back on another may lack some of its sounds. */
  private boolean knows(String accent, List<Sound> sounds) {
    return sounds.stream()
        .allMatch(
            sound -> lexicon.accent(accent).orElseThrow().accent().sound(sound.ipa()).isPresent());
  }

  String first() {
    return lexicon.accents().get(0).accent().tag();
  }

  /** An accent that none of these is, for the next way to say a word; else the first. */
  String accentBeside(List<String> taken) {
    return lexicon.accents().stream()
        .map(each -> each.accent().tag())
        .filter(tag -> !taken.contains(tag))
        .findFirst()
        .orElse(first());
  }
}
