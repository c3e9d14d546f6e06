package org.hedgerow.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a maintainer is told who has edited the seed. */
class CheckSeedTest {
  private static final Path SEED = Path.of("../seed-lexicon/src/main/resources/seed");

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter errors = new StringWriter();

  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> files = Files.walk(SEED)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = folder.resolve(SEED.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }

  private int check(Path seed) {
    return Hedgerow.run(
        new String[] {"check-seed", seed.toString()},
        Map.of(),
        new PrintWriter(out, true),
        new PrintWriter(errors, true));
  }

  private void edit(String file, String row, String edited) throws IOException {
    Path path = folder.resolve(file);
    List<String> lines = Files.readAllLines(path);
    assertThat(lines).contains(row);
    Files.write(path, lines.stream().map(line -> line.equals(row) ? edited : line).toList());
  }

  @Test
  void saysThatNothingIsEdited() {
    assertThat(check(SEED)).isZero();
    assertThat(out.toString()).startsWith("Nothing is edited");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          cmudict/pronunciations.tsv    | 'boat\tB OW1 T'     | 'boat'               | pronunciations.tsv has a mistake in line
          scowl/commonness.tsv          | 'boat\t10\t'        | 'boat\tten\t'        | commonness.tsv has a mistake in line
          catalogue/accents.tsv         | HEADER              | 'nothing'            | accents.tsv
          """)
  void saysWhichLineHasAMistake(String file, String row, String edited, String message)
      throws IOException {
    edit(
        file,
        row.equals("HEADER") ? header(file) : row.translateEscapes(),
        edited.translateEscapes());
    assertThat(check(folder)).isEqualTo(1);
    assertThat(errors.toString()).contains(message).hasLineCount(1);
  }

  private String header(String file) throws IOException {
    return Files.readAllLines(folder.resolve(file)).stream()
        .filter(line -> line.startsWith("# "))
        .reduce((first, last) -> last)
        .orElseThrow();
  }

  @Test
  void saysWhichRowOfTheCatalogueMakesNoSense() throws IOException {
    Path file = folder.resolve("catalogue/correspondences.tsv");
    Files.writeString(file, Files.readString(file).replace("\tboat\toʊ\t", "\tboat\tq\t"));
    assertThat(check(folder)).isEqualTo(1);
    assertThat(errors.toString()).contains("the catalogue's row for oa (boat)").hasLineCount(1);
  }

  @Test
  void saysWhichFolderToNameInstead() {
    assertThat(check(folder.resolve("nowhere"))).isEqualTo(1);
    assertThat(errors.toString())
        .contains("holds no seed", "seed-lexicon/src/main/resources/seed")
        .hasLineCount(1);
  }
}
