package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;

/** Reads, and writes, lists of the phonograms that children know already. */
public final class TaughtReader {

  private final Catalogue catalogue;
  private final PhonogramReader phonograms;

  public TaughtReader(Catalogue catalogue, Faults faults) {
    this.catalogue = catalogue;
    this.phonograms = new PhonogramReader(catalogue, faults);
  }

  /** The values in a list with commas: {@code sh,ch,oo2}. */
  public Set<Correspondence> read(String parameter, Optional<String> text) {
    return text.map(names -> all(parameter, Arrays.asList(names.split(",", -1)))).orElse(Set.of());
  }

  private Set<Correspondence> all(String parameter, List<String> names) {
    Set<Correspondence> taught = new LinkedHashSet<>();
    names.forEach(name -> taught.addAll(phonograms.taught(parameter, name)));
    return taught;
  }

  /** The values in a list, each fault with its place: {@code taught[2]}. */
  public Set<Correspondence> readEach(String parameter, List<String> names) {
    Set<Correspondence> taught = new LinkedHashSet<>();
    for (int i = 0; i < names.size(); i++) {
      taught.addAll(phonograms.taught("%s[%d]".formatted(parameter, i), names.get(i)));
    }
    return taught;
  }

  /** The shortest list for some values, by alphabet; without a number where it is all values. */
  public List<String> labels(Set<Correspondence> taught) {
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
