package org.hedgerow.web.review;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Content;
import org.hedgerow.review.Proposal;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.ValidationErrors;
import org.jspecify.annotations.Nullable;

/** Reads what contributions say. A draft may lack anything, but isn't endless. */
final class ContentBodyReader {
  /** In bytes; twenty pronunciations of the longest word, aligned by hand, fit in. */
  private static final int MAX_BYTES = 100_000;

  private final JsonBody bodies;
  private final Supplier<Lexicon> newest;

  ContentBodyReader(ObjectMapper mapper, Supplier<Lexicon> newest) {
    // What is left out of a draft isn't null: JsonBody has refused those.
    this.bodies =
        JsonBody.toKeep(mapper.copy().disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES));
    this.newest = newest;
  }

  /**
   * A contribution to begin.
   *
   * @param submit whether to submit it at once
   */
  record Fresh(Content content, boolean submit) {}

  Fresh fresh(Context context) {
    ContributionBody body = read(context, ContributionBody.class);
    return new Fresh(
        content(body.proposal(), body.wantedFor(), body.note()),
        Optional.ofNullable(body.submit()).orElse(false));
  }

  Content content(Context context) {
    ContentBody body = read(context, ContentBody.class);
    return content(body.proposal(), body.wantedFor(), body.note());
  }

  private <T> T read(Context context, Class<T> type) {
    T body = bodies.read(context, type);
    if (context.bodyAsBytes().length > MAX_BYTES) {
      throw Problem.of(
              ProblemType.BODY_TOO_LARGE,
              "A contribution may have at most a hundred thousand bytes.")
          .exception();
    }
    return body;
  }

  private Content content(
      @Nullable Proposal proposal, @Nullable String wantedFor, @Nullable String note) {
    ValidationErrors errors = ValidationErrors.ofBody();
    ProposalContext frame =
        ProposalContext.read(newest.get(), wantedFor, "wantedFor", note, "note", errors);
    if (proposal == null) {
      errors.invalid("proposal", "There is no proposal. Say what is to change.");
    }
    errors.throwIfAny();
    return frame.around(requireNonNull(proposal));
  }
}
