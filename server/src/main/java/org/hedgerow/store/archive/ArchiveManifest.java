package org.hedgerow.store.archive;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What an archive says of itself; the first of its files.
 *
 * @param format always {@link #FORMAT}
 * @param schema the version of the database's schema that its rows fit
 * @param edition the newest that it holds
 * @param people whether it says who people are
 * @param files all others, in the order in which they are to be read
 */
record ArchiveManifest(
    String format, String schema, int edition, Instant made, boolean people, List<File> files) {
  static final String FORMAT = "hedgerow-bank-1";
  static final String FILE = "manifest.json";

  /**
   * @param sha256 of its bytes, in hexadecimal
   */
  record File(String name, long rows, String sha256) {}

  ArchiveManifest {
    files = List.copyOf(files);
  }

  Optional<File> file(String name) {
    return files.stream().filter(file -> file.name().equals(name)).findFirst();
  }
}
