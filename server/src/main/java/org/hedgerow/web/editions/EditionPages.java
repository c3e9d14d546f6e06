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
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.KeysetPage;
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
    Parameters parameters = AccentQuestion.read(context, List.of(KeysetPage.AFTER));
    int after = KeysetPage.afterEdition(parameters);
    parameters.errors().throwIfAny();
    List<PublishedEdition> found = editions.log().before(after, EDITIONS + 1);
    List<EditionLine> shown = found.stream().limit(EDITIONS).map(EditionLine::of).toList();
    Optional<String> older =
        found.size() > EDITIONS
            ? Optional.of("/editions?after=" + shown.get(EDITIONS - 1).number())
            : Optional.empty();
    writer.write(context, "editions/editions.jte", Map.of("page", new EditionsPage(shown, older)));
  }

  public void one(Context context) {
    Parameters parameters = AccentQuestion.read(context, List.of(KeysetPage.AFTER));
    String after = KeysetPage.afterWord(parameters);
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
    List<WordDifference> shown =
        found.stream()
            .limit(WORDS)
            .map(change -> WordDifference.of(change, edition.number(), lexicon))
            .toList();
    EditionLine line = EditionLine.of(edition);
    Optional<String> more =
        found.size() > WORDS
            ? Optional.of(line.address() + "?after=" + shown.get(WORDS - 1).spelling())
            : Optional.empty();
    List<MaterialDifference> material =
        after.isEmpty() ? MaterialDifference.of(MaterialChanges.of(editions, lexicon)) : List.of();
    return new EditionPage(line, editions.newest().edition(), shown, material, more);
  }
}
