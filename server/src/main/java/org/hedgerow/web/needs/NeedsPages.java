package org.hedgerow.web.needs;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Needs;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.page.ShownEdition;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;

/** What full material still lacks, at {@code /needs}. */
public final class NeedsPages {

  private final Editions editions;
  private final PageWriter writer;

  public NeedsPages(Editions editions, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
  }

  public void show(Context context) {
    Parameters parameters =
        AccentQuestion.read(context, List.of(ChosenAccents.PARAMETER, EditionChoice.PARAMETER));
    Lexicon lexicon = EditionChoice.of(editions, parameters);
    parameters.errors().throwIfAny();
    ChosenAccents accents = AccentQuestion.accents(lexicon, parameters, ChosenAccents.PARAMETER);
    String now = ListAddress.ofPlan("/needs", accents.parameter());
    ShownEdition edition =
        new ShownEdition(
            parameters.text(EditionChoice.PARAMETER),
            OldEdition.of(lexicon, editions.newest(), now));
    NeedsPage page = NeedsPage.of(Needs.in(lexicon, accents.first().tag()), accents, edition);
    writer.write(context, "needs/needs.jte", Map.of("page", page));
  }
}
