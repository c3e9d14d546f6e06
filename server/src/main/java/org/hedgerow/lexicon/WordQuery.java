package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.hedgerow.reading.Standard;

/**
 * What a list is asked for.
 *
 * @param accents tags of the accents in which every word must pass; at least one
 * @param standard what every word must meet
 * @param shape the shape that a word must have in each pronunciation
 * @param letterCount how many letters a word may have
 * @param onlyLetters the only letters a word may be made of
 * @param syllables how many syllables a word may have
 * @param position where the target must be heard
 * @param rimes in which each pronunciation must end; none for any
 * @param commonness the least commonness, 1 to 5
 * @param status the status a word must have
 * @param tags what the tags of a word must say
 * @param differsIn tag of an accent in which a word must <em>not</em> pass, though it is said in it
 * @param include kinds of {@link Tag} that the default list leaves out and this one takes in
 */
public record WordQuery(
    List<String> accents,
    Standard standard,
    Optional<String> shape,
    Optional<Range> letterCount,
    Optional<String> onlyLetters,
    Optional<Range> syllables,
    Optional<Position> position,
    Set<Rime> rimes,
    int commonness,
    Optional<Status> status,
    TagFilter tags,
    Optional<String> differsIn,
    Set<String> include,
    Order order) {

  /** The least commonness of words in a list when nothing else is asked for. */
  public static final int DEFAULT_COMMONNESS = 2;

  public WordQuery {
    accents = List.copyOf(accents);
    requireNonNull(standard);
    rimes = Set.copyOf(rimes);
    requireNonNull(tags);
    requireNonNull(differsIn);
    include = Set.copyOf(include);
    requireNonNull(order);
  }

  /** The default list for a standard in one accent. */
  public static WordQuery of(String accent, Standard standard) {
    return new WordQuery(
        List.of(accent),
        standard,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        DEFAULT_COMMONNESS,
        Optional.empty(),
        TagFilter.NONE,
        Optional.empty(),
        Set.of(),
        Order.DEFAULT);
  }

  public WordQuery withShape(String newShape) {
    return changed(copy -> copy.shape = Optional.of(newShape));
  }

  public WordQuery withStatus(Status newStatus) {
    return changed(copy -> copy.status = Optional.of(newStatus));
  }

  public WordQuery withTags(TagFilter newTags) {
    return changed(copy -> copy.tags = newTags);
  }

  public WordQuery withDiffersIn(String accent) {
    return changed(copy -> copy.differsIn = Optional.of(accent));
  }

  public WordQuery withAccents(List<String> newAccents) {
    return changed(copy -> copy.accents = newAccents);
  }

  private WordQuery changed(Consumer<Copy> change) {
    Copy copy = new Copy(this);
    change.accept(copy);
    return copy.query(this);
  }

  /** What can be changed one by one; everything else stays as in the query it is made from. */
  private static final class Copy {
    private List<String> accents;
    private Optional<String> shape;
    private Optional<Status> status;
    private TagFilter tags;
    private Optional<String> differsIn;

    Copy(WordQuery query) {
      this.accents = query.accents;
      this.shape = query.shape;
      this.status = query.status;
      this.tags = query.tags;
      this.differsIn = query.differsIn;
    }

    WordQuery query(WordQuery rest) {
      return new WordQuery(
          accents,
          rest.standard,
          shape,
          rest.letterCount,
          rest.onlyLetters,
          rest.syllables,
          rest.position,
          rest.rimes,
          rest.commonness,
          status,
          tags,
          differsIn,
          rest.include,
          rest.order);
    }
  }
}
