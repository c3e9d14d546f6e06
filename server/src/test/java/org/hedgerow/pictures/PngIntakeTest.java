package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** PNGs as people have them, and as nobody should. */
class PngIntakeTest {

  private static final int SIDE = 80;

  /** Four gigabytes in four megabytes. */
  private static final byte[] BOMB = PngBuilder.deflatedZeros(4000);

  private final PictureIntake intake = new PictureIntake();

  @Test
  void keepsAPictureOfGoodSizeAsItIs() {
    BufferedImage drawn = Rendering.quarters(200, 100);
    CleanPicture picture = intake.take(Rendering.written(drawn, "png"));
    assertThat(picture.mediaType()).isEqualTo("image/png");
    assertThat(picture.width()).isEqualTo(200);
    assertThat(picture.height()).isEqualTo(100);
    assertThat(pixels(Rendering.read(picture))).isEqualTo(pixels(drawn));
    assertThat(intake.take(picture.content().toArray())).isEqualTo(picture);
  }

  @Test
  void keepsTransparency() {
    BufferedImage drawn = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_ARGB);
    drawn.setRGB(3, 4, 0x80ff4020);
    drawn.setRGB(5, 6, 0xff102030);
    BufferedImage kept = Rendering.read(intake.take(Rendering.written(drawn, "png")));
    assertThat(kept.getColorModel().hasAlpha()).isTrue();
    assertThat(pixels(kept)).isEqualTo(pixels(drawn));
  }

  @Test
  void scalesDownWithoutMixingInWhatIsTransparent() {
    BufferedImage drawn = new BufferedImage(4096, 2048, BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < 2048; y++) {
      for (int x = 0; x < 4096; x++) {
        drawn.setRGB(x, y, (x + y) % 2 == 0 ? 0xffc86432 : 0x0000ff00);
      }
    }
    CleanPicture picture = intake.take(Rendering.written(drawn, "png"));
    assertThat(picture.width()).isEqualTo(1024);
    assertThat(picture.height()).isEqualTo(512);
    BufferedImage scaled = Rendering.read(picture);
    Color colour = new Color(scaled.getRGB(500, 300), true);
    assertThat(colour.getAlpha()).isEqualTo(0x80);
    assertThat(colour.getRed()).isCloseTo(0xc8, within(1));
    assertThat(colour.getGreen()).isCloseTo(0x64, within(1));
    assertThat(colour.getBlue()).isCloseTo(0x32, within(1));
  }

  /** Half of the full value is drawn as 128 of 255, whatever way the file says it. */
  @ParameterizedTest
  @CsvSource({
    "8, 0, 80",
    "16, 0, 8000",
    "8, 4, 80ff",
    "16, 4, 8000ffff",
    "8, 2, 808080",
    "16, 2, 800080008000",
    "8, 6, 808080ff",
    "16, 6, 800080008000ffff"
  })
  void readsEveryKindOfSampleAsItIsMeant(int bits, int colourType, String pixel) {
    byte[] sample = java.util.HexFormat.of().parseHex(pixel);
    ByteBuffer row = ByteBuffer.allocate(SIDE * sample.length);
    for (int i = 0; i < SIDE; i++) {
      row.put(sample);
    }
    byte[] file =
        new PngBuilder().header(SIDE, SIDE, bits, colourType).rows(SIDE, row.array()).end();
    BufferedImage image = Rendering.read(intake.take(file));
    assertThat(Integer.toHexString(image.getRGB(40, 40))).isEqualTo("ff808080");
  }

  @ParameterizedTest
  @CsvSource({"1, ffffffff", "2, ffaaaaaa", "4, ffaaaaaa"})
  void readsGreyOfFewBits(int bits, String colour) {
    byte[] row = new byte[SIDE * bits / 8];
    Arrays.fill(row, bits == 1 ? (byte) 0xff : (byte) 0xaa);
    byte[] file = new PngBuilder().header(SIDE, SIDE, bits, 0).rows(SIDE, row).end();
    BufferedImage image = Rendering.read(intake.take(file));
    assertThat(Integer.toHexString(image.getRGB(40, 40))).isEqualTo(colour);
  }

  @Test
  void readsPalettesWithTransparentColours() {
    byte[] file =
        new PngBuilder()
            .header(SIDE, SIDE, 8, 3)
            .chunk("PLTE", new byte[] {10, 20, 30, 40, 50, 60})
            .chunk("tRNS", new byte[] {0})
            .rows(SIDE, row(SIDE, 1, 0))
            .end();
    BufferedImage image = Rendering.read(intake.take(file));
    assertThat(Integer.toHexString(image.getRGB(0, 9))).isEqualTo("ff28323c");
    assertThat(image.getRGB(1, 9)).isZero();
  }

  /** PNG, third edition, 11.3.1.1: one grey can be declared transparent. */
  @Test
  void readsOneGreyAsTransparent() {
    byte[] file =
        new PngBuilder()
            .header(SIDE, SIDE, 8, 0)
            .chunk("tRNS", new byte[] {0, 7})
            .rows(SIDE, row(SIDE, 7, 200))
            .end();
    BufferedImage image = Rendering.read(intake.take(file));
    assertThat(image.getRGB(0, 9)).isZero();
    assertThat(Integer.toHexString(image.getRGB(1, 9))).isEqualTo("ffc8c8c8");
  }

  private static byte[] row(int length, int... repeated) {
    byte[] row = new byte[length];
    for (int i = 0; i < length; i++) {
      row[i] = (byte) repeated[i % repeated.length];
    }
    return row;
  }

  @Test
  void leavesOutAllThatIsNoPicture() {
    byte[] file =
        withChunks("tEXt", "zTXt", "iTXt", "eXIf", "tIME", "acTL", "fcTL", "fdAT", "prVt");
    byte[] trailing = Arrays.copyOf(file, file.length + 5000);
    byte[] kept = intake.take(trailing).content().toArray();
    assertThat(Rendering.chunks(kept)).containsOnly("IHDR", "IDAT", "IEND");
    assertThat(new String(kept, ISO_8859_1)).doesNotContain("Rosa's house");
  }

  private static byte[] withChunks(String... names) {
    PngBuilder png = new PngBuilder().header(SIDE, SIDE, 8, 0);
    for (String name : names) {
      png.chunk(name, "GPS\0Rosa's house".getBytes(ISO_8859_1));
    }
    return png.rows(SIDE, new byte[SIDE]).end();
  }

  @Test
  void refusesAHugeSizeBeforeItMakesRoomForIt() {
    byte[] file =
        new PngBuilder()
            .header(50_000, 50_000, 8, 6)
            .chunk("IDAT", PngBuilder.deflatedZeros(1))
            .end();
    assertThatThrownBy(() -> quickly(file))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining("50,000 × 50,000")
        .hasMessageContaining("20 million");
  }

  @Test
  void refusesSizesThatOnlyOverflowWouldLetThrough() {
    for (int side : List.of(Integer.MAX_VALUE, Integer.MIN_VALUE, -1, 0x10000)) {
      byte[] file = new PngBuilder().header(side, side, 8, 6).end();
      assertThatThrownBy(() -> quickly(file)).isInstanceOf(UnusablePictureException.class);
    }
    byte[] nothing = new PngBuilder().header(0, 100, 8, 6).end();
    assertThatThrownBy(() -> quickly(nothing)).hasMessageContaining("no width or no height");
  }

  /** No more of it is inflated than a picture of this size has. */
  @Test
  void stopsInDataThatInflatesWithoutEnd() {
    assertThat(BOMB).hasSizeLessThan(4_500_000);
    byte[] file = new PngBuilder().header(SIDE, SIDE, 8, 6).chunk("IDAT", BOMB).end();
    CleanPicture picture = quickly(file);
    assertThat(picture.width()).isEqualTo(SIDE);
    assertThat(picture.content().size()).isLessThan(1_000);
  }

  /** As large as is taken, so that only a part of its pixels is decoded. */
  @Test
  void scalesTheLargestPicture() {
    BufferedImage drawn = Rendering.quarters(5000, 4000);
    CleanPicture picture = intake.take(Rendering.written(drawn, "png"));
    assertThat(List.of(picture.width(), picture.height())).containsExactly(1024, 819);
    assertThat(Rendering.corners(Rendering.read(picture))).isEqualTo("RGBW");
  }

  @ParameterizedTest
  @ValueSource(strings = {"iCCP", "zTXt", "iTXt"})
  void inflatesNoNotes(String name) {
    byte[] note =
        ByteBuffer.allocate(3 + BOMB.length).put((byte) 'a').put(new byte[2]).put(BOMB).array();
    byte[] file =
        new PngBuilder()
            .header(SIDE, SIDE, 8, 0)
            .chunk(name, note)
            .rows(SIDE, new byte[SIDE])
            .end();
    assertThat(quickly(file).width()).isEqualTo(SIDE);
  }

  @Test
  void readsOneProfileOfThousands() {
    PngBuilder png = new PngBuilder().header(SIDE, SIDE, 8, 0);
    for (int i = 0; i < 100_000; i++) {
      png.chunk("iCCP", new byte[] {'p', 0, 0, 'x', 'x'});
    }
    assertThat(quickly(png.rows(SIDE, new byte[SIDE]).end()).width()).isEqualTo(SIDE);
  }

  /** The bombs of these tests take many seconds to inflate, and more memory than a test has. */
  private CleanPicture quickly(byte[] file) {
    return Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(3), () -> intake.take(file), "took too long");
  }

  @Test
  void tellsAFileThatIsCutShort() {
    byte[] whole = Rendering.written(Rendering.quarters(200, 200), "png");
    for (int length = 9; length < whole.length; length += 3) {
      byte[] part = Arrays.copyOf(whole, length);
      assertThatThrownBy(() -> intake.take(part))
          .isInstanceOf(UnusablePictureException.class)
          .hasMessageContaining("missing");
    }
    byte[] fewRows = new PngBuilder().header(SIDE, SIDE, 8, 0).rows(3, new byte[SIDE]).end();
    assertThatThrownBy(() -> intake.take(fewRows)).hasMessageContaining("Part of this PNG");
  }

  @Test
  void tellsADamagedFile() {
    byte[] noPalette = new PngBuilder().header(SIDE, SIDE, 8, 3).rows(SIDE, new byte[SIDE]).end();
    byte[] noSuchKind = new PngBuilder().header(SIDE, SIDE, 3, 5).rows(SIDE, new byte[SIDE]).end();
    byte[] noData =
        new PngBuilder().header(SIDE, SIDE, 8, 0).chunk("IDAT", new byte[] {1, 2, 3}).end();
    byte[] noHeader = new PngBuilder().rows(SIDE, new byte[SIDE]).end();
    byte[] twoHeaders = new PngBuilder().header(SIDE, SIDE, 8, 0).header(SIDE, SIDE, 8, 0).end();
    for (byte[] file : List.of(noPalette, noSuchKind, noData, noHeader, twoHeaders)) {
      assertThatThrownBy(() -> intake.take(file))
          .isInstanceOf(UnusablePictureException.class)
          .hasMessageContaining("damaged");
    }
  }

  @Test
  void asksForPicturesThatCanBePrinted() {
    assertThatThrownBy(() -> intake.take(drawn(63, 500))).hasMessageContaining("at least 64");
    assertThatThrownBy(() -> intake.take(drawn(4000, 100))).hasMessageContaining("narrow");
    assertThatThrownBy(() -> intake.take(drawn(8001, 200))).hasMessageContaining("8,000 on a side");
    assertThat(intake.take(drawn(64, 64)).width()).isEqualTo(64);
  }

  private static byte[] drawn(int width, int height) {
    return Rendering.written(Rendering.quarters(width, height), "png");
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }
}
