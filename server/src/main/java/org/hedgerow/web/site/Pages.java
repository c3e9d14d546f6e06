package org.hedgerow.web.site;

import io.javalin.http.Context;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.chart.ChartMaker;
import org.hedgerow.web.curriculum.SequencePages;
import org.hedgerow.web.curriculum.SightWordsPages;
import org.hedgerow.web.editions.EditionPages;
import org.hedgerow.web.needs.NeedsPages;
import org.hedgerow.web.page.Assets;
import org.hedgerow.web.page.PageLayout;
import org.hedgerow.web.page.PageProblems;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.problems.ProblemWriter;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.sentences.SentenceOrders;
import org.hedgerow.web.sentences.SentencePages;
import org.hedgerow.web.words.ComparePages;
import org.hedgerow.web.words.Downloads;
import org.hedgerow.web.words.WordPages;

/** The pages for teachers, and the files that pages need. */
public final class Pages implements RouteGroup {

  private final Assets assets = new Assets();
  private final PageWriter writer;
  private final FirstPage firstPage;
  private final WordPages wordPages;
  private final Downloads downloads;
  private final ComparePages comparePages;
  private final SequencePages sequencePages;
  private final NeedsPages needsPages;
  private final SentencePages sentencePages;
  private final SightWordsPages sightWordsPages;
  private final EditionPages editionPages;

  /**
   * @param counts shared with whoever counts lists too
   */
  public Pages(Editions editions, ValueCounts counts, SentenceOrders orders) {
    this(editions, counts, orders, PageLayout.OF_READERS);
  }

  public Pages(Editions editions, ValueCounts counts, SentenceOrders orders, PageLayout frame) {
    this.writer = new PageWriter(assets, frame);
    ChartMaker charts = new ChartMaker(counts);
    editions.beforeEach(charts::prepare);
    this.firstPage = new FirstPage(editions, charts, writer);
    this.wordPages = new WordPages(editions, writer);
    this.downloads = new Downloads(editions);
    this.comparePages = new ComparePages(editions, writer);
    this.sequencePages = new SequencePages(editions, writer);
    this.needsPages = new NeedsPages(editions, writer);
    this.sentencePages = new SentencePages(editions, orders, writer);
    this.sightWordsPages = new SightWordsPages(editions, writer);
    this.editionPages = new EditionPages(editions, writer);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/", firstPage::show);
    routes.get("/words.csv", downloads::csv);
    routes.get("/words.xlsx", downloads::spreadsheet);
    routes.get("/words.txt", downloads::text);
    routes.get("/words/{spelling}", wordPages::show);
    routes.get("/compare", comparePages::show);
    routes.get("/sequences", sequencePages::show);
    routes.get("/sight-words", sightWordsPages::show);
    routes.get("/needs", needsPages::show);
    sentencePages.addTo(routes);
    routes.get("/editions", editionPages::all);
    routes.get("/editions/{edition}", editionPages::one);
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
