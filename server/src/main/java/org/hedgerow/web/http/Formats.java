package org.hedgerow.web.http;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Fault;
import org.hedgerow.web.query.Faults;
import org.hedgerow.web.query.Quoted;

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
  public Format choose(Optional<String> parameter, String accept, Faults faults) {
    return parameter
        .map(label -> labelled(label, faults))
        .orElseGet(() -> accept.isEmpty() ? possible.get(0) : accepted(accept, faults));
  }

  private Format labelled(String label, Faults faults) {
    return possible.stream()
        .filter(format -> format.label().equals(label))
        .findFirst()
        .orElseGet(
            () -> refused("There is no format %s here.".formatted(Quoted.of(label)), faults));
  }

  private Format accepted(String accept, Faults faults) {
    return new AcceptHeader(accept)
        .best(possible)
        .orElseGet(() -> refused("The header Accept asks for something else.", faults));
  }

  private Format refused(String wrong, Faults faults) {
    String labels = possible.stream().map(Format::label).collect(joining(", "));
    String types = possible.stream().map(Format::mediaType).collect(joining(", "));
    faults.add(
        Fault.of(
            ProblemType.UNSUPPORTED_FORMAT,
            PARAMETER,
            "%s There is %s (%s).".formatted(wrong, labels, types)));
    return possible.get(0);
  }
}
