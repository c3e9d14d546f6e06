package org.hedgerow.store.editions;

import static java.util.stream.Collectors.toMap;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;

/** How reading rules, the steps of sequences and sight words stand in their tables. */
final class CurriculumJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Map<String, Correspondence> values;

  CurriculumJson(Catalogue catalogue) {
    this.values =
        catalogue.correspondences().stream()
            .filter(Correspondence::isTaught)
            .collect(toMap(Correspondence::label, Function.identity()));
  }

  /** Every rule, so that a rule that comes later, or another default, changes no edition. */
  static String switches(ReadingRules rules) {
    Map<String, Boolean> switches = new LinkedHashMap<>();
    for (Switch each : Switch.values()) {
      switches.put(each.label(), rules.allow(each));
    }
    return write(switches);
  }

  /** A rule of which nothing is said is off: it came later. */
  static ReadingRules rules(String switches) {
    Map<String, Boolean> on = read(switches, new TypeReference<>() {});
    ReadingRules rules = ReadingRules.DEFAULT;
    for (Switch each : Switch.values()) {
      rules = rules.with(each, on.getOrDefault(each.label(), false));
    }
    return rules;
  }

  static String steps(List<List<Correspondence>> steps) {
    return write(
        steps.stream().map(step -> step.stream().map(Correspondence::label).toList()).toList());
  }

  List<List<Correspondence>> steps(String written) {
    List<List<String>> steps = read(written, new TypeReference<>() {});
    List<List<Correspondence>> read = new ArrayList<>();
    for (List<String> step : steps) {
      read.add(step.stream().map(this::value).toList());
    }
    return List.copyOf(read);
  }

  static String words(List<String> words) {
    return write(words);
  }

  static List<String> words(String written) {
    return read(written, new TypeReference<>() {});
  }

  private Correspondence value(String label) {
    Correspondence value = values.get(label);
    if (value == null) {
      throw new IllegalStateException("a sequence teaches %s, which isn't there".formatted(label));
    }
    return value;
  }

  private static String write(Object value) {
    try {
      return JSON.writeValueAsString(value);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static <T> T read(String json, TypeReference<T> type) {
    try {
      return JSON.readValue(json, type);
    } catch (JsonProcessingException problem) {
      throw new IllegalStateException("What centres choose from is damaged", problem);
    }
  }
}
