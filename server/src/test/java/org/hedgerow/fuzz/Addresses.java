package org.hedgerow.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLEncoder;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.web.contract.Operation;
import org.hedgerow.web.contract.Parameter;
import tools.jackson.databind.JsonNode;

/** Addresses of an operation: what may stand in its path and its query, and what may not. */
final class Addresses {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^}]+)}");

  /** Those whose accounts and tokens the run itself needs come later. */
  private static final List<String> NUMBERS = List.of("1", "2", "3", "1", "2", "3", "9999", "0");

  private final SchemaValues values;
  private final Dice dice;

  Addresses(SchemaValues values, Dice dice) {
    this.values = values;
    this.dice = dice;
  }

  /**
   * @param hostile how many of its parts aren't as they should be
   */
  String address(String template, Operation operation, int hostile) {
    List<String> query = new ArrayList<>();
    for (Parameter parameter : operation.parameters("query")) {
      if (parameter.isRequired() || dice.percent(25)) {
        query.add(parameter.name() + "=" + encoded(value(parameter)));
      }
    }
    String path = template;
    for (int i = 0; i < hostile; i++) {
      if (path.contains("{") && dice.percent(50)) {
        path = PLACEHOLDER.matcher(path).replaceFirst(Matcher.quoteReplacement(nasty()));
      } else {
        spoil(query);
      }
    }
    return filled(path, operation) + (query.isEmpty() ? "" : "?" + String.join("&", query));
  }

  private String filled(String path, Operation operation) {
    return PLACEHOLDER
        .matcher(path)
        .replaceAll(match -> Matcher.quoteReplacement(inPath(match.group(1), operation)));
  }

  private String inPath(String name, Operation operation) {
    return operation.parameters("path").stream()
        .filter(parameter -> parameter.name().equals(name))
        .map(this::inPath)
        .findFirst()
        .orElse("1");
  }

  private String inPath(Parameter parameter) {
    boolean number =
        parameter.place().child("schema").node().path("type").asString("").equals("integer");
    return number && !parameter.name().equals("edition")
        ? dice.any(NUMBERS)
        : encoded(value(parameter));
  }

  private String value(Parameter parameter) {
    JsonNode value = values.value(parameter.place().child("schema"));
    return value.isArray()
        ? String.join(",", value.values().stream().map(JsonNode::asString).toList())
        : value.asString();
  }

  private void spoil(List<String> query) {
    String name = query.isEmpty() ? "accent" : dice.any(query).split("=", 2)[0];
    switch (dice.below(8)) {
      case 0 -> query.add(name + "=" + nasty());
      case 1 -> query.add(nasty() + "=1");
      case 2 -> query.add(name);
      case 3 -> query.add("=");
      case 4 -> query.add("q=" + nasty());
      case 5 -> query.add(name + "%00=" + nasty());
      default -> {
        query.removeIf(pair -> pair.startsWith(name + "="));
        query.add(name + "=" + nasty());
      }
    }
  }

  private String nasty() {
    return dice.percent(50) ? dice.any(Nasty.ENCODINGS) : encoded(dice.any(Nasty.TEXTS));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, UTF_8).replace("+", "%20");
  }
}
