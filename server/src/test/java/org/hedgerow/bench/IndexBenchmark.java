package org.hedgerow.bench;

import java.util.concurrent.TimeUnit;
import org.hedgerow.lexicon.Lexicon;
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

/** The index of the whole dictionary, built from words that are in memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(3)
@Warmup(iterations = 0)
@Measurement(iterations = 5)
public class IndexBenchmark {

  private final Lexicon seeded = SeededLexicon.get();

  @Benchmark
  public Lexicon build() {
    return new Lexicon(seeded.edition(), seeded.accents(), seeded.words());
  }
}
