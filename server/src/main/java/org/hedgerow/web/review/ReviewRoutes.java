package org.hedgerow.web.review;

import static org.hedgerow.operations.Role.CONTRIBUTOR;
import static org.hedgerow.operations.Role.REVIEWER;

import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.RateLimits;

/** The table of routes about contributions and decisions. */
public final class ReviewRoutes implements RouteGroup {
  private final ContributionPages contributions;
  private final DraftPages drafts;
  private final TablePages tables;
  private final QueuePages queue;
  private final DecisionPages decisions;

  /**
   * @param newest the newest edition
   * @param paces how fast an account may go on
   */
  public ReviewRoutes(
      ReviewServices review,
      Supplier<Lexicon> newest,
      PageWriter writer,
      FormTokens forms,
      RateLimits paces) {
    ReviewPageSupport desk = new ReviewPageSupport(review, newest, writer, forms);
    DecisionForms all = new DecisionForms(review);
    this.drafts = new DraftPages(desk, paces);
    this.contributions = new ContributionPages(desk, drafts);
    this.tables = new TablePages(desk, paces.submissions());
    this.queue = new QueuePages(desk, all);
    this.decisions = new DecisionPages(desk, all);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/contributions", CONTRIBUTOR, contributions::list);
    routes.get("/contributions/new", CONTRIBUTOR, drafts::begin);
    routes.form("/contributions/drafts", CONTRIBUTOR, drafts::save);
    routes.get("/contributions/table", CONTRIBUTOR, tables::show);
    routes.form("/contributions/table", CONTRIBUTOR, tables::judge);
    routes.get("/contributions/{id}", CONTRIBUTOR, contributions::show);
    routes.get("/contributions/{id}/picture", CONTRIBUTOR, contributions::picture);
    routes.form("/contributions/{id}/take-back", CONTRIBUTOR, contributions::takeBack);
    routes.form("/contributions/{id}/discard", CONTRIBUTOR, contributions::discard);
    routes.get("/review", REVIEWER, queue::show);
    routes.form("/review", REVIEWER, queue::decideMany);
    routes.get("/review/{id}", REVIEWER, decisions::show);
    routes.form("/review/{id}", REVIEWER, decisions::decide);
  }
}
