package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photos as cameras and telephones make them, and as nobody should. */
class JpegIntakeTest {

  private static final String PLACE = "Rosa's house, 52.1 N";

  private final PictureIntake intake = new PictureIntake();
  private final byte[] photo = Rendering.written(Rendering.quarters(240, 160), "jpeg");

  @Test
  void writesAPhotoAnew() {
    CleanPicture picture = intake.take(photo);
    assertThat(picture.mediaType()).isEqualTo("image/jpeg");
    assertThat(List.of(picture.width(), picture.height())).containsExactly(240, 160);
    assertThat(Rendering.corners(Rendering.read(picture))).isEqualTo("RGBW");
  }

  @Test
  void scalesDown() {
    CleanPicture picture = intake.take(Rendering.written(Rendering.quarters(3000, 4000), "jpeg"));
    assertThat(List.of(picture.width(), picture.height())).containsExactly(768, 1024);
    assertThat(Rendering.corners(Rendering.read(picture))).isEqualTo("RGBW");
  }

  /** What the camera knows of the place, the owner and the scene isn't kept. */
  @Test
  void leavesOutAllThatIsNoPicture() {
    byte[] place = PLACE.getBytes(ISO_8859_1);
    byte[] file =
        with(
            photo,
            segment(0xe1, exif(1, ByteOrder.LITTLE_ENDIAN)),
            segment(0xe1, bytes("http://ns.adobe.com/xap/1.0/\0" + PLACE)),
            segment(0xe2, bytes("MPF\0" + PLACE)),
            segment(0xed, bytes("Photoshop 3.0\0" + PLACE)),
            segment(0xef, place),
            segment(0xfe, place));
    ByteArrayOutputStream trailing = new ByteArrayOutputStream();
    trailing.writeBytes(file);
    trailing.writeBytes(bytes("<script>alert(1)</script>" + PLACE));
    assertThat(new String(trailing.toByteArray(), ISO_8859_1)).contains("Exif", PLACE);
    byte[] kept = intake.take(trailing.toByteArray()).content().toArray();
    assertThat(new String(kept, ISO_8859_1)).doesNotContain("Exif", PLACE, "script", "adobe");
    assertThat(Rendering.segments(kept)).first().isEqualTo("ffe0");
    assertThat(Rendering.segments(kept))
        .doesNotContain("ffe1", "ffe2", "ffed", "ffee", "ffef", "fffe");
  }

  /**
   * Exif 2.32, tag Orientation: what the first row and the first column of the stored picture are.
   * For 6 they are its right side and its top, so it is turned clockwise: what was below on the
   * left comes to stand above on the left.
   */
  @ParameterizedTest
  @CsvSource({
    "1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, BRWG", "7, WGBR", "8, GWRB",
    "9, RGBW"
  })
  void turnsUpright(int orientation, String corners) {
    for (ByteOrder order : List.of(ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN)) {
      CleanPicture picture = intake.take(with(photo, segment(0xe1, exif(orientation, order))));
      boolean onItsSide = orientation >= 5 && orientation <= 8;
      assertThat(picture.width()).isEqualTo(onItsSide ? 160 : 240);
      assertThat(picture.height()).isEqualTo(onItsSide ? 240 : 160);
      assertThat(Rendering.corners(Rendering.read(picture))).isEqualTo(corners);
    }
  }

  /** Where one side is odd and the other even, half a pixel could be lost or left black. */
  @Test
  void turnsUprightToTheEdges() {
    BufferedImage white = new BufferedImage(101, 80, BufferedImage.TYPE_INT_RGB);
    white.createGraphics().fillRect(0, 0, 101, 80);
    byte[] file = Rendering.written(white, "jpeg");
    for (int orientation = 2; orientation <= 8; orientation++) {
      byte[] turned = with(file, segment(0xe1, exif(orientation, ByteOrder.BIG_ENDIAN)));
      BufferedImage image = Rendering.read(intake.take(turned));
      int[] pixels =
          image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
      assertThat(pixels).as("orientation %d", orientation).containsOnly(0xffffffff);
    }
  }

  /** The orientation is whole after 38 bytes. */
  @Test
  void takesDamagedExifForNone() {
    byte[] exif = exif(6, ByteOrder.BIG_ENDIAN);
    for (int length = 0; length < 38; length++) {
      CleanPicture picture = intake.take(with(photo, segment(0xe1, Arrays.copyOf(exif, length))));
      assertThat(picture.width()).isEqualTo(240);
    }
    ByteBuffer.wrap(exif).putInt(10, Integer.MAX_VALUE - 1);
    assertThat(intake.take(with(photo, segment(0xe1, exif))).width()).isEqualTo(240);
  }

