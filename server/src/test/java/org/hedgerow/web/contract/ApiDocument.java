package org.hedgerow.web.contract;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.apidocs.ApiDocs;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** An OpenAPI document: its routes, and the answers that stand for all addresses not listed. */
public final class ApiDocument {
  private final Place root;
  private final List<PathTemplate> templates;

  ApiDocument(JsonNode document) {
    this.root = Place.root(document);
    this.templates =
        root.child("paths").names().stream()
            .map(PathTemplate::of)
            .sorted(Comparator.comparing(template -> template.names().size()))
            .toList();
  }

  public static ApiDocument published() {
    return parse(new String(ApiDocs.openApi(), UTF_8));
  }

  static ApiDocument parse(String yaml) {
    return new ApiDocument(new YAMLMapper().readTree(yaml));
  }

  public Place root() {
    return root;
  }

  /** The listed path that fits; one without parameters goes before one with them. */
  Optional<PathTemplate> template(String path) {
    return templates.stream().filter(template -> template.matches(path)).findFirst();
  }

  /** HEAD is answered as GET is, and so isn't listed. */
  Optional<Operation> operation(PathTemplate template, String method) {
    Place item = root.child("paths").child(template.text());
    String name = method.equals("HEAD") ? "get" : method.toLowerCase(Locale.ROOT);
    return Optional.of(item.child(name)).filter(Place::exists).map(Operation::new);
  }

  /** What answers at addresses that aren't listed. */
  Place notFound() {
    return elsewhere("404");
  }

  /** What answers to methods that aren't listed. */
  Place methodNotAllowed() {
    return elsewhere("405");
  }

  private Place elsewhere(String status) {
    return root.child("x-elsewhere").child("responses").child(status);
  }
}
