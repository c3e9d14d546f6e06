package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.ArrayList;
import java.util.List;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;

/**
 * Answers one kind of read: from the edition asked for, in the format asked for, from memory where
 * the same was asked before, and not at all if the asker has the answer already.
 */
public final class ReadHandler implements Handler {

  private final Editions editions;
  private final AnswerCache cache;
  private final Read read;
  private final Formats formats;
  private final List<String> known;
  private final RecentQueries<RawQuery> recent = new RecentQueries<>();

  public ReadHandler(Editions editions, AnswerCache cache, Read read) {
    this.editions = editions;
    this.cache = cache;
    this.read = read;
    this.formats = new Formats(read.formats());
    List<String> names = new ArrayList<>(read.parameters());
    names.addAll(List.of(EditionChoice.PARAMETER, Formats.PARAMETER));
    if (read.formats().contains(Format.CSV)) {
      names.add(ByteOrderMark.PARAMETER);
    }
    this.known = names.stream().distinct().toList();
  }

  @Override
  public void handle(Context context) {
    RawQuery wording = RawQuery.of(context);
    Lexicon newest = editions.newest();
    Answer answer =
        cache
            .asBefore(newest.edition(), wording)
            .orElseGet(() -> answer(newest, wording, parameters(wording)));
    recent.remember(wording);
    if (wording.asks(EditionChoice.PARAMETER)) {
      Sending.sendForGood(context, answer);
    } else {
      Sending.send(context, answer);
    }
  }

  /** Works out what was asked recent for an edition that will soon be the newest. */
  public void prepare(Lexicon next) {
    recent.replay(wording -> prepare(next, wording));
  }

  /** Works out what the newest edition answers to whoever asks for nothing in particular. */
  public void rehearse() {
    RawQuery plain = RawQuery.ofNothing();
    answer(editions.newest(), plain, parameters(plain));
  }

  /** What an older edition answers stays as it is, and that edition may have to be read first. */
  private void prepare(Lexicon next, RawQuery wording) {
    Parameters parameters = parameters(wording);
    if (!EditionChoice.isPinned(parameters)) {
      answer(next, wording, parameters);
    }
  }

  private Parameters parameters(RawQuery wording) {
    return Parameters.parsed(wording.query(), known);
  }

  private Answer answer(Lexicon newest, RawQuery wording, Parameters parameters) {
    Lexicon lexicon = EditionChoice.of(editions, newest, parameters);
    Format format =
        formats.choose(parameters.text(Formats.PARAMETER), wording.accept(), parameters.errors());
    boolean marked = ByteOrderMark.isWanted(parameters, format);
    if (format.isTable()) {
      parameters.answerIsTable();
    }
    Question question = read.understand(lexicon, wording.named(), parameters).marked(marked);
    parameters.errors().throwIfAny();
    return cache.answer(
        newest.edition(),
        wording,
        new AnswerCache.Key(lexicon.edition(), question.key(), format, false),
        () -> workOut(lexicon.edition(), question, format));
  }

  private static Answer workOut(int edition, Question question, Format format) {
    Question.Body body = question.answer().apply(format);
    return Answer.of(new Extent(edition, body.total(), body.next()), format, body.bytes());
  }
}
