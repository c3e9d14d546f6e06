package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.reading.SightWordSets;
import org.hedgerow.reading.SightWords;
import org.hedgerow.web.problems.ProblemType;

/** Reads which words children know as wholes: the name of a set, or {@code none}. */
public final class SightWordsReader {

  private final SightWordSets sets;
  private final Faults faults;

  public SightWordsReader(SightWordSets sets, Faults faults) {
    this.sets = sets;
    this.faults = faults;
  }

  /**
   * The words of the set that the text names; without a text, of the one that counts where nothing
   * is chosen.
   */
  public Set<String> read(String parameter, Optional<String> text) {
    return chosen(parameter, text).map(SightWords::asSet).orElse(Set.of());
  }

  /** The set itself, for those who say which it was; empty for {@code none} and after a fault. */
  public Optional<SightWords> chosen(String parameter, Optional<String> text) {
    Optional<String> name = text.map(String::strip);
    if (name.isEmpty()) {
      return sets.usual();
    }
    Optional<SightWords> set = name.flatMap(sets::named);
    if (set.isEmpty() && !name.get().equals(SightWordSets.NO_WORDS)) {
      faults.add(unknown(parameter, name.get()));
    }
    return set;
  }

  private Fault unknown(String parameter, String name) {
    List<String> names = new ArrayList<>(sets.names());
    names.add(SightWordSets.NO_WORDS);
    return Fault.unknown(
        ProblemType.UNKNOWN_SIGHT_WORDS,
        parameter,
        "There is no set of sight words %s.".formatted(Quoted.of(name)),
        Nearest.to(name.toLowerCase(Locale.ROOT), names),
        "There are %s.".formatted(String.join(", ", names)));
  }
}
