package org.hedgerow.web.editions;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.MaterialChanges;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.WordChange;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.view.EditionLine;

/** What the editions of the bank changed, at {@code /editions}. */
public final class EditionPages {
  private static final int EDITIONS = 20;
  private static final int WORDS = 100;

  private final Editions editions;
  private final PageWriter writer;

  public EditionPages(Editions editions, PageWriter writer) {
    this.editions = editions;
    this.writer = writer;
  }

  public void all(Context context) {
    Parameters parameters = AccentQuestion.read(context, List.of(KeysetParameters.AFTER));
    int after = KeysetParameters.afterEdition(parameters);
    parameters.errors().throwIfAny();
    KeysetPage<EditionLine> shown =
        KeysetPage.of(
                editions.log().before(after, EDITIONS + 1), EDITIONS, PublishedEdition::number)
            .map(EditionLine::of);
    Optional<String> older = shown.next().map("/editions?after="::concat);
    writer.write(
        context, "editions/editions.jte", Map.of("page", new EditionsPage(shown.items(), older)));
  }

  public void one(Context context) {
    Parameters parameters = AccentQuestion.read(context, List.of(KeysetParameters.AFTER));
    String after = KeysetParameters.afterWord(parameters);
    String named = context.pathParam(EditionChoice.PARAMETER);
    Lexicon lexicon = EditionChoice.named(editions, named, parameters.errors());
    parameters.errors().throwIfAny();
    int number = lexicon.edition();
    PublishedEdition edition =
        editions.log().edition(number).orElseThrow(() -> EditionChoice.unrecorded(number));
    writer.write(context, "editions/edition.jte", Map.of("page", page(edition, lexicon, after)));
  }

  private EditionPage page(PublishedEdition edition, Lexicon lexicon, String after) {
    List<WordChange> found =
        editions.log().changes(edition.number()).stream()
            .filter(change -> change.spelling().compareTo(after) > 0)
            .limit(WORDS + 1L)
            .toList();
    KeysetPage<WordDifference> shown =
        KeysetPage.of(found, WORDS, WordChange::spelling)
            .map(change -> WordDifference.of(change, edition.number(), lexicon));
    EditionLine line = EditionLine.of(edition);
    Optional<String> more = shown.next().map(word -> line.address() + "?after=" + word);
    List<MaterialDifference> material =
        after.isEmpty() ? MaterialDifference.of(MaterialChanges.of(editions, lexicon)) : List.of();
    return new EditionPage(line, editions.newest().edition(), shown.items(), material, more);
  }
}
