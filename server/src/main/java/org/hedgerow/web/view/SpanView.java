package org.hedgerow.web.view;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;

/**
 * Letters that belong together and what they say.
 *
 * @param sound in IPA, several with spaces; empty when silent
 * @param target whether it is what was asked for; left out if not
 */
public record SpanView(
    List<Integer> letters,
    String grapheme,
    String sound,
    @JsonProperty("class") String kind,
    OptionalInt value,
    @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean target) {

  public static List<SpanView> of(Alignment alignment, Predicate<Correspondence> target) {
    return alignment.spans().stream().map(span -> of(span, target)).toList();
  }

  private static SpanView of(Span span, Predicate<Correspondence> target) {
    Correspondence correspondence = span.correspondence();
    return new SpanView(
        span.letters(),
        span.grapheme().text(),
        Sound.spaced(span.sounds()),
        correspondence.kind().label(),
        correspondence.value(),
        target.test(correspondence));
  }
}
