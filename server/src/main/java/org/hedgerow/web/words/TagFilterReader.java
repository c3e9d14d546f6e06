package org.hedgerow.web.words;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Meaning;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.lexicon.Range;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.web.query.ChoiceReader;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.Parameters;

/** Reads what a list asks of the tags of its words. */
final class TagFilterReader {

  private static final Range PICTURABLE = new Range(0, TagFilter.MOST_PICTURABLE);
  private static final List<String> YES_OR_NO = List.of("true", "false");
  private static final String STARTER = "starter";

  private final Parameters parameters;
  private final ChoiceReader choices;
  private final Resolved resolved;

  TagFilterReader(Parameters parameters, Resolved resolved) {
    this.parameters = parameters;
    this.choices = new ChoiceReader(parameters);
    this.resolved = resolved;
  }

  TagFilter filter() {
    return new TagFilter(picturable(), pictured(), partOfSpeech(), meanings(), starter());
  }

  private int picturable() {
    int least = choices.number(ParameterNames.PICTURABLE, PICTURABLE, 0);
    resolved.note(ParameterNames.PICTURABLE, String.valueOf(least));
    return least;
  }

  private boolean pictured() {
    boolean pictured =
        choices
            .name(ParameterNames.PICTURED, YES_OR_NO, Optional::of)
            .map(Boolean::valueOf)
            .orElse(false);
    resolved.note(ParameterNames.PICTURED, String.valueOf(pictured));
    return pictured;
  }

  private Optional<PartOfSpeech> partOfSpeech() {
    List<String> labels = Arrays.stream(PartOfSpeech.values()).map(PartOfSpeech::label).toList();
    Optional<PartOfSpeech> part =
        choices.name(ParameterNames.PART_OF_SPEECH, labels, PartOfSpeech::labelled);
    return resolved.note(ParameterNames.PART_OF_SPEECH, part, PartOfSpeech::label);
  }

  private Set<Meaning> meanings() {
    EnumSet<Meaning> meanings = EnumSet.noneOf(Meaning.class);
    parameters
        .text(ParameterNames.MEANING)
        .ifPresent(text -> Arrays.stream(text.split(",", -1)).forEach(name -> add(name, meanings)));
    resolved.note(
        ParameterNames.MEANING, meanings.stream().map(Meaning::label).collect(joining(",")));
    return meanings;
  }

  private void add(String name, Set<Meaning> meanings) {
    List<String> labels = Arrays.stream(Meaning.values()).map(Meaning::label).toList();
    choices.name(ParameterNames.MEANING, name, labels, Meaning::labelled).ifPresent(meanings::add);
  }

  private boolean starter() {
    Optional<String> mark = choices.name(ParameterNames.MARK, List.of(STARTER), Optional::of);
    return resolved.note(ParameterNames.MARK, mark, label -> label).isPresent();
  }
}
