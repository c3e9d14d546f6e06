package org.hedgerow.app;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.web.HealthRoutes;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.MetricsRoutes;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.api.ApiRoutes;
import org.hedgerow.web.api.DocsRoutes;
import org.hedgerow.web.pages.Pages;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;

/** Puts the parts of a server together. */
final class Wiring {
  private Wiring() {}

  static WebServer webServer(ListeningAddress address, BankDatabase bank, Lexicon lexicon) {
    ObjectMapper mapper = JsonMapping.mapper();
    PrometheusMeterRegistry meters = Meters.create();
    ValueCounts counts = new ValueCounts();
    JsonProblems problems = new JsonProblems(mapper);
    Pages pages = new Pages(() -> lexicon, counts);
    return new WebServer(
        address,
        mapper,
        meters,
        new ErrorMapping(problems, pages.problems(problems)),
        List.of(
            new HealthRoutes(bank::answers),
            new MetricsRoutes(meters),
            new ApiRoutes(() -> lexicon, counts, mapper),
            new DocsRoutes(),
            pages));
  }
}
