package org.hedgerow.web.pages;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.problems.ProblemWriter;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.security.FormTokens;

/** The pages for teachers, and the files that pages need. */
public final class Pages implements RouteGroup {

  private final Assets assets = new Assets();
  private final PageWriter writer;
  private final FirstPage firstPage;
  private final WordPages wordPages;
  private final Downloads downloads;
  private final ComparePages comparePages;
  private final PlanPages planPages;

  /**
   * @param lexicons gives the edition to read from, at any time
   * @param counts shared with whoever counts lists too
   */
  public Pages(Supplier<Lexicon> lexicons, ValueCounts counts) {
    this(lexicons, counts, Optional.empty());
  }

  /**
   * @param forms where people can sign in
   */
  public Pages(Supplier<Lexicon> lexicons, ValueCounts counts, Optional<FormTokens> forms) {
    this.writer = new PageWriter(assets, forms);
    ChartMaker charts = new ChartMaker(counts);
    this.firstPage = new FirstPage(lexicons, charts, writer);
    this.wordPages = new WordPages(lexicons, writer);
    this.downloads = new Downloads(lexicons);
    this.comparePages = new ComparePages(lexicons, writer);
    this.planPages = new PlanPages(lexicons, writer);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/", firstPage::show);
    routes.get("/words.csv", downloads::table);
    routes.get("/words.txt", downloads::text);
    routes.get("/words/{spelling}", wordPages::show);
    routes.get("/compare", comparePages::show);
    routes.get("/sequences", planPages::sequences);
    routes.get("/needs", planPages::needs);
    routes.get("/assets/{name}", assets::serve);
    routes.get("/favicon.ico", this::icon);
  }

  /** For other pages with the same look. */
  public PageWriter writer() {
    return writer;
  }

  private void icon(Context context) {
    context.redirect(assets.address("leaf.svg"));
  }

  /**
   * Tells problems in words to people, and leaves programs to another writer.
   *
   * @param programs for whoever didn't ask for a page
   */
  public ProblemWriter problems(ProblemWriter programs) {
    return new PageProblems(writer, programs);
  }
}
