package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

import java.util.Set;

/**
 * A picture that shows what a word means, with all that must be said of it wherever it is shown.
 *
 * @param id small letters, digits and hyphens; stays the same
 * @param title what its makers call it
 * @param author who made it
 * @param licence the short name of the licence
 * @param licenceHref where the licence can be read
 * @param source where it comes from
 * @param version another for every change of the picture itself: {@link Bytes#fingerprint}
 * @param mediaType one of {@link #MEDIA_TYPES}
 * @param content the picture; an SVG document holds no scripts and refers to nothing outside
 */
public record Picture(
    String id,
    String title,
    String author,
    String licence,
    String licenceHref,
    String source,
    String version,
    String mediaType,
    PictureContent content) {

  public static final String SVG = "image/svg+xml";
  public static final String PNG = "image/png";
  public static final String JPEG = "image/jpeg";

  /** Nothing else is ever served as a picture. */
  public static final Set<String> MEDIA_TYPES = Set.of(SVG, PNG, JPEG);

  /**
   * @throws IllegalArgumentException if the media type is none of ours
   */
  public Picture {
    requireNonNull(id);
    requireNonNull(title);
    requireNonNull(author);
    requireNonNull(licence);
    requireNonNull(licenceHref);
    requireNonNull(source);
    requireNonNull(version);
    requireNonNull(content);
    if (!MEDIA_TYPES.contains(mediaType)) {
      throw new IllegalArgumentException("no picture has the media type " + mediaType);
    }
  }

  /** What must stand beside it where it is shown or printed. */
  public String attribution() {
    return "%s by %s, %s, %s".formatted(title, author, source, licence);
  }
}
