package org.hedgerow.web.phonograms;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.web.chart.Chart;
import org.hedgerow.web.chart.ChartShape;
import org.hedgerow.web.chart.ChartValue;
import org.hedgerow.web.query.PhonogramReader;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;

/**
 * Finds phonograms in the chart: by their letters, by a sound, by their key word, or by any word
 * that holds them.
 */
public final class Finder {

  private final Chart chart;
  private final Lexicon lexicon;

  public Finder(Chart chart, Lexicon lexicon) {
    this.chart = chart;
    this.lexicon = lexicon;
  }

  /** The part of the chart that fits; perhaps nothing. */
  public Chart find(String text) {
    String wanted = folded(text);
    List<ChartShape> shapes =
        chart.shapes().stream().filter(shape -> shape.shape().equals(wanted)).toList();
    return new Chart(chart.accents(), values(wanted), shapes);
  }

  /** Capitals, slashes around a sound, and other ways to write a split grapheme don't matter. */
  private static String folded(String text) {
    return text.strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s/\\[\\]]", "")
        .replaceAll("[_–—]", "-");
  }

  private List<ChartValue> values(String wanted) {
    List<ChartValue> found = chart.values().stream().filter(value -> fits(value, wanted)).toList();
    return found.isEmpty() ? inWord(wanted) : found;
  }

  private static boolean fits(ChartValue value, String wanted) {
    return value.grapheme().contains(wanted)
        || value.says().ipa().equals(wanted)
        || (wanted.length() > 2 && value.keyWordText().startsWith(wanted));
  }

  private List<ChartValue> inWord(String spelling) {
    Set<Correspondence> inside =
        lexicon.word(spelling).stream().flatMap(this::correspondences).collect(Collectors.toSet());
    return chart.values().stream()
        .filter(value -> inside.contains(value.correspondence()))
        .toList();
  }

  private Stream<Correspondence> correspondences(Word word) {
    return word.pronunciationsIn(chart.accent().tag()).stream()
        .map(Pronunciation::alignment)
        .flatMap(Optional::stream)
        .flatMap(alignment -> alignment.spans().stream())
        .map(span -> span.correspondence());
  }

  /** The values of the phonogram that is perhaps meant. */
  public List<ChartValue> nearest(String text) {
    ValidationErrors errors = ValidationErrors.ofQuery();
    Optional<String> letters = Optional.of(folded(text));
    new PhonogramReader(lexicon.catalogue(), errors).target(letters, Optional.empty());
    return errors.list().stream()
        .map(ValidationError::nearest)
        .flatMap(Optional::stream)
        .flatMap(grapheme -> chart.valuesOf(grapheme).stream())
        .toList();
  }
}
