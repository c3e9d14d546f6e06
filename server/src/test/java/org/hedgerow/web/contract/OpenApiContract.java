package org.hedgerow.web.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Holds live traffic against the OpenAPI document. An exchange keeps to it if
 *
 * <ul>
 *   <li>the status, the headers, the content type and the body of the answer are as listed;
 *   <li>a request that was accepted is as listed: route, method, every parameter, the body;
 *   <li>a listed parameter isn't called unknown;
 *   <li>a path or method that isn't listed is answered 404 or 405, as the document says for all;
 *   <li>the status isn't 500, though the document explains it.
 * </ul>
 *
 * Preflight requests (OPTIONS) are outside of what such a document describes, and let through. Safe
 * for use by several threads.
 */
public final class OpenApiContract {
  private static final String UNKNOWN_PARAMETER = "#unknown-parameter";

  private final ApiDocument document;
  private final AnswerContract answers;
  private final RequestContract requests;

  OpenApiContract(ApiDocument document) {
    Schemas schemas = new Schemas(document);
    this.document = document;
    this.answers = new AnswerContract(schemas);
    this.requests = new RequestContract(schemas);
  }

  /** The contract that the server publishes. */
  public static OpenApiContract published() {
    return new OpenApiContract(ApiDocument.published());
  }

  /**
   * @throws AssertionError with every breach on a line of its own, if there is any
   */
  public void require(Exchange exchange) {
    List<String> breaches = breaches(exchange);
    if (!breaches.isEmpty()) {
      String lines = breaches.stream().map(line -> "\n  " + line).collect(Collectors.joining());
      throw new AssertionError(exchange + ", against the OpenAPI document:" + lines);
    }
  }

  /** What doesn't keep to the document, in words; nothing if all does. */
  public List<String> breaches(Exchange exchange) {
    if (exchange.method().equals("OPTIONS")) {
      return List.of();
    }
    return document
        .template(exchange.path())
        .map(template -> breaches(template, exchange))
        .orElseGet(() -> unlisted("path", 404, document.notFound(), exchange));
  }

  private List<String> breaches(PathTemplate template, Exchange exchange) {
    return document
        .operation(template, exchange.method())
        .map(operation -> breaches(template, operation, exchange))
        .orElseGet(() -> unlisted("method", 405, document.methodNotAllowed(), exchange));
  }

  private List<String> unlisted(String what, int status, Place answer, Exchange exchange) {
    if (exchange.status() != status) {
      return List.of(
          "the %s isn't listed, so the answer must be %d, not %d"
              .formatted(what, status, exchange.status()));
    }
    return answers.breaches(answer, exchange);
  }

  private List<String> breaches(PathTemplate template, Operation operation, Exchange exchange) {
    List<String> breaches = new ArrayList<>(answerBreaches(operation, exchange));
    if (exchange.status() == 500) {
      breaches.add("nothing may be answered 500");
    }
    if (exchange.isRefused()) {
      wronglyUnknown(operation, exchange).ifPresent(breaches::add);
    } else {
      breaches.addAll(requests.breaches(template, operation, exchange));
    }
    return breaches;
  }

  private List<String> answerBreaches(Operation operation, Exchange exchange) {
    return operation
        .answer(exchange.status())
        .map(answer -> answers.breaches(answer, exchange))
        .orElseGet(() -> List.of("the status %d isn't listed".formatted(exchange.status())));
  }

  private static Optional<String> wronglyUnknown(Operation operation, Exchange exchange) {
    boolean allListed =
        exchange.query().keySet().stream()
            .allMatch(name -> operation.parameter("query", name).isPresent());
    return allListed && exchange.body().contains(UNKNOWN_PARAMETER + "\"")
        ? Optional.of("the server calls a parameter unknown, but all that were sent are listed")
        : Optional.empty();
  }
}
