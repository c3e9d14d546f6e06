package org.hedgerow.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.seed.SeedCatalogue;
import org.hedgerow.seed.SeedCurriculum;
import org.hedgerow.seed.SeedSentences;
import org.hedgerow.seed.SeedWords;
import org.hedgerow.seedlexicon.DamagedSeedException;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.FirstEdition;

/** Fills an empty bank from the seed lexicon. */
final class SeedTask implements BankTask {
  /** Aligning a word takes about as long as a step of writing it. */
  private static final int STEPS = 1 + BankFiller.STEPS_FOR_A_WORD;

  private static final String WORK = "Filling the word bank";

  /** What the seed makes, before its words are aligned. */
  private record Seed(
      List<AccentCatalogue> accents, SeedWords words, Curriculum curriculum, Sentences sentences) {
    static Seed of(SeedLexicon lexicon) {
      List<AccentCatalogue> accents = SeedCatalogue.weighted(lexicon);
      return new Seed(
          accents,
          new SeedWords(lexicon, accents),
          SeedCurriculum.read(lexicon, accents.get(0).catalogue()),
          SeedSentences.read(lexicon, accents.get(0).catalogue()));
    }

    FirstEdition edition(Progress progress) {
      return new FirstEdition(
          SeedWords.FIRST_EDITION,
          accents,
          words.words(word -> progress.step()),
          curriculum,
          sentences);
    }

    String count() {
      return String.format(Locale.ROOT, "%,d words", words.count());
    }
  }

  private final Supplier<SeedLexicon> source;

  SeedTask() {
    this(SeedLexicon::bundled);
  }

  SeedTask(Supplier<SeedLexicon> source) {
    this.source = source;
  }

  @Override
  public int run(BankDatabase bank, PrintWriter out) {
    if (!runIfEmpty(bank, out)) {
      out.println("The word bank is filled already; nothing was changed.");
    }
    return 0;
  }

  /**
   * What a server does at its start.
   *
   * @return whether the bank was empty
   */
  boolean runIfEmpty(BankDatabase bank, PrintWriter out) {
    BankFiller filler =
        new BankFiller(
            bank, () -> out.println("Another Hedgerow is filling the word bank; waiting for it."));
    boolean filled = filler.isEmpty() && fill(filler, out);
    filler.addCurriculum(catalogue -> SeedCurriculum.read(source.get(), catalogue));
    filler.addSightWords(() -> SeedCurriculum.sightWords(source.get()));
    return filled;
  }

  private boolean fill(BankFiller filler, PrintWriter out) {
    MemoryCheck.requireToFill();
    Seed seed = read();
    boolean filled;
    try (Progress progress = Progress.of(WORK, seed.words().count(), STEPS, out)) {
      filled = filler.fill(() -> edition(seed, progress, out), summary(seed), progress::step);
    }
    out.println(
        filled
            ? "The word bank is filled: %s.".formatted(seed.count())
            : "The word bank is filled by another Hedgerow.");
    return filled;
  }

  private static FirstEdition edition(Seed seed, Progress progress, PrintWriter out) {
    out.println(WORK + ", which is done only once.");
    return seed.edition(progress);
  }

  /** The manifest finds changed files; a wrong row that was accepted into it is found here. */
  private Seed read() {
    try {
      return Seed.of(source.get());
    } catch (DamagedSeedException damage) {
      throw new CommandFailedException(String.valueOf(damage.getMessage()));
    } catch (IllegalArgumentException mistake) {
      throw new CommandFailedException(
          "The seed lexicon has a mistake: %s.".formatted(mistake.getMessage()));
    }
  }

  private static String summary(Seed seed) {
    return "The starter set: %s of the CMU Pronouncing Dictionary.".formatted(seed.count());
  }
}
