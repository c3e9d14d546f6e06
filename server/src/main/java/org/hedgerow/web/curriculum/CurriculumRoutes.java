package org.hedgerow.web.curriculum;

import java.util.List;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.security.FormTokens;

/** The table of routes about reading rules, orders of teaching and sight words. */
public final class CurriculumRoutes implements RouteGroup {
  private final List<SetPages<?, ?>> pages;

  public CurriculumRoutes(
      ChangeCurriculum change, Editions editions, PageWriter writer, FormTokens forms) {
    SetPageSupport support = new SetPageSupport(editions, writer, forms);
    this.pages =
        List.of(
            new RulesPages(support, change),
            new SequencesPages(support, change),
            new SightWordsEditPages(support, change));
  }

  @Override
  public void addTo(Routes routes) {
    pages.forEach(each -> each.addTo(routes));
  }
}
