package org.hedgerow.store.editions;

/**
 * Which versions of words to read: what to select from, with {@code w} for the table of words,
 * {@code t} for their tags, {@code p} for their pronunciations, {@code s} for the spans of these.
 */
record WordVersions(String words, String tags, String pronunciations, String spans) {

  /** Those of the first edition; what hangs on the few others is read too, which is quicker. */
  static final WordVersions FIRST =
      new WordVersions(
          "words w where w.since_edition = " + FirstEdition.FIRST,
          "word_tags t",
          "pronunciations p",
          "spans s");

  private static final String ITS_WORD = " join words w on w.id = ";

  private static WordVersions where(String condition) {
    String end = " where " + condition;
    return new WordVersions(
        "words w" + end,
        "word_tags t" + ITS_WORD + "t.word_id" + end,
        "pronunciations p" + ITS_WORD + "p.word_id" + end,
        "spans s join pronunciations p on p.id = s.pronunciation_id"
            + ITS_WORD
            + "p.word_id"
            + end);
  }

  /** Those that began after one edition and stand in another. */
  static WordVersions between(int after, int edition) {
    return where(
        "w.since_edition > %1$d and w.since_edition <= %2$d and (w.until_edition is null or w.until_edition > %2$d)"
            .formatted(after, edition));
  }

  /** Those that an edition brought; none for the first. */
  static WordVersions begunIn(int edition) {
    return where(
        "w.since_edition = %d and w.since_edition > %d".formatted(edition, FirstEdition.FIRST));
  }

  /** Those that an edition ended. */
  static WordVersions endedIn(int edition) {
    return where("w.until_edition = " + edition);
  }

  /** Only one, by its id. */
  static WordVersions only(int id) {
    return where("w.id = " + id);
  }
}
