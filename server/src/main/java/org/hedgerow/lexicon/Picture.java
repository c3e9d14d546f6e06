package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

/**
 * A picture that shows what a word means, with all that must be said of it wherever it is shown.
 *
 * @param id small letters, digits and hyphens; stays the same
 * @param title what its makers call it
 * @param author who made it
 * @param licence the short name of the licence
 * @param licenceHref where the licence can be read
 * @param source where it comes from
 * @param version another for every change of the picture itself
 * @param svg the picture: an SVG document without scripts and references
 */
public record Picture(
    String id,
    String title,
    String author,
    String licence,
    String licenceHref,
    String source,
    String version,
    String svg) {

  public Picture {
    requireNonNull(id);
    requireNonNull(title);
    requireNonNull(author);
    requireNonNull(licence);
    requireNonNull(licenceHref);
    requireNonNull(source);
    requireNonNull(version);
    requireNonNull(svg);
  }

  /** What must stand beside it where it is shown or printed. */
  public String attribution() {
    return "%s by %s, %s, %s".formatted(title, author, source, licence);
  }
}
