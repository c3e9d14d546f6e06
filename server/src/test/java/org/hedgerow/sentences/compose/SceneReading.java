package org.hedgerow.sentences.compose;

import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toCollection;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeedKnowledge;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.Articles;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.WordJudge;

/**
 * For whoever writes scenes: {@code SceneReading TABLE oa1} prints for each scene of a table what
 * can't be read in sentences for the value, in American and British English, and some fillings. The
 * last two columns of the table are the kind and the scene.
 */
final class SceneReading {
  private static final int SHOWN = 6;
  private static final int TRIES = 300;
  private static final Lemmas LEMMAS = new Lemmas(SeedKnowledge.of(SeedLexicon.bundled()));

  private final SentenceStandard standard;
  private final FunctionWords words;
  private final Articles articles;
  private final SeededRandom random = new SeededRandom(1);

  SceneReading(Lexicon lexicon, Correspondence value) {
    this.standard =
        new SentenceStandard(
            Standard.of(value),
            List.of("en-US", "en-GB"),
            lexicon.plans().sightWords().usualWords(),
            SentenceStandard.DEFAULT_TARGETS,
            SentenceStandard.DEFAULT_WORDS);
    WordJudge judge = new WordJudge(lexicon, standard);
    this.words = new FunctionWords(word -> Composer.use(judge.judge(word)), List.of());
    this.articles = new Articles(lexicon, "en-US");
  }

  public static void main(String[] arguments) throws IOException {
    Lexicon lexicon = SeededLexicon.get();
    String name = arguments[1];
    int at = name.length() - 1;
    Correspondence value =
        lexicon.catalogue().value(name.substring(0, at), name.charAt(at) - '0').orElseThrow();
    SceneReading reading = new SceneReading(lexicon, value);
    for (String line : Files.readAllLines(Path.of(arguments[0]))) {
      List<String> cells = List.of(line.split("\t", -1));
      if (!line.startsWith("#") && cells.size() > 1) {
        reading.print(cells.get(cells.size() - 2), cells.get(cells.size() - 1));
      }
    }
  }

  private void print(String kind, String text) {
    Scene scene = Scene.of(SentenceKind.labelled(kind).orElseThrow(), text);
    System.out.println(text);
    String unread = String.join(" ", unread(scene));
    if (!unread.isEmpty()) {
      System.out.println("   can't be read: " + unread);
    }
    Set<String> passing = fillings(scene);
    System.out.printf("   %d fillings pass%n", passing.size());
    System.out.print(
        passing.stream().limit(SHOWN).map(each -> "      " + each + "\n").collect(joining()));
  }

  /** Words of a scene that can't be read in sentences for the value. */
  Set<String> unread(Scene scene) {
    return scene.slots().stream()
        .flatMap(List::stream)
        .flatMap(List::stream)
        .filter(word -> read(List.of(word)).isEmpty())
        .collect(toCollection(LinkedHashSet::new));
  }

  private Optional<Phrase> read(List<String> texts) {
    return words.written(texts, LEMMAS);
  }

  /** Sentences that a scene gives for the value. */
  Set<String> fillings(Scene scene) {
    return ReadableScene.of(scene, "", this::read).stream()
        .flatMap(this::filled)
        .filter(each -> each.phrase().targets() >= standard.minimumTargets())
        .filter(each -> each.phrase().length() <= standard.maximumWords())
        .filter(each -> !each.phrase().repeats())
        .map(Candidate::text)
        .collect(toCollection(LinkedHashSet::new));
  }

  private Stream<Candidate> filled(ReadableScene scene) {
    return Stream.generate(() -> scene.fill(random, articles::startsWithVowel)).limit(TRIES);
  }
}
