package org.hedgerow.web.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the document says of a request that was accepted. Whatever the document doesn't allow, the
 * server mustn't take.
 */
final class RequestContract {
  private final Schemas schemas;
  private final BodyContract bodies;

  RequestContract(Schemas schemas) {
    this.schemas = schemas;
    this.bodies = new BodyContract(schemas);
  }

  List<String> breaches(PathTemplate template, Operation operation, Exchange exchange) {
    List<String> breaches = new ArrayList<>();
    template
        .values(exchange.path())
        .forEach((name, value) -> breaches.addAll(breaches(operation, "path", name, value)));
    exchange
        .query()
        .forEach((name, values) -> breaches.addAll(queryBreaches(operation, name, values)));
    breaches.addAll(missing(operation, exchange.query()));
    breaches.addAll(bodyBreaches(operation, exchange));
    return breaches.stream().map(breach -> "the server accepted " + breach).toList();
  }

  private List<String> queryBreaches(Operation operation, String name, List<String> values) {
    boolean list = operation.parameter("query", name).filter(Parameter::isList).isPresent();
    if (values.size() > 1 && !list) {
      return List.of("the parameter %s %d times".formatted(name, values.size()));
    }
    return breaches(operation, "query", name, String.join(",", values));
  }

  private List<String> breaches(Operation operation, String in, String name, String value) {
    Optional<Parameter> parameter = operation.parameter(in, name);
    if (parameter.isEmpty()) {
      return List.of("the parameter %s, which isn't listed".formatted(name));
    }
    Place schema = parameter.get().place().schema();
    return schemas.breaches(schema, parameter.get().value(value)).stream()
        .map(breach -> "the parameter %s=%s: %s".formatted(name, value, breach))
        .toList();
  }

  private static List<String> missing(Operation operation, Map<String, List<String>> query) {
    return operation.parameters("query").stream()
        .filter(parameter -> parameter.isRequired() && !query.containsKey(parameter.name()))
        .map(parameter -> "a request without the parameter " + parameter.name())
        .toList();
  }

  private List<String> bodyBreaches(Operation operation, Exchange exchange) {
    Optional<String> type = Exchange.mediaType(exchange.requestHeaders());
    return operation.requestBody().stream()
        .flatMap(body -> bodyBreaches(body.child("content"), type, exchange.requestBody()))
        .toList();
  }

  private Stream<String> bodyBreaches(Place content, Optional<String> type, String body) {
    return bodies.breaches(content, type, body).stream().map(breach -> "a body that " + breach);
  }
}
