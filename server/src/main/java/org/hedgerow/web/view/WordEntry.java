package org.hedgerow.web.view;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;

/**
 * All that the bank knows of a word.
 *
 * @param picturable left out if nobody has said
 * @param picture left out if it has none
 * @param inflectionOf the word it is a form of; left out if it is none
 * @param since the edition since which it stands as it does
 * @param history the editions that changed it, the newest first; left out if none did
 */
public record WordEntry(
    String spelling,
    String status,
    int commonness,
    int syllables,
    OptionalInt picturable,
    boolean starter,
    List<String> partsOfSpeech,
    List<String> meanings,
    Optional<PictureView> picture,
    List<PronunciationView> pronunciations,
    List<TagView> tags,
    Optional<String> inflectionOf,
    int since,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) List<EditionView> history) {

  public static WordEntry of(
      Word word, Pictures pictures, List<String> accents, List<PublishedEdition> history) {
    return new WordEntry(
        word.spelling(),
        word.status().label(),
        word.commonness(),
        word.syllables(),
        word.picturable(),
        word.isStarter(),
        word.partsOfSpeech(),
        word.meanings(),
        pictures.of(word).map(PictureView::of),
        accents.stream()
            .flatMap(accent -> word.pronunciationsIn(accent).stream())
            .map(PronunciationView::sourced)
            .toList(),
        word.tags().stream().map(TagView::of).toList(),
        word.tag(Tag.INFLECTED).or(() -> word.tag(Tag.BASE)).map(Tag::value),
        word.since(),
        history.stream().map(EditionView::of).toList());
  }

  record TagView(@JsonProperty("tag") String kind, String value, String reason) {
    static TagView of(Tag tag) {
      return new TagView(tag.kind(), tag.value(), tag.reason());
    }
  }
}
