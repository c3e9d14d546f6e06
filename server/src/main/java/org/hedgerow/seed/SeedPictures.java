package org.hedgerow.seed;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.seedlexicon.PictureRow;
import org.hedgerow.seedlexicon.SeedLexicon;

/** The pictures of the seed lexicon. */
public final class SeedPictures {

  private static final String LICENCE = "CC BY-SA 4.0";
  private static final String LICENCE_HREF = "https://creativecommons.org/licenses/by-sa/4.0/";

  private SeedPictures() {}

  /**
   * All of them; words may share one.
   *
   * @throws org.hedgerow.seedlexicon.DamagedSeedException if a file is missing or damaged
   */
  public static Pictures read(SeedLexicon seed) {
    Map<String, Picture> pictures = new LinkedHashMap<>();
    for (PictureRow row : seed.pictures()) {
      pictures.computeIfAbsent(row.id(), id -> picture(row, seed.svg(row)));
    }
    return new Pictures(pictures.values().stream().toList());
  }

  private static Picture picture(PictureRow row, String svg) {
    Bytes content = Bytes.of(svg.getBytes(UTF_8));
    return new Picture(
        row.id(),
        row.title(),
        row.author(),
        LICENCE,
        LICENCE_HREF,
        row.source(),
        content.fingerprint(),
        Picture.SVG,
        content);
  }
}
