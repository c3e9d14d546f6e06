package org.hedgerow.seedlexicon;

/**
 * A word judged by hand for children of four to six.
 *
 * @param group what it was judged for: a phonogram value such as {@code oa 1}, or a shape such as
 *     {@code cvc}
 * @param known whether most of them know it
 * @param suitable whether it is fit for them
 * @param picturable how well it can be shown in a picture, 0 to 3
 * @param american whether its letters say in General American what they are taught to say
 * @param british whether they do in southern British English
 * @param note why not, or an empty text
 * @param line its line in the file, from 1
 */
public record StarterRow(
    String word,
    String group,
    boolean known,
    boolean suitable,
    int picturable,
    boolean american,
    boolean british,
    String note,
    int line) {

  static StarterRow from(TsvRow row) {
    return new StarterRow(
        row.required("word"),
        row.required("group"),
        row.yesOrNo("known"),
        row.yesOrNo("suitable"),
        row.level("picturable"),
        row.yesOrNo("us"),
        row.yesOrNo("gb"),
        row.text("note"),
        row.line());
  }

  /** Whether the word belongs to the starter set. */
  public boolean isIn() {
    return known && suitable && american && british;
  }
}
