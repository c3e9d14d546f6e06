package org.hedgerow.web.site;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.curriculum.NamedRead;
import org.hedgerow.web.curriculum.RulesRead;
import org.hedgerow.web.curriculum.SequencesRead;
import org.hedgerow.web.curriculum.SightWordsRead;
import org.hedgerow.web.docs.DocumentHandler;
import org.hedgerow.web.editions.EditionFeed;
import org.hedgerow.web.editions.EditionReads;
import org.hedgerow.web.http.AnswerCache;
import org.hedgerow.web.http.Cors;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.LogHandler;
import org.hedgerow.web.http.QuestionHandler;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.http.ReadHandler;
import org.hedgerow.web.needs.NeedsRead;
import org.hedgerow.web.phonograms.PhonogramsRead;
import org.hedgerow.web.phonograms.SoundFamilies;
import org.hedgerow.web.phonograms.SoundRead;
import org.hedgerow.web.phonograms.SoundsRead;
import org.hedgerow.web.pictures.PictureHandler;
import org.hedgerow.web.query.Faults;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.sentences.SentenceChecks;
import org.hedgerow.web.sentences.SentenceChecksBody;
import org.hedgerow.web.sentences.SentenceDrafts;
import org.hedgerow.web.sentences.SentenceDraftsBody;
import org.hedgerow.web.sentences.SentenceOrders;
import org.hedgerow.web.sentences.SentencesRead;
import org.hedgerow.web.words.AlignmentBody;
import org.hedgerow.web.words.Alignments;
import org.hedgerow.web.words.WordChecks;
import org.hedgerow.web.words.WordChecksBody;
import org.hedgerow.web.words.WordRead;
import org.hedgerow.web.words.WordsRead;

/** The table of routes for programs. */
public final class ApiRoutes implements RouteGroup {

  private final Editions editions;
  private final ValueCounts counts;
  private final SoundFamilies families;
  private final SentenceDrafts drafts;
  private final JsonBody bodies;
  private final Json json;
  private final AnswerCache cache = new AnswerCache();
  private final List<Runnable> rehearsals = new ArrayList<>();

  public ApiRoutes(
      Editions editions, ValueCounts counts, SentenceOrders orders, ObjectMapper mapper) {
    this.editions = editions;
    this.counts = counts;
    this.drafts = new SentenceDrafts(orders);
    this.families = new SoundFamilies(counts);
    this.bodies = new JsonBody(mapper);
    this.json = new Json(mapper);
    editions.beforeEach(next -> cache.prepare(next.edition()));
  }

  @Override
  public void addTo(Routes routes) {
    Cors.open(routes, Routes.API);
    rehearse(read(routes, "/phonograms", new PhonogramsRead(json, counts)));
    read(routes, "/words", new WordsRead(json));
    read(routes, "/words/{spelling}", new WordRead(json, editions.log()));
    rehearse(read(routes, "/sounds", new SoundsRead(json, families)));
    read(routes, "/sounds/{sound}", new SoundRead(json, families));
    read(routes, "/rules/{name}", NamedRead.rules(json));
    read(routes, "/rules", new RulesRead(json));
    read(routes, "/sequences/{name}", NamedRead.sequences(json));
    rehearse(read(routes, "/sequences", new SequencesRead(json)));
    read(routes, "/sight-words/{name}", NamedRead.sightWords(json));
    read(routes, "/sight-words", new SightWordsRead(json));
    rehearse(read(routes, "/needs", new NeedsRead(json)));
    read(routes, "/sentences", new SentencesRead(json));
    EditionReads log = new EditionReads(editions);
    log(routes, EditionReads.LIST, EditionReads.PARAMETERS, log::list);
    log(routes, EditionReads.ONE, List.of(), log::one);
    log(routes, EditionReads.CHANGES, EditionReads.PARAMETERS, log::changes);
    routes.get(EditionFeed.PATH, new EditionFeed(editions));
    question(routes, "/word-checks", WordChecksBody.class, free(WordChecks::answer));
    question(routes, "/sentence-checks", SentenceChecksBody.class, free(SentenceChecks::answer));
    question(routes, "/sentence-drafts", SentenceDraftsBody.class, drafts::answer);
    question(routes, "/alignments", AlignmentBody.class, free(Alignments::answer));
    routes.get(Routes.API + PictureHandler.PATH, new PictureHandler(editions::newest));
    Cors.allow(routes, Routes.API + PictureHandler.PATH, "GET");
    routes.get(Routes.API + "/openapi.yaml", new DocumentHandler());
    Cors.allow(routes, Routes.API + "/openapi.yaml", "GET");
  }

  @Override
  public List<Runnable> rehearsals() {
    return List.copyOf(rehearsals);
  }

  private void rehearse(ReadHandler handler) {
    rehearsals.add(handler::answerNobody);
  }

  private ReadHandler read(Routes routes, String path, Read read) {
    ReadHandler handler = new ReadHandler(editions, cache, read);
    editions.beforeEach(handler::prepare);
    routes.get(Routes.API + path, handler);
    Cors.allow(routes, Routes.API + path, "GET");
    return handler;
  }

  private void log(Routes routes, String path, List<String> names, LogHandler.LogRead read) {
    routes.get(Routes.API + path, new LogHandler(editions, json, names, read));
    Cors.allow(routes, Routes.API + path, "GET");
  }

  /** What anybody may ask as often as they like. */
  @FunctionalInterface
  private interface Free<T> {
    Object answer(Lexicon lexicon, T body, Faults faults);
  }

  private static <T> QuestionHandler.Answerer<T> free(Free<T> free) {
    return (context, lexicon, body, faults) -> free.answer(lexicon, body, faults);
  }

  private <T> void question(
      Routes routes, String path, Class<T> type, QuestionHandler.Answerer<T> answerer) {
    routes.post(Routes.API + path, new QuestionHandler<>(editions, bodies, type, json, answerer));
    Cors.allow(routes, Routes.API + path, "POST");
  }
}
