package org.hedgerow.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.query.Parameters;

/** The words that children learn whole, at {@code /sight-words}. */
final class SightWordsPages {
  private final Editions editions;
  private final PageWriter writer;

  SightWordsPages(Editions editions, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
  }

  void show(Context context) {
    Lexicon lexicon = editions.newest();
    Parameters parameters = AccentQuestion.read(context, List.of(ChosenAccents.PARAMETER));
    ChosenAccents accents = AccentQuestion.accents(lexicon, parameters, ChosenAccents.PARAMETER);
    writer.write(context, "sightwords.jte", Map.of("page", SightWordsPage.of(lexicon, accents)));
  }
}
