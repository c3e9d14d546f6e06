package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Colours that mean something else than sRGB. The profile of the tests is linear: by IEC 61966-2-1
 * half of the light, 55 of 255 being 21.6 %, is 128 in sRGB.
 */
class ColourProfileTest {

  private static final byte[] LINEAR = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();

  private final PictureIntake intake = new PictureIntake();

  @ParameterizedTest
  @ValueSource(ints = {255, 100})
  void bringsThoseOfAPngToTheScreen(int alpha) {
    BufferedImage image = Rendering.read(intake.take(png(LINEAR, alpha)));
    Color colour = new Color(image.getRGB(9, 9), true);
    assertThat(colour.getGreen()).isBetween(126, 130);
    assertThat(colour.getAlpha()).isEqualTo(alpha);
  }

  @Test
  void bringsThoseOfAJpegToTheScreen() {
    BufferedImage drawn = new BufferedImage(80, 80, BufferedImage.TYPE_INT_RGB);
    int[] pixels = new int[80 * 80];
    Arrays.fill(pixels, 0x373737);
    drawn.setRGB(0, 0, 80, 80, pixels, 0, 80);
    byte[] plain = Rendering.written(drawn, "jpeg");
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(plain, 0, 2);
    file.writeBytes(segment());
    file.write(plain, 2, plain.length - 2);
    BufferedImage image = Rendering.read(intake.take(file.toByteArray()));
    assertThat(new Color(image.getRGB(9, 9)).getGreen()).isBetween(126, 130);
  }

  private static byte[] segment() {
    byte[] name = "ICC_PROFILE\0\1\1".getBytes(ISO_8859_1);
    return ByteBuffer.allocate(4 + name.length + LINEAR.length)
        .putShort((short) 0xffe2)
        .putShort((short) (2 + name.length + LINEAR.length))
        .put(name)
        .put(LINEAR)
        .array();
  }

  @Test
  void leavesAsideWhatIsNoProfileOfAScreen() {
    byte[] cut = Arrays.copyOf(LINEAR, LINEAR.length - 100);
    byte[] grey = ICC_Profile.getInstance(ColorSpace.CS_GRAY).getData();
    byte[] large = Arrays.copyOf(LINEAR, 20_000);
    for (byte[] profile : new byte[][] {cut, grey, large, new byte[3], new byte[500]}) {
      BufferedImage image = Rendering.read(intake.take(png(profile, 255)));
      assertThat(new Color(image.getRGB(9, 9)).getGreen()).isEqualTo(55);
    }
  }

  private static byte[] png(byte[] profile, int alpha) {
    byte[] row = new byte[80 * 4];
    for (int i = 0; i < row.length; i++) {
      row[i] = (byte) (i % 4 == 3 ? alpha : 55);
    }
    byte[] deflated = PngBuilder.deflated(profile);
    byte[] chunk =
        ByteBuffer.allocate(3 + deflated.length)
            .put((byte) 'p')
            .put(new byte[2])
            .put(deflated)
            .array();
    return new PngBuilder().header(80, 80, 8, 6).chunk("iCCP", chunk).rows(80, row).end();
  }
}
