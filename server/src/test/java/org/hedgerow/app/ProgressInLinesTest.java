package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProgressInLinesTest {

  @ParameterizedTest
  @ValueSource(ints = {10, 97, 1000, 469_868})
  void printsALineForEachTenth(int steps) {
    StringWriter out = new StringWriter();
    try (Progress progress = new ProgressInLines("Filling", steps, new PrintWriter(out))) {
      IntStream.range(0, steps).parallel().forEach(step -> progress.step());
    }
    assertThat(out.toString().lines())
        .containsExactlyInAnyOrder(
            "Filling: 10 %",
            "Filling: 20 %",
            "Filling: 30 %",
            "Filling: 40 %",
            "Filling: 50 %",
            "Filling: 60 %",
            "Filling: 70 %",
            "Filling: 80 %",
            "Filling: 90 %",
            "Filling: 100 %");
  }
}
