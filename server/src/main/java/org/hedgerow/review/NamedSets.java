package org.hedgerow.review;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.hedgerow.accounts.FieldFault;

/** What sets of rules, sequences and sight words have in common. */
final class NamedSets {
  private static final int LONGEST_TITLE = 80;
  private static final int LONGEST_NOTE = 300;

  private NamedSets() {}

  static List<FieldFault> faults(String name, String title, String note) {
    List<FieldFault> faults = new ArrayList<>();
    if (!name.matches("[a-z]{2,20}")) {
      faults.add(
          new FieldFault("name", "The name for addresses has 2 to 20 small letters a to z."));
    }
    if (title.isEmpty() || title.codePointCount(0, title.length()) > LONGEST_TITLE) {
      faults.add(new FieldFault("title", "Say what it is called, in 1 to 80 characters."));
    }
    if (note.codePointCount(0, note.length()) > LONGEST_NOTE) {
      faults.add(new FieldFault("note", "At most %d characters.".formatted(LONGEST_NOTE)));
    }
    return faults;
  }

  /** Tells contents apart that people might confuse; it isn't meant against anybody. */
  static String mark(Object content) {
    CRC32 sum = new CRC32();
    sum.update(content.toString().getBytes(UTF_8));
    return Long.toHexString(sum.getValue());
  }
}
