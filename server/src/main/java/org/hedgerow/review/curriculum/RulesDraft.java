package org.hedgerow.review.curriculum;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.review.Given;
import org.jspecify.annotations.Nullable;

/**
 * A set of reading rules as somebody writes it.
 *
 * @param switches labels of those that are on; all others are off
 */
public record RulesDraft(String name, String title, String note, List<String> switches)
    implements SetDraft<RuleSet> {
  public RulesDraft(
      @Nullable String name,
      @Nullable String title,
      @Nullable String note,
      @Nullable List<String> switches) {
    this.name = Given.text(name);
    this.title = Given.text(title);
    this.note = Given.text(note);
    this.switches = Given.list(switches);
  }

  public static RulesDraft of(RuleSet set) {
    return new RulesDraft(
        set.name(),
        set.title(),
        set.note(),
        set.rules().on().stream().map(Switch::label).sorted().toList());
  }

  @Override
  public List<FieldError> contentErrors(Catalogue catalogue) {
    List<FieldError> errors = new ArrayList<>();
    if (Switch.labelled(name).isPresent()) {
      errors.add(new FieldError("name", "One of the rules is called so. Take another name."));
    }
    for (String each : switches) {
      if (Switch.labelled(each).isEmpty()) {
        errors.add(new FieldError("switches", "There is no rule “%s”.".formatted(each)));
      }
    }
    return errors;
  }

  @Override
  public Map<String, Object> content() {
    return Map.of("switches", rules().label());
  }

  @Override
  public RuleSet toSet(Catalogue catalogue) {
    return new RuleSet(name, title, rules(), note);
  }

  private ReadingRules rules() {
    ReadingRules rules = ReadingRules.DEFAULT;
    for (Switch each : Switch.values()) {
      rules = rules.with(each, switches.contains(each.label()));
    }
    return rules;
  }
}
