package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.web.problems.ProblemType;

/** Reads the tags of accents. */
public final class AccentReader {

  private final List<AccentCatalogue> accents;
  private final ValidationErrors errors;

  public AccentReader(Lexicon lexicon, ValidationErrors errors) {
    this.accents = lexicon.accents();
    this.errors = errors;
  }

  /** The accents in a list with commas; the bank's first where none is named. */
  public List<AccentCatalogue> list(String parameter, Optional<String> tags) {
    return tags.map(text -> all(parameter, Arrays.asList(text.split(",", -1))))
        .orElseGet(this::usual);
  }

  /** The tags of those accents. */
  public List<String> tags(String parameter, Optional<String> tags) {
    return list(parameter, tags).stream().map(AccentReader::tag).toList();
  }

  /** The accents in a list, each error with its place: {@code accents[1]}. */
  public List<AccentCatalogue> each(String parameter, List<String> tags) {
    List<AccentCatalogue> found = new ArrayList<>();
    for (int i = 0; i < tags.size(); i++) {
      find("%s[%d]".formatted(parameter, i), tags.get(i)).ifPresent(found::add);
    }
    return onceOrUsual(found);
  }

  private List<AccentCatalogue> all(String parameter, List<String> tags) {
    List<AccentCatalogue> found = new ArrayList<>();
    tags.forEach(tag -> find(parameter, tag.strip()).ifPresent(found::add));
    return onceOrUsual(found);
  }

  private List<AccentCatalogue> onceOrUsual(List<AccentCatalogue> found) {
    return found.isEmpty() ? usual() : found.stream().distinct().toList();
  }

  /** The accent with a tag; the bank's first where none is named or it isn't known. */
  public AccentCatalogue one(String parameter, Optional<String> tag) {
    if (tag.filter(text -> text.contains(",")).isPresent()) {
      errors.invalid(parameter, "%s takes one accent here, not several.".formatted(parameter));
      return accents.get(0);
    }
    return tag.flatMap(text -> find(parameter, text)).orElse(accents.get(0));
  }

  private List<AccentCatalogue> usual() {
    return List.of(accents.get(0));
  }

  /** Tags are the same in capitals and small letters (BCP 47, section 2.1.1). */
  private Optional<AccentCatalogue> find(String parameter, String tag) {
    Optional<AccentCatalogue> found =
        accents.stream().filter(each -> tag(each).equalsIgnoreCase(tag)).findFirst();
    if (found.isEmpty()) {
      errors.add(unknown(parameter, tag));
    }
    return found;
  }

  private ValidationError unknown(String parameter, String tag) {
    List<String> tags = accents.stream().map(AccentReader::tag).toList();
    String message =
        "The bank has no accent %s. It has %s.".formatted(Quoted.of(tag), String.join(", ", tags));
    return new ValidationError(
        ProblemType.UNKNOWN_ACCENT, parameter, message, ClosestName.closest(tag, tags));
  }

  private static String tag(AccentCatalogue catalogue) {
    return catalogue.accent().tag();
  }
}
