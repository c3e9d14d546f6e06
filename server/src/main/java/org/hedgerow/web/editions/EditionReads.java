package org.hedgerow.web.editions;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.MaterialChanges;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordChange;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.web.Routes;
import org.hedgerow.web.http.Endpoints;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.view.EditionView;
import org.hedgerow.web.view.WordEntry;

/** {@code GET /editions}, {@code /editions/{edition}} and {@code /editions/{edition}/changes}. */
final class EditionReads {
  static final String LIST = "/editions";
  static final String ONE = LIST + "/{edition}";
  static final String CHANGES = ONE + "/changes";

  /** The parameters of those that are lists. */
  static final List<String> PARAMETERS = List.of(KeysetParameters.LIMIT, KeysetParameters.AFTER);

  private static final int MAX_LIMIT = 100;
  private static final int DEFAULT_LIMIT = 20;

  private final Editions editions;

  EditionReads(Editions editions) {
    this.editions = editions;
  }

  /**
   * @param newest the newest edition's number
   * @param next what to give as {@code after}; left out at the end
   */
  record ListView(int newest, List<EditionView> editions, Optional<String> next) {}

  record OneView(EditionView edition) {}

  /**
   * @param material what else it changed; only with the first part of a list
   * @param next what to give as {@code after}; left out at the end
   */
  record ChangesView(
      EditionView edition,
      List<Change> changes,
      Optional<MaterialView> material,
      Optional<String> next) {}

  /**
   * @param before left out if the word is new
   * @param after left out if the word is withdrawn
   */
  record Change(String word, Optional<WordEntry> before, Optional<WordEntry> after) {

    static Change of(WordChange change, Lexicon lexicon) {
      return new Change(
          change.spelling(),
          change.before().map(word -> entry(word, lexicon)),
          change.after().map(word -> entry(word, lexicon)));
    }

    private static WordEntry entry(Word word, Lexicon lexicon) {
      List<String> accents =
          lexicon.accents().stream()
              .map(each -> each.accent().tag())
              .filter(
                  tag -> word.pronunciations().stream().anyMatch(said -> said.accent().equals(tag)))
              .toList();
      return WordEntry.of(word, lexicon.pictures(), accents, List.of());
    }
  }

  Endpoints.Found list(Context context, Parameters parameters) {
    int limit = limit(parameters);
    int after = KeysetParameters.afterEdition(parameters);
    parameters.errors().throwIfAny();
    KeysetPage<EditionView> page =
        KeysetPage.of(editions.log().before(after, limit + 1), limit, PublishedEdition::number)
            .map(EditionView::of);
    return new Endpoints.Found(
        new ListView(editions.newest().edition(), page.items(), page.next()),
        page.next().map(number -> next(Routes.API + LIST, number, limit)));
  }

  Endpoints.Found one(Context context, Parameters parameters) {
    return Endpoints.Found.all(new OneView(EditionView.of(edition(context, parameters))));
  }

  Endpoints.Found changes(Context context, Parameters parameters) {
    int limit = limit(parameters);
    String after = KeysetParameters.afterWord(parameters);
    PublishedEdition edition = edition(context, parameters);
    Lexicon lexicon = editions.at(edition.number()).orElseGet(editions::newest);
    List<WordChange> found =
        editions.log().changes(edition.number()).stream()
            .filter(change -> change.spelling().compareTo(after) > 0)
            .limit(limit + 1L)
            .toList();
    KeysetPage<Change> page =
        KeysetPage.of(found, limit, WordChange::spelling).map(change -> Change.of(change, lexicon));
    return new Endpoints.Found(
        new ChangesView(
            EditionView.of(edition),
            page.items(),
            after.isEmpty()
                ? Optional.of(MaterialView.of(MaterialChanges.of(editions, lexicon)))
                : Optional.empty(),
            page.next()),
        page.next().map(word -> next(context.path(), word, limit)));
  }

  /** The edition that the path names; what is wrong is thrown at once. */
  private PublishedEdition edition(Context context, Parameters parameters) {
    String named = context.pathParam(EditionChoice.PARAMETER);
    int number = EditionChoice.named(editions, named, parameters.errors()).edition();
    parameters.errors().throwIfAny();
    return editions.log().edition(number).orElseThrow(() -> EditionChoice.unrecorded(number));
  }

  private static int limit(Parameters parameters) {
    return KeysetParameters.limit(parameters, MAX_LIMIT, DEFAULT_LIMIT);
  }

  private static String next(String path, String after, int limit) {
    return "%s?%s=%s&%s=%d"
        .formatted(path, KeysetParameters.AFTER, after, KeysetParameters.LIMIT, limit);
  }
}
