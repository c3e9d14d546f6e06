package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.chart.ChartShape;
import org.hedgerow.web.chart.ChartValue;
import org.hedgerow.web.page.SoundLabel;

/**
 * What a list is about: a value, else a sound, else words without a phonogram.
 *
 * @param value the value of a phonogram
 * @param sound the sound, in all its spellings
 * @param values all values of the phonogram
 * @param shapes the shapes to choose from where there is no phonogram
 * @param shape the shape asked for, or an empty text
 */
record Topic(
    Optional<ChartValue> value,
    Optional<SoundLabel> sound,
    List<ChartValue> values,
    List<ChartShape> shapes,
    String shape) {

  /** As in {@code oa as in boat}, for titles and the middle of sentences. */
  String name() {
    if (value.isPresent()) {
      return "%s as in %s".formatted(value.get().grapheme(), value.get().keyWordText());
    }
    if (sound.isPresent()) {
      return "the sound " + sound.get().words();
    }
    return "words without a phonogram";
  }

  /** What a word is checked for. */
  String purpose() {
    return isPlain() ? "a list without phonograms" : name();
  }

  boolean isPlain() {
    return value.isEmpty() && sound.isEmpty();
  }
}
