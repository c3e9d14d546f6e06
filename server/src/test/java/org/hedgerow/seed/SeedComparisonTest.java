package org.hedgerow.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a seed with four words of the dictionary, so that it doesn't take long. */
class SeedComparisonTest {
  private static final Path SEED = Path.of("../seed-lexicon/src/main/resources/seed");
  private static final String DICTIONARY = "cmudict/pronunciations.tsv";
  private static final Set<String> WORDS = Set.of("boat", "coat", "goat", "moat");

  @TempDir private Path before;
  @TempDir private Path edited;

  private static void copyTo(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(SEED)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = folder.resolve(SEED.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
    edit(
        folder,
        DICTIONARY,
        lines ->
            lines.filter(line -> line.startsWith("#") || WORDS.contains(line.split("\t", 2)[0])));
  }

  private static void edit(Path folder, String file, UnaryOperator<Stream<String>> change)
      throws IOException {
    Path path = folder.resolve(file);
    List<String> lines = change.apply(Files.readAllLines(path).stream()).toList();
    Files.write(path, lines);
  }

  private static UnaryOperator<Stream<String>> replacing(String row, String other) {
    return lines -> lines.map(line -> line.equals(row) ? other : line);
  }

  @Test
  void saysWhichWordsAnEditChangesAndHow() throws IOException {
    copyTo(before);
    copyTo(edited);
    edit(edited, DICTIONARY, replacing("boat\tB OW1 T", "boat\tB AO1 T"));
    edit(edited, DICTIONARY, replacing("moat\tM OW1 T", "float\tF L OW1 T"));
    edit(edited, "scowl/commonness.tsv", replacing("goat\t20\t", "goat\t60\t"));
    SeedComparison changes =
        SeedComparison.of(SeedLexicon.edited(before), SeedLexicon.edited(edited));
    assertThat(changes.words())
        .contains("goat has commonness 1, before 4", "moat is gone")
        .anyMatch(line -> line.startsWith("float is new: en-US f l oʊ t"))
        .anyMatch(line -> line.startsWith("boat is said en-US b ɔ t") && line.contains("b oʊ t"))
        .noneMatch(line -> line.startsWith("coat"));
  }

  @Test
  void saysWhichFilesAreEdited() throws IOException {
    copyTo(edited);
    Files.copy(
        SEED.resolve(DICTIONARY), edited.resolve(DICTIONARY), StandardCopyOption.REPLACE_EXISTING);
    edit(edited, "tags/by-hand.tsv", lines -> Stream.concat(lines, Stream.of("boat\tx")));
    SeedLexicon seed = SeedLexicon.edited(edited);
    assertThat(seed.filesUnlike(SeedLexicon.bundled())).containsExactly("tags/by-hand.tsv");
  }
}
