package org.hedgerow.web.query;

/** Repeats what somebody sent, short and harmless, in quotation marks. */
public final class Quoted {

  private static final int MAX_LENGTH = 40;

  private Quoted() {}

  /** Long texts are cut; characters that can't be seen become {@code �}. */
  public static String of(String text) {
    int[] shown = text.codePoints().limit(MAX_LENGTH).map(Quoted::visible).toArray();
    String rest = text.codePointCount(0, text.length()) > MAX_LENGTH ? "…" : "";
    return "“" + new String(shown, 0, shown.length) + rest + "”";
  }

  private static int visible(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          '\uFFFD';
      default -> character;
    };
  }
}
