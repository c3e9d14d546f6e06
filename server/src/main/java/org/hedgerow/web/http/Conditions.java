package org.hedgerow.web.http;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.web.edge.Gzip;

/** The header {@code If-None-Match} of reads (RFC 9110, section 13.1.2). */
final class Conditions {

  /** A tag with its quotes; before it perhaps the mark of a weak one, which doesn't matter here. */
  private static final Pattern TAG = Pattern.compile("\"[!#-~\\x80-\\xFF]*\"");

  private Conditions() {}

  /**
   * Whether the asker has the answer already: one of the tags is that of the answer, compressed or
   * not.
   *
   * @param header the header, or an empty text
   */
  static boolean alreadyHas(String header, String entityTag) {
    if (header.isEmpty()) {
      return false;
    }
    return header.strip().equals("*") || lists(header, entityTag);
  }

  private static boolean lists(String header, String entityTag) {
    Matcher tags = TAG.matcher(header);
    while (tags.find()) {
      if (Gzip.plain(tags.group()).equals(Gzip.plain(entityTag))) {
        return true;
      }
    }
    return false;
  }
}
