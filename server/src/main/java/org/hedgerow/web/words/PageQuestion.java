package org.hedgerow.web.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;
import org.jspecify.annotations.Nullable;

/**
 * What the first page is asked for.
 *
 * @param find what to look for in the chart
 * @param word the word to look at closely
 * @param list the parameters of the list; none for the chart
 */
public record PageQuestion(
    Optional<String> find, Optional<String> word, Map<String, List<String>> list) {

  static final String WORD = "word";

  /** Parameters of the chart itself. */
  public static final List<String> OF_CHART =
      List.of(ChosenAccents.PARAMETER, EditionChoice.PARAMETER);

  /**
   * Parameters left empty count as not given, and several accents as a list of them: that is how
   * forms send them. Names that nobody knows are passed over.
   */
  public static PageQuestion of(Map<String, List<String>> given) {
    Map<String, List<String>> list = new LinkedHashMap<>(Parameters.withoutEmpty(given));
    list.computeIfPresent(ChosenAccents.PARAMETER, (name, tags) -> List.of(String.join(",", tags)));
    Optional<String> find = first(list.remove(ParameterNames.FIND));
    Optional<String> word = first(list.remove(WORD)).map(PageQuestion::folded);
    list.keySet().retainAll(WordParameters.NAMES);
    return new PageQuestion(find, word, Map.copyOf(list));
  }

  private static Optional<String> first(@Nullable List<String> values) {
    return values == null ? Optional.empty() : values.stream().map(String::strip).findFirst();
  }

  /** What is no word stays as it was typed. */
  private static String folded(String word) {
    return word.matches("[A-Za-z]+") ? word.toLowerCase(Locale.ROOT) : word;
  }

  /** Whether only accents and an edition are chosen, and nothing that makes a list. */
  public boolean isAboutChart() {
    return OF_CHART.containsAll(list.keySet());
  }

  /** The edition that is named, as it stands in addresses. */
  public Optional<String> namedEdition() {
    return first(list.get(EditionChoice.PARAMETER));
  }

  /**
   * The edition that the list is asked of.
   *
   * @throws org.hedgerow.web.query.InvalidQueryException if there is no such edition
   */
  public Lexicon edition(Editions editions) {
    Parameters parameters = new Parameters(list, WordParameters.NAMES);
    Lexicon chosen = EditionChoice.of(editions, parameters);
    parameters.errors().throwIfAny();
    return chosen;
  }

  /**
   * The list that is asked for.
   *
   * @throws org.hedgerow.web.query.InvalidQueryException with all that is wrong
   */
  WordRequest request(Lexicon edition) {
    return WordRequest.read(edition, new Parameters(list, WordParameters.NAMES));
  }

  /** The parameters of the list without one of them. */
  public Map<String, List<String>> listWithout(String name) {
    Map<String, List<String>> rest = new LinkedHashMap<>(list);
    rest.remove(name);
    return rest;
  }
}
