package org.hedgerow.web.pages;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Shape;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.Standard;
import org.hedgerow.web.query.ValueCounts;
import org.jspecify.annotations.Nullable;

/** Makes the chart of an edition, once: it counts some two hundred lists. Safe for many threads. */
final class ChartMaker {

  /** Shapes with fewer words make no material. */
  private static final int ENOUGH = 8;

  private record Made(Lexicon lexicon, Chart chart) {}

  private final ValueCounts counts;
  private final AtomicReference<@Nullable Made> last = new AtomicReference<>();

  ChartMaker(ValueCounts counts) {
    this.counts = counts;
  }

  Chart chart(Lexicon lexicon) {
    Made made = last.get();
    if (made == null || made.lexicon() != lexicon) {
      made = new Made(lexicon, make(lexicon));
      last.set(made);
    }
    return made.chart();
  }

  private Chart make(Lexicon lexicon) {
    Accent accent = lexicon.accents().get(0).accent();
    Map<Correspondence, ValueCounts.Count> words = counts.in(lexicon, accent.tag());
    List<ChartValue> values = new ArrayList<>();
    for (String grapheme : lexicon.catalogue().phonograms()) {
      for (Correspondence each : lexicon.catalogue().values(grapheme)) {
        if (!each.soundsIn(accent).isEmpty()) {
          int total = requireNonNull(words.get(each)).total();
          values.add(value(each, lexicon, accent, total));
        }
      }
    }
    return new Chart(accent, values, shapes(lexicon, accent));
  }

  private static ChartValue value(Correspondence each, Lexicon lexicon, Accent accent, int words) {
    List<Sound> sounds = each.soundsIn(accent).stream().findFirst().orElse(List.of());
    return new ChartValue(
        each, KeyWord.pieces(each, lexicon, accent), Says.of(sounds), sounds.size(), words);
  }

  /** The shapes of one syllable, shortest first. */
  private static List<ChartShape> shapes(Lexicon lexicon, Accent accent) {
    Map<String, List<Word>> byShape = new LinkedHashMap<>();
    for (Word word : lexicon.find(WordQuery.of(accent.tag(), Standard.basic()))) {
      ShownWord.of(word, accent.tag())
          .alignment()
          .map(Shape::of)
          .ifPresent(
              shape -> byShape.computeIfAbsent(shape, missing -> new ArrayList<>()).add(word));
    }
    return byShape.entrySet().stream()
        .filter(entry -> isOfOneSyllable(entry.getKey()) && entry.getValue().size() >= ENOUGH)
        .map(entry -> shape(entry.getKey(), entry.getValue()))
        .sorted(
            Comparator.comparing((ChartShape shape) -> shape.shape().length())
                .thenComparing(Comparator.comparing(ChartShape::words).reversed()))
        .toList();
  }

  private static boolean isOfOneSyllable(String shape) {
    return shape.indexOf('v') == shape.lastIndexOf('v');
  }

  private static ChartShape shape(String shape, List<Word> words) {
    return new ChartShape(shape, words.get(0).spelling(), words.size());
  }
}
