package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of an XML document, decoded before any parser sees it, so that nothing hides in a rare
 * encoding (XML 1.0, appendix F.1).
 */
final class SvgText {

  private static final Map<String, Charset> ENCODINGS =
      Map.of(
          "UTF-8", UTF_8,
          "US-ASCII", UTF_8,
          "ISO-8859-1", ISO_8859_1,
          "WINDOWS-1252", Charset.forName("windows-1252"));

  private static final Pattern DECLARATION =
      Pattern.compile(
          "^(?:\u00ef\u00bb\u00bf)?\\s*<\\?xml[^>]{0,80}?encoding\\s*=\\s*['\"]([^'\"]{1,40})");

  private static final int START = 200;

  private SvgText() {}

  /**
   * @throws UnusablePictureException if the encoding is a rare one, or not what the file says
   */
  static String decoded(byte[] upload) {
    try {
      String text = encoding(upload).newDecoder().decode(ByteBuffer.wrap(upload)).toString();
      return text.startsWith("\ufeff") ? text.substring(1) : text;
    } catch (CharacterCodingException damage) {
      throw new UnusablePictureException(
          "The letters of this file can't be read, so it is damaged or no picture. Save the picture"
              + " as plain SVG in UTF-8, or as PNG, and upload that file.",
          damage);
    }
  }

  private static Charset encoding(byte[] upload) {
    String start = new String(upload, 0, Math.min(upload.length, START), ISO_8859_1);
    if (start.startsWith("\u00fe\u00ff") || start.startsWith("\0<")) {
      return UTF_16BE;
    }
    if (start.startsWith("\u00ff\u00fe") || start.startsWith("<\0")) {
      return UTF_16LE;
    }
    Matcher declaration = DECLARATION.matcher(start);
    return declaration.find() ? known(declaration.group(1)) : UTF_8;
  }

  private static Charset known(String name) {
    Charset known = ENCODINGS.get(name.toUpperCase(Locale.ROOT));
    if (known == null) {
      throw SvgRefusal.refusal(
          "a rare way to write letters (%s)".formatted(SvgRefusal.quote(name)),
          "Save it as plain SVG in UTF-8 and upload that file.");
    }
    return known;
  }
}
