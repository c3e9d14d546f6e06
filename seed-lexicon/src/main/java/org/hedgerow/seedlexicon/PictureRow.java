package org.hedgerow.seedlexicon;

/**
 * A picture that has a word as its name.
 *
 * @param id small letters, digits and hyphens; its file is {@code pictures/svg/<id>.svg}
 * @param title what its makers call it
 * @param author who drew it
 * @param source where it comes from
 */
public record PictureRow(String word, String id, String title, String author, String source) {

  static PictureRow from(TsvRow row) {
    return new PictureRow(
        row.required("word"),
        row.required("id"),
        row.required("title"),
        row.required("author"),
        row.required("source"));
  }
}
