package org.hedgerow.web.phonograms;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Tally;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;

/** All phonograms with their values. */
record PhonogramsView(int edition, String accent, List<Phonogram> phonograms) {

  record Phonogram(String grapheme, List<Value> values) {}

  /**
   * @param sound in IPA, several with spaces
   * @param note left out where there is nothing to say
   */
  record Value(
      int value,
      String sound,
      @JsonProperty("class") String kind,
      String keyWord,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String note,
      Words words) {}

  /**
   * How many words the default list has.
   *
   * @param starter those of the starter set that aren't approved
   * @param other those that are neither
   * @param picturable those that can be drawn or better
   * @param pictures those that have a picture
   */
  record Words(
      int total, int approved, int seeded, int starter, int other, int picturable, int pictures) {

    static Words of(Tally tally) {
      return new Words(
          tally.total(),
          tally.approved(),
          tally.seeded(),
          tally.starter(),
          tally.other(),
          tally.picturable(),
          tally.pictures());
    }
  }

  static PhonogramsView of(Lexicon lexicon, Accent accent, Map<Correspondence, Tally> counts) {
    return new PhonogramsView(
        lexicon.edition(),
        accent.tag(),
        lexicon.catalogue().phonograms().stream()
            .map(
                grapheme ->
                    new Phonogram(
                        grapheme,
                        lexicon.catalogue().values(grapheme).stream()
                            .filter(each -> !each.soundsIn(accent).isEmpty())
                            .map(each -> value(each, accent, counts))
                            .toList()))
            .toList());
  }

  private static Value value(
      Correspondence each, Accent accent, Map<Correspondence, Tally> counts) {
    Tally tally = counts.getOrDefault(each, Tally.NONE);
    return new Value(
        each.value().orElseThrow(),
        each.soundsIn(accent).stream().findFirst().map(Sound::spaced).orElse(""),
        each.kind().label(),
        each.keyWord(),
        each.note(),
        Words.of(tally));
  }
}
