package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.hedgerow.lexicon.Picture;

/** SVG, built anew from what is known. */
final class SvgIntake {

  /** Ten times what a detailed drawing has; lists show dozens of pictures at once. */
  static final int MAX_BYTES = 512 * 1024;

  private static final Set<String> SHAPES =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "use");

  private SvgIntake() {}

  static CleanPicture take(byte[] upload) {
    requireFew(upload);
    String text = SvgText.decoded(upload);
    requireNoEntities(text);
    SvgReading.Document document = SvgReading.read(text);
    SvgStyleSheet styleSheet = SvgStyleSheet.parse(document.styleSheets());
    SvgElement cleaned = new SvgCleaning(styleSheet).clean(document.root());
    SvgReferences.check(cleaned);
    requireShapes(cleaned);
    SvgViewBox box = SvgViewBox.of(cleaned);
    return picture(SvgWriting.text(withBox(cleaned, box)), box);
  }

  private static void requireFew(byte[] svg) {
    if (svg.length > MAX_BYTES) {
      throw SvgRefusal.large("has more than 512 KB");
    }
  }

  private static void requireNoEntities(String text) {
    if (text.toUpperCase(Locale.ROOT).contains("<!ENTITY")) {
      throw SvgRefusal.refusal(
          "abbreviations of its own (<!ENTITY)",
          "Such files can stop a server. Save it in the drawing program as plain SVG, without what"
              + " only that program can edit, and upload that file.");
    }
  }

  private static void requireShapes(SvgElement root) {
    if (root.all().noneMatch(element -> SHAPES.contains(element.name()))) {
      throw new UnusablePictureException(
          "This SVG shows nothing. Save the drawing again as plain SVG and upload that file.");
    }
  }

  /** So large as the page wants it, and never out of shape. */
  private static SvgElement withBox(SvgElement root, SvgViewBox box) {
    Map<String, String> attributes = new TreeMap<>(root.attributes());
    attributes.keySet().removeAll(List.of("x", "y", "width", "height", "preserveAspectRatio"));
    attributes.put("viewBox", box.text());
    return new SvgElement(root.name(), attributes, root.children());
  }

  private static CleanPicture picture(String svg, SvgViewBox box) {
    byte[] content = svg.getBytes(UTF_8);
    requireFew(content);
    return CleanPicture.of(Picture.SVG, content, box.size());
  }
}
