package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Grapheme;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.LetterGroup;

/**
 * Says of every letter to which of the sounds it belongs: {@code 2}, the third; {@code 2-3}, the
 * third and the fourth; {@code -}, none, it is silent; or an empty text where nobody has said yet.
 * Letters with the same sounds belong together.
 */
record LetterChoices(String spelling, List<Sound> sounds, AccentCatalogue accent) {
  static final String SILENT = "-";

  private static final String RANGE = "\\d{1,2}(-\\d{1,2})?";

  /**
   * @param choices one for each letter, from outside; what makes no sense counts as nothing
   */
  List<LetterGroup> pieces(List<String> choices) {
    Map<String, List<Integer>> together = new LinkedHashMap<>();
    List<LetterGroup> pieces = new ArrayList<>();
    for (int letter = 0; letter < Math.min(spelling.length(), choices.size()); letter++) {
      String choice = choices.get(letter);
      if (choice.equals(SILENT)) {
        addSilent(letter, pieces);
      } else if (isRange(choice)) {
        together.computeIfAbsent(choice, key -> new ArrayList<>()).add(letter);
      }
    }
    together.forEach((range, letters) -> pieces.add(new LetterGroup(letters, spoken(range))));
    pieces.sort(Comparator.comparingInt(piece -> piece.letters().get(0)));
    return List.copyOf(pieces);
  }

  /** Silent letters side by side are one piece where the catalogue knows them as one. */
  private void addSilent(int letter, List<LetterGroup> pieces) {
    LetterGroup last = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
    if (last != null && last.letters().get(last.letters().size() - 1) == letter - 1) {
      List<Integer> longer = new ArrayList<>(last.letters());
      longer.add(letter);
      String run = spelling.substring(longer.get(0), letter + 1);
      if (accent.find(new Grapheme(run), List.of()).isPresent()) {
        pieces.set(pieces.size() - 1, new LetterGroup(longer, ""));
        return;
      }
    }
    pieces.add(new LetterGroup(List.of(letter), ""));
  }

  private boolean isRange(String choice) {
    return choice.matches(RANGE) && first(choice) <= last(choice) && last(choice) < sounds.size();
  }

  private static int first(String range) {
    return Integer.parseInt(range.split("-", 2)[0]);
  }

  private static int last(String range) {
    String[] ends = range.split("-", 2);
    return Integer.parseInt(ends[ends.length - 1]);
  }

  /** The sounds of a choice, with spaces between. */
  String spoken(String range) {
    return Sound.spaced(sounds.subList(first(range), last(range) + 1));
  }

  /** The sounds that a choice stands for; none where it is silent or nothing. */
  List<Sound> soundsOf(String choice) {
    return isRange(choice) ? sounds.subList(first(choice), last(choice) + 1) : List.of();
  }

  /** The choice of every letter, so that these pieces come of them. */
  List<String> choices(List<LetterGroup> pieces) {
    List<String> choices = new ArrayList<>(Collections.nCopies(spelling.length(), ""));
    int next = 0;
    for (LetterGroup piece : pieces) {
      int count = piece.sound().isEmpty() ? 0 : piece.sound().split(" ").length;
      int start = find(piece.sound(), count, next);
      String choice = count == 0 ? SILENT : start < 0 ? "" : range(start, count);
      piece.letters().stream()
          .filter(letter -> letter >= 0 && letter < spelling.length())
          .forEach(letter -> choices.set(letter, choice));
      next = start < 0 ? next : start + count;
    }
    return choices;
  }

  private int find(String spoken, int count, int from) {
    for (int start = from; start + count <= sounds.size(); start++) {
      if (Sound.spaced(sounds.subList(start, start + count)).equals(spoken)) {
        return start;
      }
    }
    return -1;
  }

  private static String range(int start, int count) {
    return count == 1 ? String.valueOf(start) : start + "-" + (start + count - 1);
  }

  /** All that can be chosen for a letter: each sound, two side by side, or none. */
  List<String> offered() {
    List<String> offered = new ArrayList<>();
    for (int start = 0; start < sounds.size(); start++) {
      offered.add(range(start, 1));
    }
    for (int start = 0; start + 1 < sounds.size(); start++) {
      offered.add(range(start, 2));
    }
    offered.add(SILENT);
    return offered;
  }
}
