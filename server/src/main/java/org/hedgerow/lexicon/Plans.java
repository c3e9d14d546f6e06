package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.reading.RuleSets;
import org.hedgerow.reading.Sequence;
import org.hedgerow.reading.Teaching;

/** The named reading rules and the sequences of an edition, ours among them. Thread-safe. */
public final class Plans {

  private final Teaching teaching;
  private final Map<String, Lazy<Sequence>> ours = new HashMap<>();

  Plans(Lexicon lexicon, Teaching teaching) {
    this.teaching = teaching;
    for (AccentCatalogue each : lexicon.accents()) {
      String accent = each.accent().tag();
      ours.put(accent, new Lazy<>(() -> new OurSequence(lexicon, accent).sequence()));
    }
  }

  public RuleSets rules() {
    return teaching.rules();
  }

  /** All sequences, the computed one last: it depends on the accent. */
  public List<Sequence> sequences(String accent) {
    List<Sequence> all = new ArrayList<>(teaching.sequences());
    Optional.ofNullable(ours.get(accent)).map(Lazy::get).ifPresent(all::add);
    return List.copyOf(all);
  }

  public Optional<Sequence> sequence(String name, String accent) {
    return sequences(accent).stream().filter(each -> each.name().equals(name)).findFirst();
  }
}
