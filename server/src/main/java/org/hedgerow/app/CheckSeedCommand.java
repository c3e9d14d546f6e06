package org.hedgerow.app;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.hedgerow.seed.SeedComparison;
import org.hedgerow.seedlexicon.DamagedSeedException;
import org.hedgerow.seedlexicon.SeedLexicon;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
    name = "check-seed",
    description =
        "Says what an edit of seed files changes, against the seed that the program has, or what is"
            + " wrong with it. No bank is touched.")
final class CheckSeedCommand implements Callable<Integer> {
  private static final String MANIFEST = "manifest.sha256";
  private static final int MAX_LINES = 200;

  @Parameters(
      paramLabel = "FOLDER",
      description = "The folder with the edited files: seed-lexicon/src/main/resources/seed.")
  private Path folder = Path.of("");

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    if (!Files.isRegularFile(folder.resolve(MANIFEST))) {
      throw new CommandFailedException(
          "%s holds no seed, for there is no %s in it. Name the folder seed-lexicon/src/main/resources/seed."
              .formatted(folder, MANIFEST));
    }
    show(compared(), spec.commandLine().getOut());
    return 0;
  }

  private SeedComparison compared() {
    try {
      return SeedComparison.of(SeedLexicon.bundled(), SeedLexicon.edited(folder));
    } catch (DamagedSeedException damage) {
      throw new CommandFailedException(String.valueOf(damage.getMessage()));
    } catch (IllegalArgumentException mistake) {
      throw new CommandFailedException(
          "The seed has a mistake: %s.".formatted(mistake.getMessage()));
    }
  }

  private static void show(SeedComparison changes, PrintWriter out) {
    if (changes.files().isEmpty()) {
      out.println("Nothing is edited: every file says what the program's own seed says.");
      return;
    }
    out.println("Edited:");
    changes.files().forEach(file -> out.println("  " + file));
    if (changes.words().isEmpty()) {
      out.println(
          "No word changes by it. If the file is one that others are derived from, derive them first:"
              + " README.md in the folder says how.");
    } else {
      out.println("What becomes of words:");
      changes.words().stream().limit(MAX_LINES).forEach(word -> out.println("  " + word));
      if (changes.words().size() > MAX_LINES) {
        out.printf("  and %,d more%n", changes.words().size() - MAX_LINES);
      }
    }
    out.println("Accept it with seed-lexicon/derive/derive.sh --manifest, then run mvn verify.");
  }
}
