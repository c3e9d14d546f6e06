package org.hedgerow.seedlexicon;

/**
 * A seed file is missing, changed or malformed; the message is one sentence that says what to do.
 */
public final class DamagedSeedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  static final String DERIVE_ALL = "seed-lexicon/derive/derive.sh";
  static final String DERIVE_MANIFEST = "seed-lexicon/derive/derive.sh --manifest";

  private DamagedSeedException(String message) {
    super(message);
  }

  static DamagedSeedException missing(String file) {
    return new DamagedSeedException(
        "The seed file %s is missing: derive it again with %s.".formatted(file, DERIVE_ALL));
  }

  static DamagedSeedException unlisted(String file) {
    return new DamagedSeedException(
        "The seed file %s is not in the checksum manifest: write the manifest again with %s."
            .formatted(file, DERIVE_MANIFEST));
  }

  static DamagedSeedException changed(String file) {
    return new DamagedSeedException(
        ("The seed file %s does not match its checksum: derive it again with %s,"
                + " or, if it was corrected by hand, accept it with %s.")
            .formatted(file, DERIVE_ALL, DERIVE_MANIFEST));
  }

  static DamagedSeedException unreadable(String file, String reason) {
    return new DamagedSeedException(
        "The seed file %s cannot be read (%s): derive it again with %s."
            .formatted(file, reason, DERIVE_ALL));
  }

  static DamagedSeedException malformed(String file, int line, String problem) {
    return new DamagedSeedException(
        "The seed file %s has a mistake in line %d, %s: correct the line or derive the file again with %s."
            .formatted(file, line, problem, DERIVE_ALL));
  }
}
