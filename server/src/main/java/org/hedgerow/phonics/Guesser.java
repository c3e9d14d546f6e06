package org.hedgerow.phonics;

import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Guesses how a word is said from its letters, by what the same letters say in words that are
 * known: the likeliest sequence of spans by a {@link SpanModel}, found by a beam search. A guess is
 * only a guess; whoever shows one must say so.
 *
 * <p>Thread-safe once made.
 */
public final class Guesser {

  private static final int BEAM = 40;

  /** Rarer spellings than this (by their cost in the catalogue) are left to known words. */
  private static final double RAREST = 10.5;

  /** What it costs to say separately two letters that a reader takes for one grapheme. */
  private static final double SEPARATED = 3;

  private final CompiledCatalogue catalogue;
  private final Set<String> readAsOne;
  private final SpanModel model;

  /**
   * @param known alignments to learn from, with the realisations of the catalogue
   */
  public Guesser(AccentCatalogue catalogue, Iterable<Alignment> known) {
    this.catalogue = new CompiledCatalogue(catalogue);
    this.readAsOne =
        catalogue.catalogue().correspondences().stream()
            .filter(Correspondence::readsAsOne)
            .map(each -> each.grapheme().text())
            .collect(toUnmodifiableSet());
    this.model = new SpanModel(catalogue.realisations().size());
    known.forEach(alignment -> model.add(alignment.spans()));
  }

  /**
   * The likeliest pronunciation; empty if no sequence of graphemes makes the spelling.
   *
   * @param spelling letters a to z
   */
  public Optional<List<Sound>> guess(String spelling) {
    List<List<Path>> paths = new ArrayList<>();
    for (int letter = 0; letter <= spelling.length(); letter++) {
      paths.add(new ArrayList<>());
    }
    paths.get(0).add(new Path(null, model.start(), LeftContext.PLAIN, 0, 0, 0));
    for (int letter = 0; letter < spelling.length(); letter++) {
      for (Path path : best(paths.get(letter))) {
        expand(path, spelling, letter, paths);
      }
    }
    return paths.get(spelling.length()).stream()
        .filter(path -> !path.context.isOpen() && path.last != model.start())
        .filter(path -> holds(path, spelling, null))
        .min(Comparator.comparingDouble(this::ended))
        .map(this::sounds)
        .filter(sounds -> sounds.stream().anyMatch(Sound::vowel));
  }

  /**
   * A sequence of spans, last first.
   *
   * @param from where the letters of the last span begin
   * @param to where they end
   */
  private record Path(
      @Nullable Path before, int last, LeftContext context, int from, int to, double cost) {}

  private static List<Path> best(List<Path> paths) {
    paths.sort(Comparator.comparingDouble(Path::cost));
    return List.copyOf(paths.subList(0, Math.min(BEAM, paths.size())));
  }

  private void expand(Path path, String spelling, int letter, List<List<Path>> paths) {
    if (path.context.canClose()
        && spelling.charAt(letter) == 'e'
        && !SilentE.isNeedlessBefore(SilentE.letterAt(spelling, letter + 1))) {
      paths.get(letter + 1).add(closed(path));
    }
    int node = catalogue.root();
    for (int end = letter + 1; end <= spelling.length(); end++) {
      node = catalogue.child(node, spelling.charAt(end - 1));
      if (node == 0) {
        return;
      }
      for (int candidate : catalogue.endingAt(node)) {
        extend(path, candidate, spelling, letter, end, paths);
      }
    }
  }

  private static Path closed(Path path) {
    return new Path(path.before, path.last, LeftContext.CLOSED, path.from, path.to, path.cost);
  }

  private void extend(
      Path path, int candidate, String spelling, int start, int end, List<List<Path>> paths) {
    SpanPart part = catalogue.part(candidate);
    Realisation realisation = realisation(candidate);
    Sound first = realisation.isSilent() ? null : realisation.sounds().get(0);
    if (realisation.cost() < RAREST
        && !doubles(path, realisation)
        && path.context.allows(part, SilentE.letterAt(spelling, end), true)
        && (path.last == model.start() || realisation.isSilent() || holds(path, spelling, first))) {
      int before = path.before == null ? model.start() : path.before.last;
      double separated = separates(path, realisation) ? SEPARATED : 0;
      double cost = path.cost + model.cost(before, path.last, candidate) + separated;
      LeftContext context = path.context.after(part);
      paths.get(end).add(new Path(path, candidate, context, start, end, cost));
    }
  }

  /** Whether a letter comes twice with the same sound, where the doubled letter is one grapheme. */
  private boolean doubles(Path path, Realisation realisation) {
    return path.last != model.start()
        && realisation.grapheme().letterCount() == 1
        && realisation.equals(realisation(path.last));
  }

  private boolean separates(Path path, Realisation realisation) {
    return path.last != model.start()
        && readAsOne.contains(
            realisation(path.last).grapheme().text() + realisation.grapheme().text());
  }

  /** Whether the last span may stand where it does, now that the sound after it is known. */
  private boolean holds(Path path, String spelling, @Nullable Sound after) {
    return catalogue.place(path.last).holds(spelling, path.from, path.to, soundBefore(path), after);
  }

  private @Nullable Sound soundBefore(Path path) {
    for (Path each = path.before; each != null && each.last != model.start(); each = each.before) {
      List<Sound> sounds = realisation(each.last).sounds();
      if (!sounds.isEmpty()) {
        return sounds.get(sounds.size() - 1);
      }
    }
    return null;
  }

  private double ended(Path path) {
    int before = path.before == null ? model.start() : path.before.last;
    return path.cost + model.cost(before, path.last, model.end());
  }

  private List<Sound> sounds(Path path) {
    List<Sound> sounds = new ArrayList<>();
    for (Path each = path; each != null && each.last != model.start(); each = each.before) {
      sounds.addAll(0, realisation(each.last).sounds());
    }
    return sounds;
  }

  private Realisation realisation(int id) {
    return catalogue.source().realisations().get(id);
  }
}
