package org.hedgerow.web.chart;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
import java.util.List;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.Standard;
import org.hedgerow.web.http.RecentQueries;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.SoundLabel;
import org.hedgerow.web.query.ValueCounts;

/**
 * Makes the charts of an edition, each once: it counts some two hundred lists. Safe for many
 * threads.
 */
public final class ChartMaker {

  /** Shapes with fewer words make no material. */
  private static final int ENOUGH = 8;

  private static final int CHARTS_AT_ONCE = 16;

  private record Key(Lexicon lexicon, List<String> accents) {}

  private final ValueCounts counts;
  private final ComputingCache<Key, Chart> charts = ComputingCache.ofSize(CHARTS_AT_ONCE);

  /** The values without the numbers of their words: all editions share the catalogue. */
  private final ComputingCache<ChosenAccents, List<ChartValue>> uncounted =
      ComputingCache.ofSize(CHARTS_AT_ONCE);

  private final RecentQueries<ChosenAccents> recent = new RecentQueries<>();

  public ChartMaker(ValueCounts counts) {
    this.counts = counts;
  }

  /** The chart of words that are right in every one of some accents. */
  public Chart chart(Lexicon lexicon, ChosenAccents accents) {
    recent.remember(accents);
    return kept(lexicon, accents);
  }

  /** Makes the charts that were looked at recent for an edition that will soon be the newest. */
  public void prepare(Lexicon next) {
    recent.replay(accents -> kept(next, accents));
  }

  private Chart kept(Lexicon lexicon, ChosenAccents accents) {
    return charts.get(new Key(lexicon, accents.tags()), key -> make(lexicon, accents));
  }

  private Chart make(Lexicon lexicon, ChosenAccents accents) {
    List<ChartValue> values =
        uncounted.get(accents, chosen -> uncounted(lexicon.catalogue(), chosen)).stream()
            .map(value -> value.withWords(words(value.correspondence(), lexicon, accents)))
            .toList();
    return new Chart(accents, values, shapes(lexicon, accents));
  }

  private static List<ChartValue> uncounted(Catalogue catalogue, ChosenAccents accents) {
    return catalogue.phonograms().stream()
        .flatMap(grapheme -> catalogue.values(grapheme).stream())
        .map(each -> uncounted(each, accents))
        .toList();
  }

  private int words(Correspondence value, Lexicon lexicon, ChosenAccents accents) {
    return accents.chosen().size() == 1
        ? requireNonNull(counts.in(lexicon, accents.first().tag()).get(value)).total()
        : lexicon.count(query(accents, Standard.of(value)));
  }

  private static ChartValue uncounted(Correspondence each, ChosenAccents accents) {
    List<Sound> sounds = each.soundsIn(accents.first()).stream().findFirst().orElse(List.of());
    return new ChartValue(
        each, KeyWord.pieces(each), SoundLabel.of(sounds), sounds.size(), 0, accents.parameter());
  }

  private static WordQuery query(ChosenAccents accents, Standard standard) {
    return WordQuery.of(accents.first().tag(), standard).withAccents(accents.tags());
  }

  /** The shapes of one syllable, shortest first. */
  private static List<ChartShape> shapes(Lexicon lexicon, ChosenAccents accents) {
    WordQuery basic = query(accents, Standard.basic());
    return lexicon.shapes(accents.first().tag(), ChartMaker::isOfOneSyllable).stream()
        .map(basic::withShape)
        .filter(query -> lexicon.count(query) >= ENOUGH)
        .map(query -> shape(query, lexicon, accents))
        .sorted(
            Comparator.comparing((ChartShape shape) -> shape.shape().length())
                .thenComparing(Comparator.comparing(ChartShape::words).reversed()))
        .toList();
  }

  private static boolean isOfOneSyllable(String shape) {
    return shape.indexOf('v') == shape.lastIndexOf('v');
  }

  private static ChartShape shape(WordQuery query, Lexicon lexicon, ChosenAccents accents) {
    return new ChartShape(
        query.shape().orElseThrow(),
        lexicon.first(1, query).get(0).spelling(),
        lexicon.count(query),
        accents.parameter());
  }
}
