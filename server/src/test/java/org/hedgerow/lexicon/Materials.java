package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.seed.SeededLexicon;

/** Changes of everything but words, for tests. */
public final class Materials {
  public static final String TEXT = "The ship has fish.";

  private static final Curriculum SEEDED = SeededLexicon.curriculum();
  private static final Correspondence SH =
      SeededLexicon.get().catalogue().value("sh", 1).orElseThrow();
  private static final Sequence AUTUMN = new Sequence("autumn", "Autumn", "", List.of(List.of(SH)));
  private static final ReadingRules ALL_OFF = allOff();

  /** One of each kind comes. */
  public static final Changes COME =
      new Changes(
          List.of(),
          Set.of(),
          Optional.of(SEEDED.with(rules("Gentle", Switch.X)).with(AUTUMN).with(few("the", "said"))),
          List.of(picture()),
          Optional.of(seededAnd(new Sentence(TEXT, SH, List.of("en-US")))));

  /** The rules and the sight words are changed, the sequence and the sentence go. */
  public static final Changes CHANGED =
      new Changes(
          List.of(),
          Set.of(),
          Optional.of(SEEDED.with(rules("Gentler", Switch.CK)).with(few("said", "was"))),
          List.of(),
          Optional.of(SeededLexicon.get().sentences()));

  private Materials() {}

  private static Sentences seededAnd(Sentence sentence) {
    List<Sentence> all = new ArrayList<>(SeededLexicon.get().sentences().all());
    all.add(sentence);
    return new Sentences(all);
  }

  private static ReadingRules allOff() {
    ReadingRules rules = ReadingRules.DEFAULT;
    for (Switch each : Switch.values()) {
      rules = rules.with(each, false);
    }
    return rules;
  }

  private static RuleSet rules(String title, Switch on) {
    return new RuleSet("gentle", title, ALL_OFF.with(on, true), "");
  }

  private static SightWords few(String... words) {
    return new SightWords("few", "A few", List.of(words), "");
  }

  private static Picture picture() {
    Bytes content = Bytes.of(new byte[] {1, 2, 3});
    return new Picture(
        "a-ship",
        "A ship",
        "Mary Bloggs",
        "CC BY 4.0",
        "https://creativecommons.org/licenses/by/4.0/",
        "own work",
        content.fingerprint(),
        Picture.PNG,
        content);
  }
}
