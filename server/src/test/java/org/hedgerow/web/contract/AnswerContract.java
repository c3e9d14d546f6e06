package org.hedgerow.web.contract;

import java.net.http.HttpHeaders;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.node.StringNode;

/** What the document says of an answer: its headers, its media type and its body. */
final class AnswerContract {
  private final Schemas schemas;
  private final BodyContract bodies;

  AnswerContract(Schemas schemas) {
    this.schemas = schemas;
    this.bodies = new BodyContract(schemas);
  }

  /**
   * @param answer the response as listed
   */
  List<String> breaches(Place answer, Exchange exchange) {
    List<String> breaches = new ArrayList<>(headerBreaches(answer, exchange.headers()));
    exchange.problem().ifPresent(problem -> breaches.addAll(problemBreaches(answer, problem)));
    bodyBreaches(answer.child("content"), exchange).stream()
        .map(breach -> "the answer " + breach)
        .forEach(breaches::add);
    return breaches;
  }

  /** A problem must be one of those that the document lists for this answer. */
  private static List<String> problemBreaches(Place answer, Exchange.RaisedProblem problem) {
    List<String> breaches = new ArrayList<>();
    if (answer.child("x-problem-types").members().noneMatch(each -> each.says(problem.type()))) {
      breaches.add("the problem %s isn't listed for this answer".formatted(problem.type()));
    }
    if (!problem.statusFits()) {
      breaches.add("the problem names another status than the answer");
    }
    return breaches;
  }

  private List<String> headerBreaches(Place answer, HttpHeaders headers) {
    Place listed = answer.child("headers");
    return listed.names().stream()
        .flatMap(name -> headerBreaches(name, listed.child(name), headers.firstValue(name)))
        .toList();
  }

  private Stream<String> headerBreaches(String name, Place header, Optional<String> value) {
    if (value.isEmpty()) {
      boolean required = header.child("required").node().asBoolean(false);
      return required ? Stream.of("the header %s is missing".formatted(name)) : Stream.empty();
    }
    return schemas.breaches(header.schema(), StringNode.valueOf(value.get())).stream()
        .map(breach -> "the header %s: %s %s".formatted(name, value.get(), breach));
  }

  private List<String> bodyBreaches(Place content, Exchange exchange) {
    Optional<String> type = Exchange.mediaType(exchange.headers());
    if (content.exists() && !exchange.isHead()) {
      return bodies.breaches(content, type, exchange.body());
    }
    List<String> breaches = new ArrayList<>();
    if (!exchange.body().isEmpty()) {
      breaches.add("has a body and mustn't");
    }
    if (content.exists()) {
      BodyContract.typeBreach(content, type).ifPresent(breaches::add);
    }
    return breaches;
  }
}
