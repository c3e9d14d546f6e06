package org.hedgerow.web.http;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationError;
import org.hedgerow.web.query.ValidationErrors;

/** Chooses the format of an answer: as the parameter says, or else as the header does. */
public final class Formats {

  public static final String PARAMETER = "format";

  private final List<Format> possible;

  /**
   * @param possible the formats there are, the usual one first
   */
  public Formats(List<Format> possible) {
    this.possible = List.copyOf(possible);
  }

  /**
   * @param accept the header, or an empty text
   */
  public Format choose(Optional<String> parameter, String accept, ValidationErrors errors) {
    return parameter
        .map(label -> labelled(label, errors))
        .orElseGet(() -> accept.isEmpty() ? possible.get(0) : accepted(accept, errors));
  }

  private Format labelled(String label, ValidationErrors errors) {
    return possible.stream()
        .filter(format -> format.label().equals(label))
        .findFirst()
        .orElseGet(
            () -> refused("There is no format %s here.".formatted(Quoted.of(label)), errors));
  }

  private Format accepted(String accept, ValidationErrors errors) {
    return new AcceptHeader(accept)
        .best(possible)
        .orElseGet(() -> refused("The header Accept asks for something else.", errors));
  }

  private Format refused(String wrong, ValidationErrors errors) {
    String labels = possible.stream().map(Format::label).collect(joining(", "));
    String types = possible.stream().map(Format::mediaType).collect(joining(", "));
    errors.add(
        ValidationError.of(
            ProblemType.UNSUPPORTED_FORMAT,
            PARAMETER,
            "%s There is %s (%s).".formatted(wrong, labels, types)));
    return possible.get(0);
  }
}
