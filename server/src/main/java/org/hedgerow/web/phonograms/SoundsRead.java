package org.hedgerow.web.phonograms;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.SoundFamily;
import org.hedgerow.phonics.Accent;
import org.hedgerow.web.http.AccentParameter;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.query.Parameters;

/** {@code GET /sounds}: the inventory of an accent. */
final class SoundsRead implements Read {

  private final Json json;
  private final CachedSoundFamilies families;

  SoundsRead(Json json, CachedSoundFamilies families) {
    this.json = json;
    this.families = families;
  }

  /** All sounds of an accent. */
  record View(int edition, String accent, List<SoundView> sounds) {
    static View of(int edition, Accent accent, Collection<SoundFamily> families) {
      return new View(edition, accent.tag(), families.stream().map(SoundView::of).toList());
    }
  }

  /**
   * @param arpabet left out where no source gives it
   * @param spellings how many there are
   */
  record SoundView(
      String sound,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String arpabet,
      String kind,
      String keyWord,
      int spellings) {

    static SoundView of(SoundFamily family) {
      return new SoundView(
          family.sound().ipa(),
          family.arpabet(),
          family.sound().vowel() ? "vowel" : "consonant",
          family.keyWord(),
          family.spellings().size());
    }
  }

  @Override
  public List<String> parameters() {
    return AccentParameter.NAMES;
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    Accent accent = AccentParameter.one(lexicon, parameters);
    return Question.json(
        "sounds?" + accent.tag(),
        json,
        () -> View.of(lexicon.edition(), accent, families.all(lexicon, accent.tag())));
  }
}
