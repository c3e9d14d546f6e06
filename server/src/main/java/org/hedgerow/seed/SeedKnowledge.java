package org.hedgerow.seed;

import static java.util.stream.Collectors.toSet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.seedlexicon.AdjectiveRow;
import org.hedgerow.seedlexicon.AdverbRow;
import org.hedgerow.seedlexicon.InflectionKind;
import org.hedgerow.seedlexicon.NounRow;
import org.hedgerow.seedlexicon.SceneRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.VerbRow;
import org.hedgerow.sentences.compose.Adjective;
import org.hedgerow.sentences.compose.ClauseMode;
import org.hedgerow.sentences.compose.Closing;
import org.hedgerow.sentences.compose.Countability;
import org.hedgerow.sentences.compose.Noun;
import org.hedgerow.sentences.compose.Scene;
import org.hedgerow.sentences.compose.Selection;
import org.hedgerow.sentences.compose.SentenceKind;
import org.hedgerow.sentences.compose.Verb;
import org.hedgerow.sentences.compose.VerbFrame;
import org.hedgerow.sentences.compose.Whereabouts;
import org.hedgerow.sentences.compose.WorldKnowledge;

/** What the seed data know of the world of a child. */
public final class SeedKnowledge {

  private final SeedLexicon seed;
  private final Paradigms paradigms;
  private final NounClasses classes;

  private SeedKnowledge(SeedLexicon seed) {
    this.seed = seed;
    this.paradigms = new Paradigms(seed.inflections());
    this.classes = new NounClasses(seed.nounClasses());
  }

  /**
   * @throws IllegalArgumentException if a row names a class that does not exist
   */
  public static WorldKnowledge of(SeedLexicon seed) {
    return new SeedKnowledge(seed).knowledge();
  }

  private WorldKnowledge knowledge() {
    return new WorldKnowledge(
        seed.nouns().stream().map(this::noun).toList(),
        seed.verbs().stream().filter(row -> !isBeing(row)).map(this::frame).toList(),
        seed.verbs().stream().filter(SeedKnowledge::isBeing).map(this::whereabouts).toList(),
        seed.adjectives().stream().map(this::adjective).toList(),
        seed.adverbs().stream().map(SeedKnowledge::closing).toList(),
        seed.scenes().stream().map(SeedKnowledge::scene).toList());
  }

  private Noun noun(NounRow row) {
    Countability countability = Countability.valueOf(row.number().toUpperCase(Locale.ROOT));
    return new Noun(
        row.noun(),
        countability == Countability.COUNT
            ? told(row.plural(), row.noun(), InflectionKind.PLURAL)
            : "",
        countability,
        row.size(),
        row.classes().get(0),
        classes.withAncestors(row.classes()),
        Set.copyOf(row.landmarks()));
  }

  private String told(String byHand, String base, InflectionKind kind) {
    return byHand.isEmpty() ? paradigms.form(base, kind) : byHand;
  }

  private VerbFrame frame(VerbRow row) {
    return new VerbFrame(
        new Verb(
            row.verb(),
            paradigms.form(row.verb(), InflectionKind.THIRD_PERSON),
            told(row.past(), row.verb(), InflectionKind.PAST),
            paradigms.form(row.verb(), InflectionKind.GERUND)),
        selection(row.subject()),
        row.object().isEmpty() ? Optional.empty() : Optional.of(selection(row.object())),
        row.smaller(),
        Places.of(row.where(), this::selection),
        row.whereNeeded(),
        row.rest(),
        row.restNeeded(),
        row.forms().stream().map(SeedKnowledge::mode).collect(toSet()));
  }

  /** Rows of <em>be</em> say where things are. */
  private static boolean isBeing(VerbRow row) {
    return row.verb().equals("be");
  }

  private Whereabouts whereabouts(VerbRow row) {
    return new Whereabouts(selection(row.subject()), Places.of(row.where(), this::selection));
  }

  private static Scene scene(SceneRow row) {
    SentenceKind kind =
        SentenceKind.labelled(row.kind())
            .orElseThrow(() -> new IllegalArgumentException("no kind of sentence: " + row.kind()));
    return Scene.of(kind, row.scene());
  }

  private static Closing closing(AdverbRow row) {
    return new Closing(
        row.adverb(),
        row.after().stream()
            .map(label -> Closing.After.valueOf(label.toUpperCase(Locale.ROOT)))
            .collect(toSet()));
  }

  private static ClauseMode mode(String label) {
    return ClauseMode.valueOf(label.toUpperCase(Locale.ROOT));
  }

  private Adjective adjective(AdjectiveRow row) {
    return new Adjective(
        row.adjective(),
        selection(row.nouns()),
        row.kind(),
        !row.place().equals("after"),
        !row.place().equals("before"),
        Set.copyOf(row.against()));
  }

  private Selection selection(List<String> terms) {
    return classes.checked(Selection.of(terms));
  }
}
