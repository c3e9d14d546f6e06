package org.hedgerow.web.curriculum;

import static java.util.stream.Collectors.joining;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.HeldPhonograms;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.review.curriculum.SetKind;
import org.hedgerow.review.curriculum.SightWordsDraft;

/** The sets of sight words that a centre chooses from. */
final class SightWordsEditPages extends SetPages<SightWords, SightWordsDraft> {
  private static final String WORDS = "words";

  SightWordsEditPages(SetPageSupport support, ChangeCurriculum change) {
    super(
        SetKind.SIGHT_WORDS,
        "/centre/sight-words",
        "curriculum/sightwordsets.jte",
        "curriculum/sightwordsform.jte",
        support,
        change);
  }

  @Override
  List<SightWords> all(Lexicon edition) {
    return edition.plans().sightWords().all();
  }

  @Override
  String fixed(SightWords set, Lexicon edition) {
    return edition.plans().sightWords().usual().filter(set::equals).isPresent()
        ? "Used by default: it can be changed, but not withdrawn."
        : "";
  }

  @Override
  SightWordsDraft begin(Optional<SightWords> model, Lexicon edition) {
    return new SightWordsDraft("", "", "", model.map(SightWords::words).orElse(List.of()));
  }

  @Override
  SightWordsDraft typed(Context context) {
    return new SightWordsDraft(
        SetPageSupport.sent(context, "name"),
        SetPageSupport.sent(context, "title"),
        SetPageSupport.sent(context, "note"),
        SightWordsDraft.words(SetPageSupport.sent(context, WORDS)));
  }

  @Override
  Object form(Context context, SetForm<SightWordsDraft> form, Lexicon newest) {
    String typed = SetPageSupport.sent(context, WORDS);
    List<String> words = find(newest, form.draft().name()).map(SightWords::words).orElse(List.of());
    return new SightWordsForm(
        form, typed.isEmpty() ? form.draft().wordsInText() : typed, holding(words, newest));
  }

  /** In the accent that the bank names first. */
  private static List<SightWordsForm.Holding> holding(List<String> words, Lexicon lexicon) {
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
}
