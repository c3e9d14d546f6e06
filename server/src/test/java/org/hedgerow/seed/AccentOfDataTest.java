package org.hedgerow.seed;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.Standard;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An accent is added by tables alone: here Irish English with two entries, made of en-AU's row. */
class AccentOfDataTest {

  private static final Path SEED = Path.of("../seed-lexicon/src/main/resources/seed");
  private static final String MODEL = "en-AU";
  private static final String ADDED = "en-IE";

  @TempDir private Path folder;

  @Test
  void anAccentIsDataAlone() throws IOException {
    copy();
    edit("catalogue/accents.tsv", AccentOfDataTest::withAccent);
    edit("catalogue/correspondences.tsv", AccentOfDataTest::withColumn);
    Files.writeString(
        folder.resolve("contributed/en-IE.tsv"),
        "# word\tsounds\tsource\nthick\tt ɪ k\thand\nthin\tt ɪ n\thand\n");
    writeManifest();

    SeedLexicon seed = SeedLexicon.inFolder(folder);
    List<AccentCatalogue> accents = SeedCatalogue.weighted(seed);
    Lexicon lexicon = new Lexicon(1, accents, new SeedWords(seed, accents).words(word -> {}));

    assertThat(said(lexicon, "thin")).containsExactly("en-IE t ɪ n");
    assertThat(said(lexicon, "thud")).containsExactly("en-GB θ ʌ d");
    Standard th = Standard.of(lexicon.catalogue().value("th", 1).orElseThrow());
    assertThat(lexicon.find(WordQuery.of(ADDED, th)))
        .extracting(Word::spelling)
        .contains("thin", "thick", "thud");
  }

  private static List<String> said(Lexicon lexicon, String word) {
    return lexicon.word(word).orElseThrow().saidIn(ADDED).stream()
        .map(AccentOfDataTest::withTag)
        .toList();
  }

  private static String withTag(Pronunciation said) {
    return said.accent() + " " + Sound.spaced(said.sounds());
  }

  private void copy() throws IOException {
    try (Stream<Path> files = Files.walk(SEED)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = folder.resolve(SEED.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }

  private interface Edit {
    List<String> apply(List<String> lines);
  }

  private void edit(String path, Edit edit) throws IOException {
    Path file = folder.resolve(path);
    Files.write(file, edit.apply(Files.readAllLines(file)));
  }

  private static List<String> withAccent(List<String> lines) {
    List<String> longer = new ArrayList<>(lines);
    lines.stream()
        .filter(line -> line.startsWith(MODEL))
        .map(line -> line.replace(MODEL, ADDED).replace("Australian", "Irish"))
        .forEach(longer::add);
    return longer;
  }

  /** After the model's column one that says th as /t/, where no other th does. */
  private static List<String> withColumn(List<String> lines) {
    int after = 0;
    List<String> wider = new ArrayList<>();
    for (String line : lines) {
      List<String> cells = new ArrayList<>(Arrays.asList(line.split("\t", -1)));
      if (line.startsWith("# grapheme")) {
        after = cells.indexOf(MODEL) + 1;
        cells.add(after, ADDED);
      } else if (!line.startsWith("#")) {
        cells.add(after, cell(cells));
      }
      wider.add(String.join("\t", cells));
    }
    return wider;
  }

  private static String cell(List<String> cells) {
    boolean th = cells.get(0).equals("th");
    if (th && cells.get(1).equals("1")) {
      return "t";
    }
    return th && cells.contains("discotheque") ? "-" : "";
  }

  private void writeManifest() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String path = folder.relativize(file).toString().replace('\\', '/');
        if (!path.equals("manifest.sha256")) {
          lines.add(checksum(file) + "  " + path);
        }
      }
    }
    Files.writeString(folder.resolve("manifest.sha256"), String.join("\n", lines) + "\n", UTF_8);
  }

  private static String checksum(Path file) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
