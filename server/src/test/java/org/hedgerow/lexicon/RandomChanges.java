package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;

/** Changes of every kind to the words of a bank, the same for the same seed. */
public final class RandomChanges {
  private final Lexicon lexicon;
  private final Random random;
  private final Map<String, Word> words = new LinkedHashMap<>();
  private final Set<String> withdrawn = new LinkedHashSet<>();

  private RandomChanges(Lexicon lexicon, long seed) {
    this.lexicon = lexicon;
    this.random = new Random(seed);
  }

  /** So many words of common use of an edition changed, new or withdrawn by a later one. */
  public static Changes of(Lexicon lexicon, int edition, int count, long seed) {
    return new RandomChanges(lexicon, seed).make(edition, count);
  }

  private Changes make(int edition, int count) {
    List<Word> common =
        lexicon.words().stream().filter(word -> word.commonness() >= 2).limit(30_000).toList();
    while (words.size() + withdrawn.size() < count) {
      Word word = common.get(random.nextInt(common.size()));
      if (!words.containsKey(word.spelling()) && !withdrawn.contains(word.spelling())) {
        change(word, edition);
      }
    }
    return Changes.of(List.copyOf(words.values()), withdrawn);
  }

  private void change(Word word, int edition) {
    switch (random.nextInt(5)) {
      case 0 -> withdrawn.add(word.spelling());
      case 1 -> put(lengthened(word, edition));
      case 2 -> put(with(word, edition, word.tags(), fewer(word.pronunciations())));
      case 3 -> put(with(word, edition, otherTags(word), word.pronunciations()));
      default -> put(with(word, edition, word.tags(), withAnotherAccent(word)));
    }
  }

  private void put(Word word) {
    words.put(word.spelling(), word);
  }

  private Word with(Word word, int edition, List<Tag> tags, List<Pronunciation> said) {
    Status status = random.nextBoolean() ? Status.APPROVED : Status.SEEDED;
    return new Word(word.spelling(), status, 1 + random.nextInt(5), edition, tags, said);
  }

  /** A new word: <em>zboat</em> for <em>boat</em>. */
  private Word lengthened(Word word, int edition) {
    String spelling = "z" + word.spelling();
    List<Pronunciation> said = new ArrayList<>();
    for (Pronunciation each : word.pronunciations()) {
      Aligner aligner = lexicon.aligner(each.accent());
      List<Sound> sounds = new ArrayList<>(List.of(aligner.accent().sound("z").orElseThrow()));
      sounds.addAll(each.sounds());
      said.add(Pronunciation.aligned(aligner, spelling, sounds, "", "a test", each.aside()));
    }
    return new Word(spelling, Status.APPROVED, word.commonness(), edition, word.tags(), said);
  }

  private List<Pronunciation> fewer(List<Pronunciation> said) {
    return List.of(said.get(random.nextInt(said.size())));
  }

  /** What is said in one accent is now said in another, too, as far as it has the sounds. */
  private List<Pronunciation> withAnotherAccent(Word word) {
    Aligner aligner = lexicon.aligner(random.nextBoolean() ? "en-GB" : "en-US");
    Pronunciation one = fewer(word.pronunciations()).get(0);
    List<Sound> sounds =
        one.sounds().stream()
            .flatMap(sound -> aligner.accent().sound(sound.ipa()).stream())
            .toList();
    List<Pronunciation> said = new ArrayList<>(word.pronunciations());
    if (sounds.size() == one.sounds().size()) {
      said.add(Pronunciation.aligned(aligner, word.spelling(), sounds, "", "a test", false));
    }
    return said;
  }

  private List<Tag> otherTags(Word word) {
    List<String> kinds = List.of(Tag.NAME, Tag.STARTER, Tag.INFLECTED, Tag.NOT_FOR_CHILDREN);
    String kind = kinds.get(random.nextInt(kinds.size()));
    List<Tag> tags = new ArrayList<>();
    word.tags().stream()
        .filter(tag -> !tag.kind().equals(kind) && !tag.kind().equals(Tag.PICTURABLE))
        .forEach(tags::add);
    if (!word.is(kind)) {
      tags.add(new Tag(kind, "yes", "a test"));
    }
    tags.add(new Tag(Tag.PICTURABLE, String.valueOf(random.nextInt(4)), "a test"));
    return tags;
  }
}
