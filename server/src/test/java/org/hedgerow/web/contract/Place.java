package org.hedgerow.web.contract;

import java.util.List;
import java.util.stream.Stream;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/**
 * A place in the document.
 *
 * @param pointer a JSON pointer, such as {@code /paths/~1health~1live/get}
 */
public record Place(JsonNode document, String pointer) {
  private static final String REFERENCE = "$ref";

  static Place root(JsonNode document) {
    return new Place(document, "");
  }

  public JsonNode node() {
    return document.at(JsonPointer.compile(pointer));
  }

  public boolean exists() {
    return !node().isMissingNode();
  }

  boolean says(String text) {
    return node().isString() && node().asString().equals(text);
  }

  /** What stands under a name here, behind any reference. */
  public Place child(String name) {
    return own(name).target();
  }

  /** What stands under a name here. */
  private Place own(String name) {
    return new Place(document, pointer + "/" + name.replace("~", "~0").replace("/", "~1"));
  }

  /** Where a reference leads to; this place itself if it holds none. */
  public Place target() {
    JsonNode reference = node().path(REFERENCE);
    return reference.isMissingNode()
        ? this
        : new Place(document, reference.asString().substring(1)).target();
  }

  /** The schema here, with whatever stands beside its reference. */
  public Place schema() {
    return own("schema");
  }

  public List<String> names() {
    return List.copyOf(node().propertyNames());
  }

  /** The members of a list here. */
  public Stream<Place> members() {
    return Stream.iterate(0, index -> index + 1)
        .limit(node().isArray() ? node().size() : 0)
        .map(index -> child(Integer.toString(index)));
  }

  /** This place and all below it; references aren't followed. */
  Stream<Place> all() {
    Stream<String> below =
        node().isArray()
            ? Stream.iterate(0, index -> index + 1).limit(node().size()).map(String::valueOf)
            : names().stream();
    return Stream.concat(Stream.of(this), below.flatMap(name -> own(name).all()));
  }
}
