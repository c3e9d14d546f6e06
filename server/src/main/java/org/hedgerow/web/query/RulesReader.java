package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.RuleSets;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.web.problems.ProblemType;

/**
 * Reads reading rules: names of switches with commas, {@code no-} before those to turn off; before
 * them perhaps the name of a set that they change.
 */
public final class RulesReader {

  private static final String OFF = "no-";

  private final RuleSets sets;
  private final ValidationErrors errors;

  public RulesReader(RuleSets sets, ValidationErrors errors) {
    this.sets = sets;
    this.errors = errors;
  }

  /** The rules of the set that the text names, else the default; with switches turned. */
  public ReadingRules read(String parameter, Optional<String> text) {
    Map<Switch, Boolean> turned = new EnumMap<>(Switch.class);
    List<String> names =
        text.map(all -> Arrays.stream(all.split(",", -1)).map(String::strip).toList())
            .orElse(List.of());
    Optional<RuleSet> set = names.stream().findFirst().flatMap(sets::named);
    names.stream().skip(set.isPresent() ? 1 : 0).forEach(name -> turn(parameter, name, turned));
    ReadingRules rules = set.map(RuleSet::rules).orElse(ReadingRules.DEFAULT);
    for (Map.Entry<Switch, Boolean> each : turned.entrySet()) {
      rules = rules.with(each.getKey(), each.getValue());
    }
    return rules;
  }

  private void turn(String parameter, String name, Map<Switch, Boolean> turned) {
    boolean on = !name.startsWith(OFF);
    Optional<Switch> named = Switch.labelled(on ? name : name.substring(OFF.length()));
    if (sets.named(name).isPresent()) {
      errors.invalid(
          parameter, "Name one set of rules only, and name it first: “%s,…”.".formatted(name));
    } else if (named.isEmpty()) {
      errors.add(unknown(parameter, name));
    } else if (turned.getOrDefault(named.get(), on) != on) {
      bothWays(parameter, named.get());
    } else {
      turned.put(named.get(), on);
    }
  }

  private ValidationError unknown(String parameter, String name) {
    List<String> labels = new ArrayList<>(sets.names());
    for (Switch each : Switch.values()) {
      labels.addAll(List.of(each.label(), OFF + each.label()));
    }
    return ValidationError.unknown(
        ProblemType.UNKNOWN_RULE,
        parameter,
        "There is no reading rule %s.".formatted(Quoted.of(name)),
        ClosestName.to(name.toLowerCase(Locale.ROOT), labels),
        "There are the sets %s, and %s, each also with no- before it."
            .formatted(
                String.join(", ", sets.names()),
                String.join(", ", Arrays.stream(Switch.values()).map(Switch::label).toList())));
  }

  private void bothWays(String parameter, Switch named) {
    errors.invalid(parameter, "%s is turned both on and off. Choose one.".formatted(named.label()));
  }
}
