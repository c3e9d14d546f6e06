package org.hedgerow.web.curriculum;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.http.AccentParameter;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.Quoted;

/**
 * {@code GET /rules/{name}}, {@code /sequences/{name}} and {@code /sight-words/{name}}: one of the
 * sets that a centre chooses from, as the list of all has it.
 */
final class NamedRead<T> implements Read {
  private static final String NAME = "name";

  private final Json json;
  private final String kind;
  private final boolean byAccent;
  private final Sets<T> sets;
  private final Function<T, String> name;

  /** Gives all sets of an edition, in an accent where that makes a difference. */
  @FunctionalInterface
  interface Sets<T> {
    List<T> of(Lexicon lexicon, String accent);
  }

  /**
   * The edition, and beside it what the set consists of.
   *
   * @param accent left out where it makes no difference
   */
  record View<T>(
      int edition,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String accent,
      @JsonUnwrapped T set) {}

  private NamedRead(
      Json json, String kind, boolean byAccent, Sets<T> sets, Function<T, String> name) {
    this.json = json;
    this.kind = kind;
    this.byAccent = byAccent;
    this.sets = sets;
    this.name = name;
  }

  public static NamedRead<?> rules(Json json) {
    return new NamedRead<>(
        json,
        "set of rules",
        /* byAccent= */ false,
        (lexicon, accent) -> RulesRead.all(lexicon),
        RulesRead.Named::name);
  }

  public static NamedRead<?> sequences(Json json) {
    return new NamedRead<>(
        json,
        "sequence",
        /* byAccent= */ true,
        (lexicon, accent) -> SequencesView.of(lexicon, accent).sequences(),
        SequencesView.Named::name);
  }

  public static NamedRead<?> sightWords(Json json) {
    return new NamedRead<>(
        json,
        "set of sight words",
        /* byAccent= */ false,
        (lexicon, accent) -> SightWordsRead.all(lexicon),
        SightWordsRead.Named::name);
  }

  @Override
  public List<String> parameters() {
    return byAccent ? AccentParameter.NAMES : List.of();
  }

  @Override
  public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
    String accent = byAccent ? AccentParameter.one(lexicon, parameters).tag() : "";
    String wanted = path.getOrDefault(NAME, "");
    parameters.errors().throwIfAny();
    List<T> all = sets.of(lexicon, accent);
    T found =
        all.stream()
            .filter(each -> name.apply(each).equals(wanted))
            .findFirst()
            .orElseThrow(() -> missing(wanted, all.stream().map(name).toList()));
    return Question.json(
        "%s/%s?%s".formatted(kind, wanted, accent),
        json,
        () -> new View<>(lexicon.edition(), accent, found));
  }

  private ProblemException missing(String wanted, List<String> names) {
    return Problem.at(
            ProblemType.NOT_FOUND,
            NAME,
            "There is no %s called %s. There are %s."
                .formatted(kind, Quoted.of(wanted), String.join(", ", names)))
        .exception();
  }
}
