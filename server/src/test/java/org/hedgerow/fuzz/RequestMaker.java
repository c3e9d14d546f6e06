package org.hedgerow.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hedgerow.web.contract.ApiDocument;
import org.hedgerow.web.contract.Operation;
import org.hedgerow.web.contract.Place;
import tools.jackson.databind.JsonNode;

/**
 * Makes requests for every operation of the OpenAPI document, and for the pages beside them: most
 * of them right but for a thing or two, some right, some that break HTTP. The same seed and number
 * make the same request. Safe for several threads.
 */
final class RequestMaker {
  /** Who asks; the first is nobody. */
  static final List<String> ROLES = List.of("visitor", "contributor", "reviewer", "administrator");

  /** As the table of routes has them. */
  private static final List<String> PAGES =
      List.of(
          "/",
          "/words/{x}",
          "/compare",
          "/contributions",
          "/contributions/new",
          "/contributions/{x}",
          "/contributions/{x}/picture",
          "/editions",
          "/editions/{x}",
          "/needs",
          "/people",
          "/people/{x}",
          "/review",
          "/review/{x}",
          "/sentences",
          "/sentences/check",
          "/sentences/make",
          "/sequences",
          "/sight-words",
          "/sign-in",
          "/welcome/{x}",
          "/words.csv",
          "/words.xlsx",
          "/words.txt",
          "/assets/{x}",
          "/docs/{x}",
          "/account",
          "/contributions/drafts",
          "/contributions/table",
          "/sign-out",
          "/people/invitations",
          "/webjars/{x}",
          "/{x}");

  private record Listed(String method, String template, Operation operation) {}

  private final List<Listed> operations;
  private final Vocabulary vocabulary = new Vocabulary();
  private final long seed;

  RequestMaker(ApiDocument document, long seed) {
    this.operations = operations(document.root().child("paths"));
    this.seed = seed;
  }

  private static List<Listed> operations(Place paths) {
    return paths.names().stream().flatMap(path -> operations(path, paths.child(path))).toList();
  }

  private static Stream<Listed> operations(String path, Place item) {
    return item.names().stream()
        .map(
            method ->
                new Listed(
                    method.toUpperCase(Locale.ROOT), path, new Operation(item.child(method))));
  }

  /**
   * @param number of the request within the run
   */
  HostileRequest request(long number) {
    Dice dice = new Dice(seed, number);
    HostileRequest sound =
        dice.percent(12)
            ? page(dice)
            : request(operations.get((int) (number % operations.size())), dice);
    return dice.percent(8) ? new Breaker(dice).broken(sound) : sound;
  }

  private HostileRequest request(Listed listed, Dice dice) {
    SchemaValues values = new SchemaValues(vocabulary, dice);
    int hostile = dice.any(List.of(0, 0, 1, 1, 1, 1, 2, 3));
    int inAddress = dice.below(hostile + 1);
    String target =
        new Addresses(values, dice).address(listed.template(), listed.operation(), inAddress);
    List<String> lines = new ArrayList<>();
    lines.add(method(listed.method(), dice) + " " + target + " HTTP/1.1");
    lines.addAll(identity(dice));
    lines.addAll(conditions(listed.operation(), dice));
    String body = body(listed.operation(), hostile - inAddress, lines, dice);
    spoilHeaders(lines, hostile, dice);
    return new HostileRequest(lines, body, false).framed();
  }

  private static String method(String listed, Dice dice) {
    return dice.percent(96) ? listed : dice.any(Nasty.METHODS);
  }

  private static List<String> identity(Dice dice) {
    String role = dice.any(ROLES);
    return role.equals("visitor") ? List.of() : List.of("Authorization: Bearer {" + role + "}");
  }

  private static List<String> conditions(Operation operation, Dice dice) {
    boolean asked =
        operation.parameters("header").stream().anyMatch(each -> each.name().equals("If-Match"));
    return asked && dice.percent(80)
        ? List.of("If-Match: \"%d\"".formatted(dice.between(1, 3)))
        : List.of();
  }

  private String body(Operation operation, int hostile, List<String> lines, Dice dice) {
    Optional<Place> listed = operation.requestBody().map(body -> body.child("content"));
    if (listed.isEmpty()) {
      return dice.percent(3) ? "{}" : "";
    }
    String type = dice.any(listed.get().names());
    String sent =
        hostile > 0 && dice.percent(15) ? dice.any(Nasty.CONTENT_TYPES) : Bodies.sent(type);
    lines.add("Content-Type: " + sent);
    return body(type, listed.get().child(type), hostile, dice);
  }

  private String body(String type, Place listed, int hostile, Dice dice) {
    Bodies bodies = new Bodies(new SchemaValues(vocabulary, dice), dice);
    TextMutation bytes = new TextMutation(dice);
    if (!type.endsWith("json")) {
      String text = bodies.text(type, listed);
      return hostile > 0 ? bytes.mutated(text) : text;
    }
    JsonNode tree = bodies.json(listed);
    for (int i = 0; i < hostile; i++) {
      tree = new TreeMutation(dice).mutated(tree);
    }
    String text = Nasty.bytes(tree.toString());
    return hostile > 0 && dice.percent(30) ? bytes.mutated(text) : text;
  }

  private static void spoilHeaders(List<String> lines, int hostile, Dice dice) {
    if (hostile > 0 && dice.percent(30)) {
      String line = dice.any(Nasty.HEADERS);
      if (dice.percent(60)) {
        String name = line.substring(0, line.indexOf(':') + 1);
        lines.removeIf(each -> each.startsWith(name));
      }
      lines.add(line);
    }
  }

  private HostileRequest page(Dice dice) {
    SchemaValues values = new SchemaValues(vocabulary, dice);
    Listed like = operations.get(dice.below(operations.size()));
    String address =
        new Addresses(values, dice).address(dice.any(PAGES), like.operation(), dice.below(3));
    List<String> lines = new ArrayList<>();
    String method = dice.percent(80) ? "GET" : "POST";
    lines.add(method + " " + address + " HTTP/1.1");
    lines.add("Accept: text/html");
    String form =
        method.equals("GET") ? "" : "a=%u0041&form-token=x&name=" + dice.any(Nasty.ENCODINGS);
    if (!form.isEmpty()) {
      lines.add("Content-Type: application/x-www-form-urlencoded");
    }
    spoilHeaders(lines, 1, dice);
    return new HostileRequest(lines, form, false).framed();
  }
}
