package org.hedgerow.web.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.web.chart.Chart;
import org.hedgerow.web.chart.ChartValue;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.ProblemPage;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.QueryString;
import org.hedgerow.web.query.ValidationError;

/** Says what is wrong with a question for a list, and offers the nearest question that isn't. */
public final class QueryProblem {

  private static final List<String> TOPIC = List.of("phonogram", "value", "sound");

  private final Chart chart;
  private final PageQuestion question;

  public QueryProblem(Chart chart, PageQuestion question) {
    this.chart = chart;
    this.question = question;
  }

  public ProblemPage page(InvalidQueryException invalid) {
    List<FittingList> ways = new ArrayList<>();
    invalid.errors().forEach(error -> nearest(error).ifPresent(ways::add));
    withoutErrors(invalid.errors()).ifPresent(ways::add);
    ways.add(new FittingList("All phonograms", "/"));
    return new ProblemPage(
        "This list can’t be shown",
        invalid.errors().stream().map(ValidationError::message).toList(),
        ways.stream().distinct().toList());
  }

  private Optional<FittingList> nearest(ValidationError error) {
    return error.nearest().flatMap(nearest -> nearest(error.parameter(), nearest));
  }

  private Optional<FittingList> nearest(String parameter, String nearest) {
    return switch (parameter) {
      case "phonogram" -> chart.valuesOf(nearest).stream().findFirst().map(QueryProblem::way);
      case "value" -> value(nearest).map(QueryProblem::way);
      default -> Optional.empty();
    };
  }

  private Optional<ChartValue> value(String number) {
    return chart.valuesOf(given().getOrDefault("phonogram", "")).stream()
        .filter(value -> String.valueOf(value.number()).equals(number))
        .findFirst();
  }

  private static FittingList way(ChartValue value) {
    String name = "%s as in %s".formatted(value.grapheme(), value.keyWordText());
    return new FittingList(name, value.address());
  }

  /** The same list without what is wrong, if it is still about something. */
  private Optional<FittingList> withoutErrors(List<ValidationError> errors) {
    Map<String, String> rest = new LinkedHashMap<>(given());
    errors.forEach(error -> rest.remove(error.parameter()));
    boolean isAboutSomething = rest.keySet().stream().anyMatch(TOPIC::contains);
    boolean isWhole = rest.containsKey("phonogram") || !rest.containsKey("value");
    return isAboutSomething && isWhole
        ? Optional.of(new FittingList("The list without that", "/?" + new QueryString(rest)))
        : Optional.empty();
  }

  private Map<String, String> given() {
    Map<String, String> given = new LinkedHashMap<>();
    question.list().forEach((name, values) -> given.put(name, values.get(0)));
    return given;
  }
}
