package org.hedgerow.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Base64;
import java.util.List;
import org.hedgerow.web.contract.Place;
import tools.jackson.databind.JsonNode;

/** Bodies as the document lists them, by media type; one character for every byte. */
final class Bodies {
  private static final String PNG =
      decoded(
          "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

  private static final String SVG =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><path d=\"M1 1h7v7z\" fill=\"red\"/></svg>";

  private static final String FORM =
      "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.png\"\r\nContent-Type: image/png\r\n\r\n"
          + PNG
          + "\r\n--x--\r\n";

  private final SchemaValues values;
  private final Dice dice;

  Bodies(SchemaValues values, Dice dice) {
    this.values = values;
    this.dice = dice;
  }

  private static String decoded(String base64) {
    return new String(Base64.getDecoder().decode(base64), ISO_8859_1);
  }

  /** A JSON body that the schema allows, often one of the document's examples. */
  JsonNode json(Place mediaType) {
    List<Place> examples = examples(mediaType);
    return !examples.isEmpty() && dice.percent(40)
        ? dice.any(examples).child("value").node()
        : values.value(mediaType.schema());
  }

  private static List<Place> examples(Place mediaType) {
    Place examples = mediaType.child("examples");
    return examples.names().stream().map(examples::child).toList();
  }

  /** A body of another media type. */
  String text(String mediaType, Place listed) {
    return switch (mediaType) {
      case "image/svg+xml" -> SVG;
      case "multipart/form-data" -> FORM;
      case "text/csv" ->
          examples(listed).stream()
              .map(example -> Nasty.bytes(example.child("value").node().asString()))
              .findFirst()
              .orElse("spelling\ncroak\n");
      default -> PNG;
    };
  }

  /** The media type as it is sent. */
  static String sent(String mediaType) {
    return mediaType.startsWith("multipart") ? mediaType + "; boundary=x" : mediaType;
  }
}
