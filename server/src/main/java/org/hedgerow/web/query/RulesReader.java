package org.hedgerow.web.query;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.web.problems.ProblemType;

/** Reads reading rules: names of switches with commas, {@code no-} before those to turn off. */
public final class RulesReader {

  private static final String OFF = "no-";

  private final Faults faults;

  public RulesReader(Faults faults) {
    this.faults = faults;
  }

  /** The default rules with the switches turned that the text names. */
  public ReadingRules read(String parameter, Optional<String> text) {
    Map<Switch, Boolean> turned = new EnumMap<>(Switch.class);
    text.ifPresent(
        names ->
            Arrays.stream(names.split(",", -1))
                .map(String::strip)
                .forEach(name -> turn(parameter, name, turned)));
    ReadingRules rules = ReadingRules.DEFAULT;
    for (Map.Entry<Switch, Boolean> each : turned.entrySet()) {
      rules = rules.with(each.getKey(), each.getValue());
    }
    return rules;
  }

  private void turn(String parameter, String name, Map<Switch, Boolean> turned) {
    boolean on = !name.startsWith(OFF);
    Optional<Switch> named = Switch.labelled(on ? name : name.substring(OFF.length()));
    if (named.isEmpty()) {
      faults.add(unknown(parameter, name));
    } else if (turned.getOrDefault(named.get(), on) != on) {
      bothWays(parameter, named.get());
    } else {
      turned.put(named.get(), on);
    }
  }

  private static Fault unknown(String parameter, String name) {
    List<String> labels =
        Arrays.stream(Switch.values())
            .flatMap(each -> List.of(each.label(), OFF + each.label()).stream())
            .toList();
    return Fault.unknown(
        ProblemType.UNKNOWN_RULE,
        parameter,
        "There is no reading rule %s.".formatted(Quoted.of(name)),
        Nearest.to(name.toLowerCase(Locale.ROOT), labels),
        "There are %s, each also with no- before it."
            .formatted(
                String.join(", ", Arrays.stream(Switch.values()).map(Switch::label).toList())));
  }

  private void bothWays(String parameter, Switch named) {
    faults.invalid(parameter, "%s is turned both on and off. Choose one.".formatted(named.label()));
  }
}
