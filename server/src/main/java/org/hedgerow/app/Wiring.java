package org.hedgerow.app;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.Argon2;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.pictures.PictureIntake;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.seed.SeedKnowledge;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.compose.Composer;
import org.hedgerow.sentences.compose.Plausibility;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.JdbiIdempotencyStore;
import org.hedgerow.store.accounts.JdbiAccountRepository;
import org.hedgerow.store.review.JdbiReviewRepository;
import org.hedgerow.web.HealthRoutes;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.MetricsRoutes;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.curriculum.CurriculumRoutes;
import org.hedgerow.web.curriculum.SavingRoutes;
import org.hedgerow.web.docs.DocsRoutes;
import org.hedgerow.web.page.PageLayout;
import org.hedgerow.web.people.AccountRoutes;
import org.hedgerow.web.people.AdministrationRoutes;
import org.hedgerow.web.people.PeopleRoutes;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.review.ContributionRoutes;
import org.hedgerow.web.review.ReviewRoutes;
import org.hedgerow.web.review.WaitingCount;
import org.hedgerow.web.security.AccessGuard;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.IdempotentRequests;
import org.hedgerow.web.security.MetricsAccess;
import org.hedgerow.web.security.RateLimits;
import org.hedgerow.web.security.SessionCookie;
import org.hedgerow.web.sentences.SentenceOrders;
import org.hedgerow.web.site.ApiRoutes;
import org.hedgerow.web.site.Pages;

/** Puts the parts of a server together. */
final class Wiring {
  private Wiring() {}

  static AccountServices accounts(BankDatabase bank) {
    return accounts(bank, InstantSource.system());
  }

  /**
   * What can be done about contributions, by a clock.
   *
   * @param published told the number of every new edition, after its transaction
   */
  static ReviewServices reviews(
      BankDatabase bank,
      Supplier<Lexicon> newest,
      IntConsumer published,
      IntSupplier votes,
      InstantSource clock) {
    return ReviewServices.of(
        new JdbiReviewRepository(bank, newest.get().accents()),
        newest,
        votes,
        edition -> bank.afterwards(() -> published.accept(edition)),
        clock);
  }

  static AccountServices accounts(BankDatabase bank, InstantSource clock) {
    return AccountServices.of(new JdbiAccountRepository(bank), new Argon2(), clock);
  }

  /**
   * Makes sentences.
   *
   * @param english how likely words are to follow each other
   */
  static Composer composer(Plausibility english) {
    return new Composer(SeedKnowledge.of(SeedLexicon.bundled()), english);
  }

  static WebServer webServer(
      ListeningAddress address,
      BankDatabase bank,
      Editions editions,
      AccountServices accounts,
      CachedCentre centre,
      ReviewServices reviews,
      Composer composer,
      Clients clients,
      MetricsAccess metrics) {
    ObjectMapper mapper = JsonMapping.mapper();
    PrometheusMeterRegistry meters = Metrics.create();
    ValueCounts counts = new ValueCounts();
    JsonProblems problems = new JsonProblems(mapper);
    SessionCookie cookies = new SessionCookie(clients);
    FormTokens forms = new FormTokens(cookies);
    AccessGuard guard = new AccessGuard(accounts, forms, clients);
    PageLayout frame =
        new PageLayout(
            Optional.of(forms), centre::name, Optional.of(new WaitingCount(reviews.queue())));
    RateLimits paces = RateLimits.by(clients, InstantSource.system());
    IdempotentRequests once =
        new IdempotentRequests(new JdbiIdempotencyStore(bank, InstantSource.system()));
    SentenceOrders orders = new SentenceOrders(composer, paces.orders());
    Pages pages = new Pages(editions, counts, orders, frame);
    return new WebServer(
        address,
        mapper,
        meters,
        new ErrorMapping(problems, pages.problems(problems)),
        guard,
        List.of(
            guard,
            new HealthRoutes(new BankHealth(bank)),
            new MetricsRoutes(meters, metrics),
            new ApiRoutes(editions, counts, orders, mapper),
            new AccountRoutes(accounts, once, mapper),
            new AdministrationRoutes(accounts, centre, clients, once, mapper),
            new SavingRoutes(new ChangeCurriculum(reviews.context()), editions, mapper),
            new ContributionRoutes(
                reviews, editions::newest, new PictureIntake()::take, paces, once, mapper),
            new DocsRoutes(),
            pages,
            new PeopleRoutes(accounts, centre, pages.writer(), forms, cookies, clients),
            new CurriculumRoutes(
                new ChangeCurriculum(reviews.context()), editions, pages.writer(), forms),
            new ReviewRoutes(reviews, editions::newest, pages.writer(), forms, paces)));
  }
}
