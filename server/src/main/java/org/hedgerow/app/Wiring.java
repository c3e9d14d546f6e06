package org.hedgerow.app;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.Argon2;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.JdbiAccountBook;
import org.hedgerow.store.JdbiReviewBook;
import org.hedgerow.store.LiveEditions;
import org.hedgerow.web.HealthRoutes;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.MetricsRoutes;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.api.AccountRoutes;
import org.hedgerow.web.api.AdministrationRoutes;
import org.hedgerow.web.api.ApiRoutes;
import org.hedgerow.web.api.DocsRoutes;
import org.hedgerow.web.pages.Pages;
import org.hedgerow.web.pages.people.PeopleRoutes;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.security.AccessGuard;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.SessionCookie;

/** Puts the parts of a server together. */
final class Wiring {
  private Wiring() {}

  static AccountServices accounts(BankDatabase bank) {
    return accounts(bank, InstantSource.system());
  }

  /** What can be done about contributions, by a clock. */
  static ReviewServices reviews(BankDatabase bank, LiveEditions editions, InstantSource clock) {
    return ReviewServices.of(
        new JdbiReviewBook(bank, editions.newest().accents()),
        editions::newest,
        () -> 1,
        editions::catchUp,
        clock);
  }

  static AccountServices accounts(BankDatabase bank, InstantSource clock) {
    return AccountServices.of(new JdbiAccountBook(bank), new Argon2(), clock);
  }

  static WebServer webServer(
      ListeningAddress address,
      BankDatabase bank,
      Editions editions,
      AccountServices accounts,
      Clients clients) {
    ObjectMapper mapper = JsonMapping.mapper();
    PrometheusMeterRegistry meters = Meters.create();
    ValueCounts counts = new ValueCounts();
    JsonProblems problems = new JsonProblems(mapper);
    SessionCookie cookies = new SessionCookie(clients);
    FormTokens forms = new FormTokens(cookies);
    AccessGuard guard = new AccessGuard(accounts, forms, clients);
    Pages pages = new Pages(editions::newest, counts, Optional.of(forms));
    return new WebServer(
        address,
        mapper,
        meters,
        new ErrorMapping(problems, pages.problems(problems)),
        guard,
        List.of(
            guard,
            new HealthRoutes(bank::answers),
            new MetricsRoutes(meters),
            new ApiRoutes(editions::newest, counts, mapper),
            new AccountRoutes(accounts, mapper),
            new AdministrationRoutes(accounts, clients, mapper),
            new DocsRoutes(),
            pages,
            new PeopleRoutes(accounts, pages.writer(), forms, cookies, clients)));
  }
}
