package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Meaning;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.FieldError;
import org.jspecify.annotations.Nullable;

/**
 * What people say of a word beside its sounds. Where nothing is said, what the bank knows stays.
 *
 * @param commonness from 5, everyday, to 1, rare
 * @param picturable from 3, an object that you can hold or photograph, to 0, not at all
 * @param partsOfSpeech labels, the commonest first; empty to leave them
 * @param meanings labels of meaning classes, the commonest first; empty to leave them
 * @param notForChildren why it isn't for small children; an empty text says that it is for them
 */
@SuppressWarnings("OptionalUsedAsFieldOrParameterType")
public record WordLabels(
    Optional<Integer> commonness,
    Optional<Integer> picturable,
    List<String> partsOfSpeech,
    List<String> meanings,
    Optional<String> notForChildren) {
  public static final WordLabels NONE =
      new WordLabels(Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.empty());

  private static final int MAX_LENGTH = 200;

  public WordLabels {
    commonness = Given.optional(commonness);
    picturable = Given.optional(picturable);
    partsOfSpeech = Given.list(partsOfSpeech);
    meanings = Given.list(meanings);
    notForChildren = Given.optional(notForChildren).map(String::strip);
  }

  static WordLabels given(@Nullable WordLabels labels) {
    return labels == null ? NONE : labels;
  }

  boolean isEmpty() {
    return equals(NONE);
  }

  List<FieldError> errors() {
    List<FieldError> errors = new ArrayList<>();
    if (commonness.filter(level -> level < 1 || level > 5).isPresent()) {
      errors.add(new FieldError("labels.commonness", "From 1, rare, to 5, everyday."));
    }
    if (picturable.filter(level -> level < 0 || level > 3).isPresent()) {
      errors.add(
          new FieldError("labels.picturable", "From 0, not at all, to 3, an object you can hold."));
    }
    for (String part : partsOfSpeech) {
      if (PartOfSpeech.labelled(part).isEmpty()) {
        errors.add(
            new FieldError("labels.partsOfSpeech", "“%s” is no part of speech.".formatted(part)));
      }
    }
    for (String meaning : meanings) {
      if (Meaning.labelled(meaning).isEmpty()) {
        errors.add(
            new FieldError("labels.meanings", "“%s” is no meaning class.".formatted(meaning)));
      }
    }
    if (notForChildren.filter(reason -> reason.length() > MAX_LENGTH).isPresent()) {
      errors.add(
          new FieldError("labels.notForChildren", "At most %d characters.".formatted(MAX_LENGTH)));
    }
    return errors;
  }

  /** The word with all that is said here. */
  Word on(Word word, String source) {
    Word labelled = commonness.map(word::ofCommonness).orElse(word);
    labelled = tagged(labelled, Tag.PICTURABLE, picturable.map(String::valueOf), source);
    labelled = tagged(labelled, Tag.PART_OF_SPEECH, joined(partsOfSpeech), source);
    labelled = tagged(labelled, Tag.MEANING, joined(meanings), source);
    return notForChildren.filter(String::isEmpty).isPresent()
        ? labelled.without(Tag.NOT_FOR_CHILDREN)
        : tagged(labelled, Tag.NOT_FOR_CHILDREN, notForChildren, source);
  }

  private static Word tagged(Word word, String kind, Optional<String> value, String source) {
    return value.map(text -> word.tagged(new Tag(kind, text, source))).orElse(word);
  }

  private static Optional<String> joined(List<String> labels) {
    return labels.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", labels));
  }
}
