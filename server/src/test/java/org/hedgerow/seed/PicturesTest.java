package org.hedgerow.seed;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.seedlexicon.DamagedSeedException;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The pictures, and the words that have them. */
class PicturesTest {

  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final Path SEED = Path.of("../seed-lexicon/src/main/resources/seed");

  @Test
  void threeHundredWordsHaveOne() {
    List<Word> pictured = LEXICON.words().stream().filter(word -> word.is(Tag.PICTURE)).toList();
    assertThat(pictured).hasSizeGreaterThanOrEqualTo(300);
    assertThat(pictured)
        .allSatisfy(word -> assertThat(LEXICON.pictures().of(word)).isPresent())
        .noneMatch(word -> word.is(Tag.NOT_FOR_CHILDREN));
    assertThat(LEXICON.word("bat").orElseThrow().is(Tag.PICTURE)).isFalse();
  }

  @Test
  void theyAreWellFormedAndReferToNothing() throws Exception {
    for (Word word : LEXICON.words()) {
      Picture picture = LEXICON.pictures().of(word).orElse(null);
      if (picture != null) {
        check(picture);
      }
    }
  }

  private static void check(Picture picture) throws Exception {
    String svg = new String(picture.content().bytes().toArray(), UTF_8);
    Element root =
        DocumentBuilderFactory.newNSInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)))
            .getDocumentElement();
    assertThat(picture.mediaType()).isEqualTo("image/svg+xml");
    assertThat(root.getLocalName()).isEqualTo("svg");
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 72 72");
    NodeList all = root.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      assertThat(all.item(i).getNodeName())
          .isIn("g", "path", "circle", "ellipse", "line", "polyline", "polygon", "rect");
    }
    assertThat(svg).doesNotContain("href", "url(", "script", " on", "style");
    assertThat(svg).hasSizeLessThan(20_000);
    assertThat(picture.author()).isNotBlank();
  }

  @Test
  void namesAFileThatIsDamagedOrMissing(@TempDir Path copy) throws IOException {
    copyPictures(copy);
    Path file = copy.resolve("pictures/svg/openmoji-1f408.svg");
    Files.writeString(file, "<svg");
    assertThatThrownBy(() -> SeedPictures.read(SeedLexicon.inFolder(copy)))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("openmoji-1f408.svg");
    Files.delete(file);
    assertThatThrownBy(() -> SeedPictures.read(SeedLexicon.inFolder(copy)))
        .isInstanceOf(DamagedSeedException.class)
        .hasMessageContaining("openmoji-1f408.svg");
  }

  private static void copyPictures(Path copy) throws IOException {
    Files.createDirectories(copy.resolve("pictures/svg"));
    Files.copy(SEED.resolve("manifest.sha256"), copy.resolve("manifest.sha256"));
    try (Stream<Path> files = Files.walk(SEED.resolve("pictures"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, copy.resolve(SEED.relativize(file)));
      }
    }
  }
}
