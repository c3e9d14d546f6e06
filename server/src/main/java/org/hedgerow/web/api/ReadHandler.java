package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;

/**
 * Answers one kind of read: from the edition asked for, in the format asked for, from memory where
 * the same was asked before, and not at all if the asker has the answer already.
 */
final class ReadHandler implements Handler {

  private static final Pattern NO_GZIP = Pattern.compile("gzip *; *q=0(\\.0*)? *(,|$)");

  private final Editions editions;
  private final AnswerCache cache;
  private final Read read;
  private final Formats formats;
  private final List<String> known;

  ReadHandler(Editions editions, AnswerCache cache, Read read) {
    this.editions = editions;
    this.cache = cache;
    this.read = read;
    this.formats = new Formats(read.formats());
    List<String> names = new ArrayList<>(read.parameters());
    names.addAll(List.of(EditionChoice.PARAMETER, Formats.PARAMETER));
    this.known = names.stream().distinct().toList();
  }

  @Override
  public void handle(Context context) {
    AnswerCache.Wording wording = wording(editions.newest(), context);
    Answer answer = cache.asBefore(wording).orElseGet(() -> answer(context, wording));
    Sending.send(context, answer);
  }

  private static AnswerCache.Wording wording(Lexicon newest, Context context) {
    return new AnswerCache.Wording(
        newest.edition(),
        context.path(),
        Optional.ofNullable(context.queryString()).orElse(""),
        Sending.header(context, Header.ACCEPT),
        acceptsGzip(Sending.header(context, Header.ACCEPT_ENCODING)));
  }

  private Answer answer(Context context, AnswerCache.Wording wording) {
    Parameters parameters = Parameters.parsed(wording.query(), known);
    Lexicon lexicon = EditionChoice.of(editions, parameters);
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

  private static boolean acceptsGzip(String header) {
    return header.contains("gzip") && !NO_GZIP.matcher(header).find();
  }
}
