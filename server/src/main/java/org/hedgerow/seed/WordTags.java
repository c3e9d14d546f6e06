package org.hedgerow.seed;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.seedlexicon.InflectionRow;
import org.hedgerow.seedlexicon.NameRow;
import org.hedgerow.seedlexicon.PictureRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.StarterRow;
import org.hedgerow.seedlexicon.TagRow;
import org.hedgerow.seedlexicon.UnfitRow;

/** Everything the seed knows of a word beside its sounds, each with its reason. */
final class WordTags {

  private static final String YES = "yes";
  private static final String DECIDED = "by hand: ";
  private static final String BY_HAND = "judged by hand for children of four to six";

  private final Map<String, String> names;
  private final Map<String, String> unfit;
  private final Map<String, InflectionRow> inflections;
  private final Map<String, TagRow> rows;
  private final Map<String, List<StarterRow>> starter;
  private final Map<String, PictureRow> pictures;
  private final Spellings spellings;

  WordTags(SeedLexicon seed) {
    this.names = seed.names().stream().collect(toMap(NameRow::word, NameRow::reason));
    this.unfit = seed.unfit().stream().collect(toMap(UnfitRow::word, row -> row.reason().label()));
    this.inflections =
        seed.inflections().stream()
            .sorted(Comparator.comparing(row -> !row.regular()))
            .collect(toMap(InflectionRow::form, row -> row, (first, second) -> first));
    this.rows = seed.tags().stream().collect(toMap(TagRow::word, row -> row));
    this.starter = seed.starter().stream().collect(groupingBy(StarterRow::word));
    this.pictures = seed.pictures().stream().collect(toMap(PictureRow::word, row -> row));
    this.spellings = new Spellings(seed.commonness(), seed.regions());
  }

  /** By alphabet. */
  List<Tag> of(String word) {
    List<Tag> tags = new ArrayList<>();
    inflection(word).ifPresent(tags::add);
    Optional.ofNullable(names.get(word))
        .map(reason -> new Tag(Tag.NAME, YES, reason))
        .ifPresent(tags::add);
    unfit(word).ifPresent(tags::add);
    Optional.ofNullable(rows.get(word)).ifPresent(row -> add(row, tags));
    picturable(word).ifPresent(tags::add);
    Optional.ofNullable(pictures.get(word)).map(WordTags::picture).ifPresent(tags::add);
    spellings.only(word).ifPresent(tags::add);
    if (judged(word).stream().anyMatch(StarterRow::isIn)) {
      tags.add(new Tag(Tag.STARTER, YES, "known, suitable and regular: " + BY_HAND));
    }
    tags.sort(Comparator.comparing(Tag::kind));
    return tags;
  }

  private List<StarterRow> judged(String word) {
    return starter.getOrDefault(word, List.of());
  }

  private Optional<Tag> inflection(String word) {
    return Optional.ofNullable(inflections.get(word))
        .map(
            row ->
                new Tag(row.regular() ? Tag.INFLECTED : Tag.BASE, row.base(), row.kind().label()));
  }

  private Optional<Tag> unfit(String word) {
    if (unfit.containsKey(word)) {
      return Optional.of(
          new Tag(Tag.NOT_FOR_CHILDREN, unfit.get(word), "list of words unfit for children"));
    }
    return judged(word).stream()
        .filter(row -> !row.suitable())
        .findFirst()
        .map(row -> new Tag(Tag.NOT_FOR_CHILDREN, "judged", withNote(BY_HAND, row)));
  }

  private static String withNote(String reason, StarterRow row) {
    return row.note().isEmpty() ? reason : reason + ": " + row.note();
  }

  private static void add(TagRow row, List<Tag> tags) {
    tags.add(new Tag(Tag.PART_OF_SPEECH, String.join(" ", row.parts()), partsReason(row)));
    if (!row.meanings().isEmpty()) {
      tags.add(new Tag(Tag.MEANING, String.join(" ", row.meanings()), meaningReason(row)));
    }
  }

  private static String partsReason(TagRow row) {
    if (row.uses().isEmpty()) {
      return "decided by hand";
    }
    return row.uses().getAsInt() == 0
        ? "WordNet%s: by the number of its senses".formatted(form(row))
        : "WordNet%s: by %d uses counted in texts".formatted(form(row), row.uses().getAsInt());
  }

  private static String meaningReason(TagRow row) {
    return "WordNet%s: the classes of its senses, the commonest first".formatted(form(row));
  }

  private static String form(TagRow row) {
    return row.formOf().isEmpty() ? "" : ", a form of " + row.formOf();
  }

  /** What people have judged is worth more than what was computed. */
  private Optional<Tag> picturable(String word) {
    return judged(word).stream()
        .max(Comparator.comparing(StarterRow::picturable))
        .map(row -> new Tag(Tag.PICTURABLE, String.valueOf(row.picturable()), BY_HAND))
        .or(() -> Optional.ofNullable(rows.get(word)).map(this::computed));
  }

  /** A word that a picture has as its name can be drawn. */
  private Tag computed(TagRow row) {
    if (row.picturable() < TagFilter.DRAWABLE && pictures.containsKey(row.word())) {
      return new Tag(
          Tag.PICTURABLE,
          String.valueOf(TagFilter.DRAWABLE),
          "there is a picture that has it as its name");
    }
    return new Tag(Tag.PICTURABLE, String.valueOf(row.picturable()), reason(row));
  }

  private static String reason(TagRow row) {
    if (row.because().startsWith(DECIDED)) {
      return row.because();
    }
    String rarer = row.rarer() ? "; less common words count less" : "";
    return "WordNet%s: most often %s%s".formatted(form(row), row.because(), rarer);
  }

  private static Tag picture(PictureRow row) {
    return new Tag(Tag.PICTURE, row.id(), "%s by %s".formatted(row.source(), row.author()));
  }
}
