package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;

/**
 * Reads, and writes, lists of the phonograms that children know already: values, and steps of
 * sequences, which stand for all that is taught up to them.
 */
public final class TaughtReader {

  private final Catalogue catalogue;
  private final PhonogramReader phonograms;
  private final StepReader steps;
  private final Map<String, Set<Correspondence>> stepsRead = new LinkedHashMap<>();

  /**
   * @param accent the tag of the accent in which steps are worked out
   */
  public TaughtReader(Lexicon lexicon, String accent, ValidationErrors errors) {
    this.catalogue = lexicon.catalogue();
    this.phonograms = new PhonogramReader(catalogue, errors);
    this.steps = new StepReader(lexicon.plans(), accent, errors);
  }

  /** The values in a list with commas: {@code sh,ch,oo2}. */
  public Set<Correspondence> read(String parameter, Optional<String> text) {
    return text.map(names -> all(parameter, Arrays.asList(names.split(",", -1)))).orElse(Set.of());
  }

  private Set<Correspondence> all(String parameter, List<String> names) {
    Set<Correspondence> taught = new LinkedHashSet<>();
    names.forEach(name -> taught.addAll(one(parameter, name)));
    return taught;
  }

  /** The values in a list, each error with its place: {@code taught[2]}. */
  public Set<Correspondence> readEach(String parameter, List<String> names) {
    Set<Correspondence> taught = new LinkedHashSet<>();
    for (int i = 0; i < names.size(); i++) {
      taught.addAll(one("%s[%d]".formatted(parameter, i), names.get(i)));
    }
    return taught;
  }

  private Collection<Correspondence> one(String parameter, String name) {
    if (!StepReader.looksLikeStep(name)) {
      return phonograms.taught(parameter, name);
    }
    steps.read(parameter, name).ifPresent(step -> stepsRead.put(step.label(), step.taught()));
    return stepsRead.values().stream().flatMap(Set::stream).toList();
  }

  /**
   * The shortest list for some values: the steps that were read, then what is beside them, by
   * alphabet; without a number where it is all values.
   */
  public List<String> labels(Set<Correspondence> taught) {
    Set<Correspondence> rest = new LinkedHashSet<>(taught);
    stepsRead.values().forEach(rest::removeAll);
    List<String> labels = new ArrayList<>(stepsRead.keySet());
    labels.addAll(valueLabels(rest));
    return labels;
  }

  private List<String> valueLabels(Set<Correspondence> taught) {
    List<String> labels = new ArrayList<>();
    for (String grapheme : catalogue.phonograms()) {
      List<Correspondence> values = catalogue.values(grapheme);
      if (taught.containsAll(values)) {
        labels.add(grapheme);
      } else {
        values.stream()
            .filter(taught::contains)
            .forEach(value -> labels.add(grapheme + value.value().orElseThrow()));
      }
    }
    return labels;
  }
}
