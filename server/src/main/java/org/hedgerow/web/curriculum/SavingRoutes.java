package org.hedgerow.web.curriculum;

import static org.hedgerow.operations.Role.ADMINISTRATOR;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.review.curriculum.SetKind;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.view.NamedSetView;

/** The table of routes by which programs save and withdraw rules, sequences and sight words. */
public final class SavingRoutes implements RouteGroup {
  private final ChangeCurriculum change;
  private final Editions editions;
  private final ObjectMapper mapper;

  public SavingRoutes(ChangeCurriculum change, Editions editions, ObjectMapper mapper) {
    this.change = change;
    this.editions = editions;
    this.mapper = mapper;
  }

  @Override
  public void addTo(Routes routes) {
    add(
        routes,
        "/rules/{name}",
        new SetHandlers<>(
            SetKind.RULES,
            NamedSetView.Rules.class,
            NamedSetView.Rules::of,
            change,
            editions,
            mapper));
    add(
        routes,
        "/sequences/{name}",
        new SetHandlers<>(
            SetKind.SEQUENCES,
            NamedSetView.SequenceSteps.class,
            NamedSetView.SequenceSteps::of,
            change,
            editions,
            mapper));
    add(
        routes,
        "/sight-words/{name}",
        new SetHandlers<>(
            SetKind.SIGHT_WORDS,
            NamedSetView.Words.class,
            NamedSetView.Words::of,
            change,
            editions,
            mapper));
  }

  private static void add(Routes routes, String path, SetHandlers<?, ?, ?> handlers) {
    routes.put(Routes.API + path, ADMINISTRATOR, handlers::save);
    routes.delete(Routes.API + path, ADMINISTRATOR, handlers::withdraw);
  }
}
