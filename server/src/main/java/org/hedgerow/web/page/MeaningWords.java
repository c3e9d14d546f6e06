package org.hedgerow.web.page;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What words are about, as teachers would say it. */
public final class MeaningWords {

  /** Values that the form offers: what children's words are mostly about. */
  public static final List<String> OFFERED =
      List.of(
          "animal",
          "body",
          "food",
          "plant",
          "artifact",
          "object",
          "person",
          "location",
          "weather,phenomenon",
          "motion",
          "contact",
          "consumption");

  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("animal", "animals"),
          Map.entry("body", "the body"),
          Map.entry("food", "food and drink"),
          Map.entry("plant", "plants"),
          Map.entry("artifact", "things people make"),
          Map.entry("object", "things in nature"),
          Map.entry("person", "people"),
          Map.entry("location", "places"),
          Map.entry("phenomenon", "what happens in nature"),
          Map.entry("weather", "weather"),
          Map.entry("motion", "moving"),
          Map.entry("contact", "doing with the hands"),
          Map.entry("consumption", "eating and drinking"));

  private MeaningWords() {}

  /** Several classes with commas are read as one or the other. */
  public static String of(String meanings) {
    return Arrays.stream(meanings.split(",", -1))
        .map(each -> WORDS.getOrDefault(each, each))
        .collect(Collectors.joining(" or "));
  }
}
