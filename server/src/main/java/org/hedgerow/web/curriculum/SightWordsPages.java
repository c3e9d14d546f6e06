package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.page.ShownEdition;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;

/** The words that children learn whole, at {@code /sight-words}. */
public final class SightWordsPages {
  private final Editions editions;
  private final PageWriter writer;

  public SightWordsPages(Editions editions, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
  }

  public void show(Context context) {
    Parameters parameters =
        AccentQuestion.read(context, List.of(ChosenAccents.PARAMETER, EditionChoice.PARAMETER));
    Lexicon lexicon = EditionChoice.of(editions, parameters);
    parameters.errors().throwIfAny();
    ChosenAccents accents = AccentQuestion.accents(lexicon, parameters, ChosenAccents.PARAMETER);
    SightWordsPage page = SightWordsPage.of(lexicon, accents, shown(parameters, lexicon, accents));
    writer.write(context, "curriculum/sightwords.jte", Map.of("page", page));
  }

  private ShownEdition shown(Parameters parameters, Lexicon lexicon, ChosenAccents accents) {
    String now =
        "/sight-words" + (accents.parameter().isEmpty() ? "" : "?accent=" + accents.parameter());
    return new ShownEdition(
        parameters.text(EditionChoice.PARAMETER), OldEdition.of(lexicon, editions.newest(), now));
  }
}
