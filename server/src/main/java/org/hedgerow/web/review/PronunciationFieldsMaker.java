package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.LetterGroup;
import org.hedgerow.review.ProposedPronunciation;
import org.hedgerow.web.page.SoundWords;

/** Makes blocks of a form of what somebody says about how a word sounds. */
final class PronunciationFieldsMaker {
  private final Lexicon lexicon;
  private final String spelling;
  private final FieldErrors errors;

  PronunciationFieldsMaker(Lexicon lexicon, String spelling, FieldErrors errors) {
    this.lexicon = lexicon;
    this.spelling = spelling;
    this.errors = errors;
  }

  List<PronunciationFields> all(List<ProposedPronunciation> sayings) {
    List<PronunciationFields> views = new ArrayList<>();
    for (ProposedPronunciation saying : sayings) {
      int number = views.size();
      views.add(of(number, saying, errors.under("pronunciations[%d]".formatted(number))));
    }
    return views;
  }

  PronunciationFields one(ProposedPronunciation saying) {
    return of(0, saying, errors.under("saying"));
  }

  private PronunciationFields of(int number, ProposedPronunciation saying, String error) {
    AccentCatalogue accent =
        lexicon.accent(saying.accent()).orElseGet(() -> lexicon.accents().get(0));
    Optional<List<Sound>> read =
        new ComputedAlignments(lexicon).sounds(saying.accent(), saying.sounds());
    List<Sound> sounds = read.orElse(List.of());
    String proposed = new Proposals(lexicon).sounds(spelling, saying.accent());
    List<LetterGroup> pieces = pieces(saying, accent, sounds);
    SoundKeys keys = new SoundKeys(lexicon, accent);
    return new PronunciationFields(
        number,
        accents(saying),
        accent.accent().name(),
        saying.sounds(),
        proposed,
        !proposed.isEmpty() && proposed.equals(saying.sounds()) && lexicon.word(spelling).isEmpty(),
        ProposedPronunciationReader.base(spelling, saying.accent(), saying.sounds()),
        new LetterGroupViews(lexicon, accent, spelling).of(pieces),
        letters(accent, sounds, pieces),
        heard(accent.accent(), sounds, keys),
        keys.all(),
        obstacle(accent, sounds, pieces),
        error);
  }

  private List<Option> accents(ProposedPronunciation saying) {
    return lexicon.accents().stream()
        .map(AccentCatalogue::accent)
        .map(each -> Option.of(each.tag(), each.name(), saying.accent()))
        .toList();
  }

  private boolean isWord() {
    return spelling.matches("[a-z]{1,40}");
  }

  private List<LetterGroup> pieces(
      ProposedPronunciation saying, AccentCatalogue accent, List<Sound> sounds) {
    if (!saying.spans().isEmpty()) {
      return saying.spans();
    }
    return sounds.isEmpty()
        ? List.of()
        : new ComputedAlignments(lexicon).proposed(spelling, accent.accent().tag(), sounds);
  }

  private List<LetterView> letters(
      AccentCatalogue accent, List<Sound> sounds, List<LetterGroup> pieces) {
    if (!isWord() || sounds.isEmpty()) {
      return List.of();
    }
    LetterChoices choices = new LetterChoices(spelling, sounds, accent);
    List<String> chosen = choices.choices(pieces);
    List<LetterView> views = new ArrayList<>();
    for (int letter = 0; letter < spelling.length(); letter++) {
      String choice = chosen.get(letter);
      views.add(
          new LetterView(
              spelling.substring(letter, letter + 1),
              caption(accent.accent(), choices, choice),
              letter > 0 && !choice.isEmpty() && choice.equals(chosen.get(letter - 1)),
              options(accent.accent(), choices, choice)));
    }
    return views;
  }

  private static String caption(Accent accent, LetterChoices choices, String choice) {
    return choice.isEmpty() ? "?" : SoundWords.of(accent.tag(), choices.soundsOf(choice));
  }

  private static List<Option> options(Accent accent, LetterChoices choices, String choice) {
    List<Option> options = new ArrayList<>();
    options.add(Option.of("", "not said yet", choice));
    List<String> offered = new ArrayList<>(choices.offered());
    if (!choice.isEmpty() && !offered.contains(choice)) {
      offered.add(choice);
    }
    for (String each : offered) {
      options.add(Option.of(each, words(accent, choices, each), choice));
    }
    return options;
  }

  private static String words(Accent accent, LetterChoices choices, String choice) {
    if (choice.equals(LetterChoices.SILENT)) {
      return "says nothing";
    }
    List<Sound> sounds = choices.soundsOf(choice);
    return sounds.stream()
            .map(sound -> SoundWords.of(accent.tag(), List.of(sound)))
            .collect(Collectors.joining(" and "))
        + " /"
        + Sound.joined(sounds)
        + "/, no. "
        + (Integer.parseInt(choice.split("-", 2)[0]) + 1);
  }

  private static List<Option> heard(Accent accent, List<Sound> sounds, SoundKeys keys) {
    List<Option> heard = new ArrayList<>();
    for (int place = 0; place < sounds.size(); place++) {
      Sound sound = sounds.get(place);
      String text =
          keys.of(sound).map(SoundKey::example).orElse(SoundWords.of(accent.tag(), List.of(sound)));
      heard.add(new Option(String.valueOf(place), text, false));
    }
    return heard;
  }

  private String obstacle(AccentCatalogue accent, List<Sound> sounds, List<LetterGroup> pieces) {
    return !isWord() || sounds.isEmpty() || !pieces.isEmpty()
        ? ""
        : lexicon.aligner(accent.accent().tag()).obstacle(spelling, sounds);
  }
}
