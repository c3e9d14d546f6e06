package org.hedgerow.web.page;

import static java.util.stream.Collectors.joining;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;

/**
 * The accents in which words must be right.
 *
 * @param all those of the bank, the usual one first
 * @param chosen at least one of them
 */
public record ChosenAccents(List<Accent> all, List<Accent> chosen) {

  public static final String PARAMETER = "accent";

  public ChosenAccents {
    all = List.copyOf(all);
    chosen = List.copyOf(chosen);
  }

  public static ChosenAccents of(Lexicon lexicon, List<String> tags) {
    List<Accent> all = lexicon.accents().stream().map(AccentCatalogue::accent).toList();
    return new ChosenAccents(all, all.stream().filter(each -> tags.contains(each.tag())).toList());
  }

  public List<String> tags() {
    return chosen.stream().map(Accent::tag).toList();
  }

  public Accent first() {
    return chosen.get(0);
  }

  /** As it stands in addresses; empty for the usual accent alone. */
  public String parameter() {
    return chosen.equals(all.subList(0, 1)) ? "" : String.join(",", tags());
  }

  /** As in {@code General American and southern British English}. */
  public String names() {
    return chosen.stream().map(Accent::name).collect(joining(" and "));
  }

  public List<Choice> choices() {
    return all.stream()
        .map(each -> new Choice(each.tag(), each.name(), chosen.contains(each)))
        .toList();
  }
}
