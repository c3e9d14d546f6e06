package org.hedgerow.accounts;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.operations.FieldError;

/** What the names of accounts and people may be: any script, nothing that can't be seen. */
final class NameRules {
  private static final int SHORTEST_NAME = 2;
  private static final int MAX_NAME_LENGTH = 40;
  private static final int MAX_DISPLAY_NAME_LENGTH = 80;
  private static final String MARKS_IN_NAMES = ".-_@'";

  private NameRules() {}

  /** One way of writing a name to sign in with, however it was typed. */
  static String normalName(String typed) {
    return Normalizer.normalize(typed.strip(), Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
  }

  static String normalDisplayName(String typed) {
    return Normalizer.normalize(typed.strip(), Normalizer.Form.NFC).replaceAll("\\s+", " ");
  }

  /**
   * @param name as {@link #normalName} gives it
   */
  static Optional<FieldError> nameFault(String name) {
    int length = name.codePointCount(0, name.length());
    if (length < SHORTEST_NAME || length > MAX_NAME_LENGTH) {
      return wrong("name", "The name to sign in with needs 2 to 40 characters.");
    }
    return name.codePoints().allMatch(NameRules::mayStandInName)
        ? Optional.empty()
        : wrong("name", "The name to sign in with may have letters, digits and . - _ @ ' in it.");
  }

  /** A name for people, as {@link #normalDisplayName} gives it. */
  static Optional<FieldError> displayNameFault(String name) {
    return shownFault("displayName", "The name that others see", name);
  }

  /**
   * Whatever is shown to people on a line, as {@link #normalDisplayName} gives it.
   *
   * @param what it is, at the beginning of a sentence
   */
  static Optional<FieldError> shownFault(String field, String what, String text) {
    int length = text.codePointCount(0, text.length());
    if (length < 1 || length > MAX_DISPLAY_NAME_LENGTH) {
      return wrong(field, what + " needs 1 to 80 characters.");
    }
    return text.codePoints().anyMatch(NameRules::isHidden)
        ? wrong(field, what + " has a sign in it that can't be seen.")
        : Optional.empty();
  }

  private static boolean mayStandInName(int sign) {
    return Character.isLetterOrDigit(sign)
        || Character.getType(sign) == Character.NON_SPACING_MARK
        || Character.getType(sign) == Character.COMBINING_SPACING_MARK
        || MARKS_IN_NAMES.indexOf(sign) >= 0;
  }

  /** Controls, and format signs that turn the text around them; joiners are needed to write. */
  private static boolean isHidden(int sign) {
    return switch (Character.getType(sign)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      case Character.FORMAT -> sign != 0x200C && sign != 0x200D;
      default -> false;
    };
  }

  private static Optional<FieldError> wrong(String field, String message) {
    return Optional.of(new FieldError(field, message));
  }
}
