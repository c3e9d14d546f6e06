package org.hedgerow.web.sentences;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What sentences were measured by, with all defaults filled in. */
record SentenceQuery(
    Optional<String> phonogram,
    OptionalInt value,
    List<String> accent,
    String rules,
    List<String> taught,
    String sightWords,
    int minimum,
    int maximum) {
  /** The older name, for those who read it. */
  @JsonProperty
  List<String> accents() {
    return accent;
  }
}