  @Test
  void keepsGreyAsItIs() {
    BufferedImage grey = new BufferedImage(100, 100, BufferedImage.TYPE_BYTE_GRAY);
    Arrays.fill(
        ((java.awt.image.DataBufferByte) grey.getRaster().getDataBuffer()).getData(), (byte) 128);
    BufferedImage kept = Rendering.read(intake.take(Rendering.written(grey, "jpeg")));
    assertThat(new Color(kept.getRGB(50, 50)).getGreen()).isBetween(126, 130);
  }

  @Test
  void refusesAHugeSizeBeforeItMakesRoomForIt() {
    byte[] file = photo.clone();
    int frame = frame(file);
    ByteBuffer.wrap(file).putShort(frame + 5, (short) 65_000).putShort(frame + 7, (short) 65_000);
    assertThatThrownBy(() -> quickly(file))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining("65,000 × 65,000");
  }

  /**
   * In a progressive picture of 20 million pixels a scan of ten bytes takes a tenth of a second.
   */
  @Test
  void refusesThousandsOfScans() {
    int scan = indexOf(photo, 0xda);
    byte[] again = Arrays.copyOfRange(photo, scan, photo.length - 2);
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(photo, 0, photo.length - 2);
    for (int i = 0; i < 1000; i++) {
      file.writeBytes(again);
    }
    file.write(photo, photo.length - 2, 2);
    assertThatThrownBy(() -> quickly(file.toByteArray()))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining("too many times");
  }

  private CleanPicture quickly(byte[] file) {
    return Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () -> intake.take(file));
  }

  @Test
  void tellsAFileThatIsCutShort() {
    for (int length = 3; length < photo.length; length += 5) {
      byte[] part = Arrays.copyOf(photo, length);
      assertThatThrownBy(() -> intake.take(part))
          .isInstanceOf(UnusablePictureException.class)
          .hasMessageContaining("missing");
    }
  }

  @Test
  void refusesColoursForPrinters() {
    byte[] file = photo.clone();
    file[frame(file) + 9] = 4;
    assertThatThrownBy(() -> intake.take(file))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining("RGB");
  }

  @Test
  void refusesRareKinds() {
    for (int kind : List.of(0xc3, 0xc9, 0xdc)) {
      byte[] file = photo.clone();
      file[frame(file) + 1] = (byte) kind;
      assertThatThrownBy(() -> intake.take(file))
          .isInstanceOf(UnusablePictureException.class)
          .hasMessageContaining("ordinary JPEG");
    }
  }

  @Test
  void neverFailsInAnotherWay() {
    java.util.Random random = new java.util.Random(4);
    for (int i = 0; i < 500; i++) {
      byte[] file = photo.clone();
      for (int j = 0; j < 3; j++) {
        file[2 + random.nextInt(file.length - 2)] = (byte) random.nextInt();
      }
      try {
        assertThat(intake.take(file).width()).isPositive();
      } catch (UnusablePictureException refused) {
        assertThat(refused.getMessage()).isNotBlank();
      }
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(ISO_8859_1);
  }

  private static byte[] segment(int marker, byte[] content) {
    return ByteBuffer.allocate(4 + content.length)
        .put((byte) 0xff)
        .put((byte) marker)
        .putShort((short) (content.length + 2))
        .put(content)
        .array();
  }

  private static byte[] with(byte[] jpeg, byte[]... segments) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(jpeg, 0, 2);
    for (byte[] segment : segments) {
      file.writeBytes(segment);
    }
    file.write(jpeg, 2, jpeg.length - 2);
    return file.toByteArray();
  }

  /** One directory: the maker, the orientation, where the places would be; then a place. */
  private static byte[] exif(int orientation, ByteOrder order) {
    ByteBuffer exif = ByteBuffer.allocate(80).put(bytes("Exif\0\0"));
    exif.order(order).put(bytes(order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM"));
    exif.putShort((short) 42).putInt(8).putShort((short) 3);
    entry(exif, 0x010f, 2, PLACE.length()).putInt(50);
    entry(exif, 0x0112, 3, 1).putShort((short) orientation).putShort((short) 0);
    entry(exif, 0x8825, 4, 1).putInt(50);
    return exif.putInt(0).put(bytes(PLACE)).array();
  }

  private static ByteBuffer entry(ByteBuffer exif, int tag, int type, int count) {
    return exif.putShort((short) tag).putShort((short) type).putInt(count);
  }

  private static int frame(byte[] jpeg) {
    return indexOf(jpeg, 0xc0);
  }

  private static int indexOf(byte[] jpeg, int marker) {
    int at = 2;
    while (jpeg[at + 1] != (byte) marker) {
      at += 2 + Short.toUnsignedInt(ByteBuffer.wrap(jpeg).getShort(at + 2));
    }
    return at;
  }
}
