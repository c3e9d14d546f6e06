package org.hedgerow.bench;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Sound;
import org.hedgerow.seed.SeededLexicon;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Words aligned in a second on one core; the whole dictionary in turn. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class AlignerBenchmark {

  private record Said(String spelling, List<Sound> sounds) {}

  private List<Said> dictionary = List.of();
  private Aligner aligner = SeededLexicon.get().aligner("en-US");
  private int next;

  @Setup
  public void load() {
    Lexicon lexicon = SeededLexicon.get();
    aligner = lexicon.aligner("en-US");
    dictionary =
        lexicon.words().stream()
            .flatMap(
                word ->
                    word.pronunciations().stream()
                        .map(said -> new Said(word.spelling(), said.sounds())))
            .toList();
  }

  @Benchmark
  public Optional<Alignment> align() {
    Said said = dictionary.get(next++ % dictionary.size());
    return aligner.align(said.spelling(), said.sounds());
  }
}
