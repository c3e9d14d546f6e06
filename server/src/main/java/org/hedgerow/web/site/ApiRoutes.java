package org.hedgerow.web.site;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.curriculum.CurriculumEndpoints;
import org.hedgerow.web.docs.DocumentHandler;
import org.hedgerow.web.editions.EditionEndpoints;
import org.hedgerow.web.editions.EditionFeed;
import org.hedgerow.web.http.AnswerCache;
import org.hedgerow.web.http.Cors;
import org.hedgerow.web.http.Endpoints;
import org.hedgerow.web.needs.NeedsRead;
import org.hedgerow.web.phonograms.PhonogramEndpoints;
import org.hedgerow.web.pictures.PictureHandler;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.sentences.SentenceEndpoints;
import org.hedgerow.web.sentences.SentenceOrders;
import org.hedgerow.web.words.WordEndpoints;

/** What anybody's program may ask. */
public final class ApiRoutes implements RouteGroup {

  private final Editions editions;
  private final ValueCounts counts;
  private final SentenceOrders orders;
  private final ObjectMapper mapper;
  private final AnswerCache cache = new AnswerCache();
  private List<Runnable> rehearsals = List.of();

  public ApiRoutes(
      Editions editions, ValueCounts counts, SentenceOrders orders, ObjectMapper mapper) {
    this.editions = editions;
    this.counts = counts;
    this.orders = orders;
    this.mapper = mapper;
    editions.beforeEach(next -> cache.prepare(next.edition()));
  }

  @Override
  public void addTo(Routes routes) {
    Cors.open(routes, Routes.API);
    Endpoints endpoints = new Endpoints(routes, editions, cache, mapper);
    PhonogramEndpoints.enter(endpoints, counts);
    WordEndpoints.enter(endpoints);
    CurriculumEndpoints.enter(endpoints);
    endpoints.rehearsedRead("/needs", new NeedsRead(endpoints.json()));
    SentenceEndpoints.enter(endpoints, orders);
    EditionEndpoints.enter(endpoints);
    routes.get(EditionFeed.PATH, new EditionFeed(editions));
    endpoints.get(Routes.API + PictureHandler.PATH, new PictureHandler(editions::newest));
    endpoints.get(Routes.API + "/openapi.yaml", new DocumentHandler());
    rehearsals = endpoints.rehearsals();
  }

  @Override
  public List<Runnable> rehearsals() {
    return rehearsals;
  }
}
