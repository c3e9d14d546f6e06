package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Inflection;

/**
 * An entry of the bank.
 *
 * @param spelling lower-case letters a to z
 * @param commonness from 5 (SCOWL size 10) to 1 (beyond size 50)
 * @param since the edition since which the entry stands as it does
 * @param tags what else is known of it
 * @param pronunciations in all accents, at least one
 * @param accents how the accents fall back on each other
 */
public record Word(
    String spelling,
    Status status,
    int commonness,
    int since,
    List<Tag> tags,
    List<Pronunciation> pronunciations,
    Accents accents) {

  public Word {
    requireNonNull(spelling);
    requireNonNull(status);
    if (commonness < 1 || commonness > 5) {
      throw new IllegalArgumentException("commonness is 1 to 5, not " + commonness);
    }
    tags = List.copyOf(tags);
    pronunciations = List.copyOf(pronunciations);
    if (pronunciations.isEmpty()) {
      throw new IllegalArgumentException(spelling + " has no pronunciation");
    }
    requireNonNull(accents);
  }

  /** An entry before it is put among the accents of an edition. */
  public Word(
      String spelling,
      Status status,
      int commonness,
      int since,
      List<Tag> tags,
      List<Pronunciation> pronunciations) {
    this(spelling, status, commonness, since, tags, pronunciations, Accents.UNKNOWN);
  }

  /** The same entry where accents fall back on each other so. */
  public Word among(Accents edition) {
    return new Word(spelling, status, commonness, since, tags, pronunciations, edition);
  }

  /** The same with other pronunciations. */
  public Word saying(List<Pronunciation> others) {
    return new Word(spelling, status, commonness, since, tags, others, accents);
  }

  /** The same with a tag, instead of any of its kind. */
  public Word tagged(Tag tag) {
    List<Tag> all = new ArrayList<>(without(tag.kind()).tags);
    all.add(tag);
    all.sort(Comparator.comparing(Tag::kind));
    return tagged(all);
  }

  /** The same without the tags of a kind. */
  public Word without(String kind) {
    return tagged(tags.stream().filter(tag -> !tag.kind().equals(kind)).toList());
  }

  private Word tagged(List<Tag> others) {
    return new Word(spelling, status, commonness, since, others, pronunciations, accents);
  }

  /** The same, but more or less common. */
  public Word ofCommonness(int level) {
    return new Word(spelling, status, level, since, tags, pronunciations, accents);
  }

  /** The same, with people who stand behind it. */
  public Word approved() {
    return new Word(spelling, Status.APPROVED, commonness, since, tags, pronunciations, accents);
  }

  /** The same, as an edition brings it. */
  public Word since(int number) {
    return new Word(spelling, status, commonness, number, tags, pronunciations, accents);
  }

  public Optional<Tag> tag(String kind) {
    for (Tag tag : tags) {
      if (tag.kind().equals(kind)) {
        return Optional.of(tag);
      }
    }
    return Optional.empty();
  }

  public boolean is(String kind) {
    return tag(kind).isPresent();
  }

  /** How well it can be shown in a picture, from 0 to 3; empty if nobody has said. */
  public OptionalInt picturable() {
    Optional<Tag> tag = tag(Tag.PICTURABLE);
    return tag.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(Integer.parseInt(tag.get().value()));
  }

  /** Whether it belongs to the starter set: judged by hand to be good for small children. */
  public boolean isStarter() {
    return is(Tag.STARTER);
  }

  /** Labels of {@link PartOfSpeech parts of speech}, the commonest first. */
  public List<String> partsOfSpeech() {
    return tag(Tag.PART_OF_SPEECH).map(Tag::values).orElse(List.of());
  }

  /** Labels of {@link Meaning meaning classes}, that of the commonest sense first. */
  public List<String> meanings() {
    return tag(Tag.MEANING).map(Tag::values).orElse(List.of());
  }

  /** The syllables of its first pronunciation. */
  public int syllables() {
    return pronunciations.get(0).syllables();
  }

  /** All pronunciations in an accent; where it has none of its own, its parent's. */
  public List<Pronunciation> pronunciationsIn(String accent) {
    return accents.chain(accent).stream()
        .map(this::ownIn)
        .filter(own -> !own.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private List<Pronunciation> ownIn(String accent) {
    return pronunciations.stream().filter(each -> each.accent().equals(accent)).toList();
  }

  /** The pronunciations that checks count in an accent: its own, else its parent's. */
  public List<Pronunciation> saidIn(String accent) {
    return CheckedWord.saidIn(accents.chain(accent), pronunciations);
  }

  /** The pronunciations in some accents that checks count. */
  List<Pronunciation> said(List<String> tags) {
    List<Pronunciation> said = new ArrayList<>(pronunciations.size());
    tags.forEach(accent -> said.addAll(saidIn(accent)));
    return said;
  }

  /** The word as the checks see it. */
  public CheckedWord subject() {
    return new CheckedWord(
        spelling,
        pronunciations,
        accents,
        tag(Tag.INFLECTED).map(tag -> new Inflection(tag.value(), tag.reason())),
        tag(Tag.NAME).map(Tag::reason).orElse(""),
        tag(Tag.NOT_FOR_CHILDREN).map(Tag::value).orElse(""),
        true);
  }

  /**
   * Whether it is spelt so where a spelling of English is used.
   *
   * @param spelling as an accent has it; if empty, any will do
   */
  public boolean isSpeltSoIn(String spelling) {
    return spelling.isEmpty()
        || tag(Tag.REGION).map(region -> region.value().equals(spelling)).orElse(true);
  }
}
