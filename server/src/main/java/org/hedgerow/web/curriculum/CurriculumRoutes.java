package org.hedgerow.web.curriculum;

import static org.hedgerow.operations.Role.ADMINISTRATOR;

import org.hedgerow.lexicon.Editions;
import org.hedgerow.review.curriculum.CurriculumServices;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.security.FormTokens;

/** The table of routes about reading rules, orders of teaching and sight words. */
public final class CurriculumRoutes implements RouteGroup {
  private final RulesPages rules;
  private final SequencesPages sequences;
  private final SightWordsEditPages sightWords;

  public CurriculumRoutes(
      CurriculumServices services, Editions editions, PageWriter writer, FormTokens forms) {
    SetPageSupport desk = new SetPageSupport(editions, writer, forms);
    this.rules = new RulesPages(desk, services);
    this.sequences = new SequencesPages(desk, services);
    this.sightWords = new SightWordsEditPages(desk, services);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get(RulesPages.PATH, ADMINISTRATOR, rules::list);
    routes.get(RulesPages.PATH + "/edit", ADMINISTRATOR, rules::edit);
    routes.form(RulesPages.PATH + "/edit", ADMINISTRATOR, rules::save);
    routes.form(RulesPages.PATH + "/withdraw", ADMINISTRATOR, rules::withdraw);
    routes.get(SequencesPages.PATH, ADMINISTRATOR, sequences::list);
    routes.get(SequencesPages.PATH + "/edit", ADMINISTRATOR, sequences::edit);
    routes.form(SequencesPages.PATH + "/edit", ADMINISTRATOR, sequences::save);
    routes.form(SequencesPages.PATH + "/withdraw", ADMINISTRATOR, sequences::withdraw);
    routes.get(SightWordsEditPages.PATH, ADMINISTRATOR, sightWords::list);
    routes.get(SightWordsEditPages.PATH + "/edit", ADMINISTRATOR, sightWords::edit);
    routes.form(SightWordsEditPages.PATH + "/edit", ADMINISTRATOR, sightWords::save);
    routes.form(SightWordsEditPages.PATH + "/withdraw", ADMINISTRATOR, sightWords::withdraw);
  }
}
