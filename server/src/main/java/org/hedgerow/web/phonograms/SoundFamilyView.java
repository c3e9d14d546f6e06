package org.hedgerow.web.phonograms;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalInt;
import org.hedgerow.lexicon.SoundFamily;
import org.hedgerow.phonics.Correspondence;

/** A sound with all its spellings. */
record SoundFamilyView(int edition, String accent, String sound, List<Spelling> spellings) {

  private static final double TEN_THOUSANDTHS = 10_000;

  /**
   * @param value left out where it isn't taught on its own
   * @param words left out where it isn't taught on its own
   */
  record Spelling(
      String grapheme,
      OptionalInt value,
      @JsonProperty("class") String kind,
      String keyWord,
      double share,
      OptionalInt words,
      List<String> examples) {

    static Spelling of(SoundFamily.Spelling spelling) {
      Correspondence correspondence = spelling.correspondence();
      return new Spelling(
          correspondence.grapheme().text(),
          correspondence.value(),
          correspondence.kind().label(),
          spelling.keyWord(),
          Math.round(spelling.share() * TEN_THOUSANDTHS) / TEN_THOUSANDTHS,
          spelling.words(),
          spelling.examples());
    }
  }

  static SoundFamilyView of(int edition, String accent, SoundFamily family) {
    return new SoundFamilyView(
        edition,
        accent,
        family.sound().ipa(),
        family.spellings().stream().map(Spelling::of).toList());
  }
}
