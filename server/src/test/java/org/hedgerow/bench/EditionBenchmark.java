package org.hedgerow.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hedgerow.lexicon.Changes;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.RandomChanges;
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
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A later edition: how long it takes to make, and what a query of it takes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class EditionBenchmark {
  private final Lexicon first = SeededLexicon.get();
  private final List<WordQuery> queries = new ArrayList<>();

  @Param({"200", "2000"})
  private int changed;

  private Changes changes = Changes.NONE;
  private Lexicon edition = first;
  private int next;

  @Setup
  public void change() {
    changes = RandomChanges.of(first, 2, changed, 1);
    edition = first.edition(2, changes);
    for (String grapheme : first.catalogue().phonograms()) {
      for (Correspondence value : first.catalogue().values(grapheme)) {
        queries.add(WordQuery.of("en-US", Standard.of(value)));
      }
    }
  }

  @Benchmark
  public Lexicon build() {
    return first.edition(2, changes);
  }

  @Benchmark
  public List<Word> find() {
    return edition.find(queries.get(next++ % queries.size()));
  }
}
