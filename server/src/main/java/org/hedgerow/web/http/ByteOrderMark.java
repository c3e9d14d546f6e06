package org.hedgerow.web.http;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.query.Parameters;

/**
 * The parameter {@code bom}: whether a table begins with the mark by which many spreadsheet
 * programs know that it is UTF-8.
 */
final class ByteOrderMark {

  static final String PARAMETER = "bom";

  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  private ByteOrderMark() {}

  /** Whether the mark is asked for; adds an error where the answer has no place for it. */
  static boolean isWanted(Parameters parameters, Format format) {
    Optional<String> text = parameters.text(PARAMETER);
    if (text.filter(each -> !List.of("true", "false").contains(each)).isPresent()) {
      parameters.errors().invalid(PARAMETER, "bom must be true or false.");
    }
    boolean wanted = text.filter("true"::equals).isPresent();
    if (wanted && format != Format.CSV) {
      parameters.errors().invalid(PARAMETER, "bom goes with format=csv only. Leave it out.");
    }
    return wanted;
  }

  static byte[] before(byte[] bytes) {
    byte[] marked = new byte[MARK.length + bytes.length];
    System.arraycopy(MARK, 0, marked, 0, MARK.length);
    System.arraycopy(bytes, 0, marked, MARK.length, bytes.length);
    return marked;
  }
}
