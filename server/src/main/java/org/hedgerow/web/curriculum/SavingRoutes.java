package org.hedgerow.web.curriculum;

import static org.hedgerow.operations.Role.ADMINISTRATOR;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.review.curriculum.CurriculumServices;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;

/** The table of routes by which programs save and withdraw rules, sequences and sight words. */
public final class SavingRoutes implements RouteGroup {
  private static final String RULES = Routes.API + "/rules/{name}";
  private static final String SEQUENCES = Routes.API + "/sequences/{name}";
  private static final String SIGHT_WORDS = Routes.API + "/sight-words/{name}";

  private final NamedSetHandlers teaching;
  private final SightWordsHandlers sightWords;

  public SavingRoutes(CurriculumServices teaching, Editions editions, ObjectMapper mapper) {
    this.teaching = new NamedSetHandlers(teaching, editions, mapper);
    this.sightWords = new SightWordsHandlers(teaching, editions, mapper);
  }

  @Override
  public void addTo(Routes routes) {
    routes.put(RULES, ADMINISTRATOR, teaching::saveRules);
    routes.delete(RULES, ADMINISTRATOR, teaching::withdrawRules);
    routes.put(SEQUENCES, ADMINISTRATOR, teaching::saveSequence);
    routes.delete(SEQUENCES, ADMINISTRATOR, teaching::withdrawSequence);
    routes.put(SIGHT_WORDS, ADMINISTRATOR, sightWords::save);
    routes.delete(SIGHT_WORDS, ADMINISTRATOR, sightWords::withdraw);
  }
}
