package org.hedgerow.web.review;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Role;
import org.hedgerow.pictures.CleanPicture;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.StrictHandler;
import org.hedgerow.web.security.IdempotentRequests;
import org.hedgerow.web.security.RateLimit;
import org.hedgerow.web.security.RateLimits;

/** The table of routes for what people propose and what reviewers decide. */
public final class ContributionRoutes implements RouteGroup {
  private static final String ALL = Routes.API + "/contributions";
  private static final String ONE = ALL + "/{id}";

  private final RateLimits paces;
  private final IdempotentRequests once;
  private final Contributions contributions;
  private final Submissions submissions;
  private final DecisionHandlers decisions;
  private final ReviewQueue queue;
  private final ContributionChecks checks;
  private final ContributionTables tables;
  private final Uploads uploads;

  /**
   * @param newest gives the newest edition
   * @param paces how fast an account may go on
   * @param once answers repeated requests
   * @param pictures makes a safe picture of what was sent; throws {@link
   *     org.hedgerow.pictures.UnusablePictureException} if it can't
   */
  public ContributionRoutes(
      ReviewServices services,
      Supplier<Lexicon> newest,
      Function<byte[], CleanPicture> pictures,
      RateLimits paces,
      IdempotentRequests once,
      ObjectMapper mapper) {
    this.paces = paces;
    this.once = once;
    ProposalJson proposals = new ProposalJson(mapper);
    ContributionAnswer answer = new ContributionAnswer(services.reviews(), proposals);
    Attempts attempts = new Attempts(services.reviews(), proposals);
    ContentBodyReader contents = new ContentBodyReader(mapper, newest);
    this.contributions = new Contributions(services, contents, answer, attempts);
    this.submissions = new Submissions(services, answer, attempts);
    this.decisions = new DecisionHandlers(services, new DecisionReader(mapper), answer, attempts);
    this.queue = new ReviewQueue(services.queue(), answer);
    this.checks = new ContributionChecks(services.submitMany(), contents);
    this.tables = new ContributionTables(services.submitMany(), newest);
    this.uploads = new Uploads(services, pictures);
  }

  @Override
  public void addTo(Routes routes) {
    Role contributor = Role.CONTRIBUTOR;
    Role reviewer = Role.REVIEWER;
    routes.get(ALL, contributor, strict(contributions::list, ContributionFilters.NAMES));
    routes.post(ALL, contributor, strict(paced(paces.submissions(), once(contributions::add))));
    routes.get(ONE, contributor, strict(contributions::open));
    routes.put(ONE, contributor, strict(contributions::change));
    routes.delete(ONE, contributor, strict(contributions::discard));
    routes.post(
        ONE + "/submission",
        contributor,
        strict(paced(paces.submissions(), once(submissions::submit))));
    routes.delete(ONE + "/submission", contributor, strict(submissions::takeBack));
    routes.post(ONE + "/decisions", reviewer, strict(once(decisions::one)));
    routes.post(Routes.API + "/decisions", reviewer, strict(once(decisions::many)));
    routes.get(Routes.API + "/review-queue", reviewer, strict(queue::list, ReviewQueue.PARAMETERS));
    routes.post(Routes.API + "/contribution-checks", contributor, strict(checks::check));
    routes.post(
        Routes.API + "/contribution-tables",
        contributor,
        new StrictHandler(
            paced(paces.submissions(), once(ContributionTables::payload, tables::judge)),
            ContributionTables.PARAMETERS,
            List.of(Format.JSON, Format.CSV)));
    routes.post(
        Routes.API + "/pictures",
        contributor,
        strict(paced(paces.uploads(), once(PictureBody::read, uploads::send))));
    routes.get(
        Routes.API + "/uploads/{id}",
        contributor,
        new StrictHandler(uploads::show, List.of(), List.of()));
  }

  private StrictHandler.Step once(StrictHandler.Step step) {
    return once(Context::bodyAsBytes, step);
  }

  private StrictHandler.Step once(Function<Context, byte[]> payload, StrictHandler.Step step) {
    return request -> once.run(request.context(), payload, () -> step.take(request));
  }

  private static StrictHandler.Step paced(RateLimit pace, StrictHandler.Step step) {
    return request -> {
      pace.count(request.context());
      step.take(request);
    };
  }

  private static Handler strict(StrictHandler.Step step) {
    return strict(step, List.of());
  }

  private static Handler strict(StrictHandler.Step step, List<String> parameters) {
    return new StrictHandler(step, parameters, List.of(Format.JSON));
  }
}
