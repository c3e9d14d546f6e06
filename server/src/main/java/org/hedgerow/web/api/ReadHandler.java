package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Fault;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.Quoted;

/**
 * Answers one kind of read: from the current edition, in the format asked for, from memory where
 * the same was asked before, and not at all if the asker has the answer already.
 */
final class ReadHandler implements Handler {

  private static final String EDITION = "edition";
  private static final Pattern NO_GZIP = Pattern.compile("gzip *; *q=0(\\.0*)? *(,|$)");

  private final Supplier<Lexicon> current;
  private final AnswerCache cache;
  private final Read read;
  private final Formats formats;
  private final List<String> known;

  ReadHandler(Supplier<Lexicon> current, AnswerCache cache, Read read) {
    this.current = current;
    this.cache = cache;
    this.read = read;
    this.formats = new Formats(read.formats());
    List<String> names = new ArrayList<>(read.parameters());
    names.addAll(List.of(EDITION, Formats.PARAMETER));
    this.known = List.copyOf(names);
  }

  @Override
  public void handle(Context context) {
    Lexicon lexicon = current.get();
    AnswerCache.Wording wording = wording(lexicon, context);
    send(context, cache.asBefore(wording).orElseGet(() -> answer(lexicon, context, wording)));
  }

  private static AnswerCache.Wording wording(Lexicon lexicon, Context context) {
    return new AnswerCache.Wording(
        lexicon.edition(),
        context.path(),
        Optional.ofNullable(context.queryString()).orElse(""),
        header(context, Header.ACCEPT),
        acceptsGzip(header(context, Header.ACCEPT_ENCODING)));
  }

  private Answer answer(Lexicon lexicon, Context context, AnswerCache.Wording wording) {
    Parameters parameters = Parameters.parsed(wording.query(), known);
    requireEdition(lexicon, parameters);
    Format format =
        formats.choose(parameters.text(Formats.PARAMETER), wording.accept(), parameters.faults());
    Question question = read.understand(lexicon, context, parameters);
    parameters.faults().throwIfAny();
    return cache.answer(
        wording,
        new AnswerCache.Key(lexicon.edition(), question.key(), format, false),
        () -> workOut(lexicon.edition(), question, format));
  }

  private static Answer workOut(int edition, Question question, Format format) {
    Question.Body body = question.answer().apply(format);
    return Answer.of(edition, format, body.bytes(), body.next());
  }

  private static void requireEdition(Lexicon lexicon, Parameters parameters) {
    Optional<String> asked = parameters.text(EDITION);
    if (asked.isPresent() && !asked.get().equals(String.valueOf(lexicon.edition()))) {
      parameters.faults().add(wrongEdition(asked.get(), lexicon.edition()));
    }
  }

  private static Fault wrongEdition(String asked, int current) {
    if (!asked.matches("[1-9][0-9]{0,8}")) {
      return Fault.of(
          ProblemType.INVALID_PARAMETER,
          EDITION,
          "edition must be a whole number from 1, not %s.".formatted(Quoted.of(asked)));
    }
    return Fault.of(
        ProblemType.UNKNOWN_EDITION,
        EDITION,
        "Only edition %d can be asked for, not %s. Leave edition out to get it."
            .formatted(current, asked));
  }

  private static boolean acceptsGzip(String header) {
    return header.contains("gzip") && !NO_GZIP.matcher(header).find();
  }

  private static String header(Context context, String name) {
    return Optional.ofNullable(context.header(name)).orElse("");
  }

  private static void send(Context context, Answer answer) {
    context
        .header(Header.ETAG, answer.entityTag())
        .header(Header.CACHE_CONTROL, "no-cache")
        .header(Header.VARY, "Accept, Accept-Encoding");
    answer.next().ifPresent(next -> context.header("Link", "<%s>; rel=\"next\"".formatted(next)));
    if (Conditions.alreadyHas(header(context, Header.IF_NONE_MATCH), answer.entityTag())) {
      context.status(304);
      return;
    }
    context.disableCompression();
    context.res().setContentLength(answer.bytes().length);
    if (answer.gzipped()) {
      context.header(Header.CONTENT_ENCODING, "gzip");
    }
    context.contentType(answer.contentType()).result(answer.bytes());
  }
}
