package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;

/** Reads which words children know as wholes: the name of a set, or {@code none}. */
public final class SightWordsReader {

  private final SightWordSets sets;
  private final ValidationErrors errors;

  public SightWordsReader(SightWordSets sets, ValidationErrors errors) {
    this.sets = sets;
    this.errors = errors;
  }

  /**
   * The words of the set that the text names; without a text, of the one that counts where nothing
   * is chosen.
   */
  public Set<String> read(String parameter, Optional<String> text) {
    return chosen(parameter, text).map(SightWords::asSet).orElse(Set.of());
  }

  /** The set itself, for those who say which it was; empty for {@code none} and after an error. */
  public Optional<SightWords> chosen(String parameter, Optional<String> text) {
    Optional<String> name = text.map(String::strip);
    if (name.isEmpty()) {
      return sets.usual();
    }
    Optional<SightWords> set = name.flatMap(sets::named);
    if (set.isEmpty() && !name.get().equals(SightWordSets.NO_WORDS)) {
      unknown(parameter, name.get());
    }
    return set;
  }

  private void unknown(String parameter, String name) {
    List<String> names = new ArrayList<>(sets.names());
    names.add(SightWordSets.NO_WORDS);
    Optional<String> nearest = ClosestName.to(name.toLowerCase(Locale.ROOT), names);
    String advice =
        nearest
            .map("Did you mean “%s”?"::formatted)
            .orElse("There are %s.".formatted(String.join(", ", names)));
    errors.invalid(
        parameter,
        "There is no set of sight words %s. %s".formatted(Quoted.of(name), advice),
        nearest);
  }
}
