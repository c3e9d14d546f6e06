package org.hedgerow.web.curriculum;

import static java.util.stream.Collectors.joining;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.HeldPhonograms;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.review.curriculum.CurriculumServices;
import org.hedgerow.review.curriculum.SightWordsDraft;
import org.hedgerow.web.security.Identity;

/** The sets of sight words that a centre chooses from. */
final class SightWordsEditPages {
  static final String PATH = "/centre/sight-words";

  private final SetPageSupport desk;
  private final CurriculumServices services;

  SightWordsEditPages(SetPageSupport desk, CurriculumServices services) {
    this.desk = desk;
    this.services = services;
  }

  private SightWordSets present() {
    return desk.newest().plans().sightWords();
  }

  private static Optional<SightWords> named(Lexicon edition, String name) {
    return edition.plans().sightWords().named(name);
  }

  void list(Context context) {
    List<SetsPage.Row> rows = present().all().stream().map(this::row).toList();
    Optional<String> undo =
        desk.undo(context, PATH, (edition, name) -> named(edition, name).isPresent());
    desk.show(
        context,
        "curriculum/sightwordsets.jte",
        new SetsPage(desk.token(context), SetPageSupport.done(context), undo, rows));
  }

  private SetsPage.Row row(SightWords set) {
    boolean usual = present().usual().filter(set::equals).isPresent();
    return new SetsPage.Row(
        set.name(),
        set.title(),
        set.note(),
        SightWordsDraft.mark(Optional.of(set)),
        usual ? "Used by default: it can be changed, but not withdrawn." : "");
  }

  void edit(Context context) {
    String name = SetPageSupport.asked(context, "name");
    if (name.isEmpty()) {
      String model = SetPageSupport.asked(context, "copy");
      List<String> words = present().named(model).map(SightWords::words).orElse(List.of());
      SightWordsDraft draft = new SightWordsDraft("", "", "", words);
      show(context, draft, draft.wordsInText(), "", true, "", Map.of());
    } else {
      Lexicon edition = desk.edition(context);
      SightWordsDraft draft =
          SightWordsDraft.of(
              named(edition, name).orElseThrow(() -> SetPageSupport.missing(name, edition)));
      Optional<SightWords> now = present().named(name);
      String seen = SightWordsDraft.mark(now);
      show(context, draft, draft.wordsInText(), seen, now.isEmpty(), "", Map.of());
    }
  }

  private void show(
      Context context,
      SightWordsDraft draft,
      String text,
      String seen,
      boolean isNew,
      String conflict,
      Map<String, String> errors) {
    List<SightWordsForm.Holding> holding =
        holding(present().named(draft.name()).map(SightWords::words).orElse(List.of()));
    desk.show(
        context,
        "curriculum/sightwordsform.jte",
        new SightWordsForm(
            desk.token(context),
            draft,
            text,
            seen,
            isNew,
            desk.former(context, PATH, draft.name()),
            conflict,
            errors,
            holding));
  }

  /** In the accent that the bank names first. */
  private List<SightWordsForm.Holding> holding(List<String> words) {
    Lexicon lexicon = desk.newest();
    String accent = lexicon.accents().get(0).accent().tag();
    return words.stream()
        .map(word -> holding(word, HeldPhonograms.in(lexicon, word, accent)))
        .filter(each -> !each.phonograms().isEmpty())
        .toList();
  }

  private static SightWordsForm.Holding holding(String word, List<Correspondence> values) {
    return new SightWordsForm.Holding(
        word, values.stream().map(Correspondence::label).collect(joining(", ")));
  }

  void save(Context context) {
    String text = SetPageSupport.sent(context, "words");
    SightWordsDraft draft =
        new SightWordsDraft(
            SetPageSupport.sent(context, "name"),
            SetPageSupport.sent(context, "title"),
            SetPageSupport.sent(context, "note"),
            SightWordsDraft.words(text));
    String seen = SetPageSupport.sent(context, "seen");
    boolean isNew = seen.isEmpty();
    try {
      int edition =
          services.saveSightWords().execute(Identity.of(context).actor(), draft, Optional.of(seen));
      desk.goOn(context, PATH, edition, draft.name());
    } catch (RejectedException refused) {
      context.status(400);
      show(context, draft, text, seen, isNew, "", SetPageSupport.errors(refused));
    } catch (StaleUpdateException late) {
      context.status(412);
      String now = SightWordsDraft.mark(present().named(draft.name()));
      String message = String.valueOf(late.getMessage());
      show(context, draft, text, isNew ? seen : now, isNew, message, Map.of());
    }
  }

  void withdraw(Context context) {
    String name = SetPageSupport.sent(context, "name");
    int edition =
        services
            .withdrawSightWords()
            .execute(
                Identity.of(context).actor(),
                name,
                Optional.of(SetPageSupport.sent(context, "seen")));
    desk.goOn(context, PATH, edition, name);
  }
}
