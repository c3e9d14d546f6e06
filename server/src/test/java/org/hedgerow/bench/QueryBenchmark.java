package org.hedgerow.bench;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Meaning;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededLexicon;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One list query, over every value of the catalogue and the common shapes in turn. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class QueryBenchmark {

  private final Lexicon lexicon = SeededLexicon.get();
  private final List<WordQuery> queries = queries(lexicon);
  private final List<WordQuery> filtered = filtered(queries);
  private int next;

  private static List<WordQuery> queries(Lexicon lexicon) {
    List<WordQuery> queries = new ArrayList<>();
    for (String grapheme : lexicon.catalogue().phonograms()) {
      for (Correspondence value : lexicon.catalogue().values(grapheme)) {
        queries.add(WordQuery.of("en-US", Standard.of(value)));
      }
    }
    for (String shape : List.of("cvc", "ccvc", "cvcc", "ccvcc")) {
      queries.add(WordQuery.of("en-US", Standard.basic()).withShape(shape));
    }
    return queries;
  }

  @Benchmark
  public List<Word> find() {
    return lexicon.find(queries.get(next++ % queries.size()));
  }

  /** Two accents, four filters over tags, as a teacher of a mixed cohort asks. */
  @Benchmark
  public List<Word> findInTwoAccentsWithFilters() {
    return lexicon.find(filtered.get(next++ % filtered.size()));
  }

  private static List<WordQuery> filtered(List<WordQuery> queries) {
    TagFilter filter =
        new TagFilter(
            TagFilter.DRAWABLE,
            false,
            Optional.of(PartOfSpeech.NOUN),
            EnumSet.of(Meaning.ARTIFACT, Meaning.ANIMAL, Meaning.FOOD),
            true);
    return queries.stream()
        .map(query -> query.withAccents(List.of("en-US", "en-GB")).withTags(filter))
        .toList();
  }
}
