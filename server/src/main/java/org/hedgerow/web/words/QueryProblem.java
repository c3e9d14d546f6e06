package org.hedgerow.web.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.web.chart.Chart;
import org.hedgerow.web.chart.ChartValue;
import org.hedgerow.web.page.Fit;
import org.hedgerow.web.page.ProblemPage;
import org.hedgerow.web.query.Fault;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.QueryString;

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
    List<Fit> ways = new ArrayList<>();
    invalid.faults().forEach(fault -> nearest(fault).ifPresent(ways::add));
    withoutFaults(invalid.faults()).ifPresent(ways::add);
    ways.add(new Fit("All phonograms", "/"));
    return new ProblemPage(
        "This list can’t be shown",
        invalid.faults().stream().map(Fault::message).toList(),
        ways.stream().distinct().toList());
  }

  private Optional<Fit> nearest(Fault fault) {
    return fault.nearest().flatMap(nearest -> nearest(fault.parameter(), nearest));
  }

  private Optional<Fit> nearest(String parameter, String nearest) {
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

  private static Fit way(ChartValue value) {
    String name = "%s as in %s".formatted(value.grapheme(), value.keyWordText());
    return new Fit(name, value.address());
  }

  /** The same list without what is wrong, if it is still about something. */
  private Optional<Fit> withoutFaults(List<Fault> faults) {
    Map<String, String> rest = new LinkedHashMap<>(given());
    faults.forEach(fault -> rest.remove(fault.parameter()));
    boolean isAboutSomething = rest.keySet().stream().anyMatch(TOPIC::contains);
    boolean isWhole = rest.containsKey("phonogram") || !rest.containsKey("value");
    return isAboutSomething && isWhole
        ? Optional.of(new Fit("The list without that", "/?" + new QueryString(rest)))
        : Optional.empty();
  }

  private Map<String, String> given() {
    Map<String, String> given = new LinkedHashMap<>();
    question.list().forEach((name, values) -> given.put(name, values.get(0)));
    return given;
  }
}
