package org.hedgerow.app.demo;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.hedgerow.operations.Role;
import org.hedgerow.review.Proposal;
import org.jspecify.annotations.Nullable;

/** Who belongs to the invented centre, and what they did in a week. */
final class DemoScript {
  private static final ObjectMapper JSON = JsonMapper.builder().addModule(new Jdk8Module()).build();

  private DemoScript() {}

  /**
   * @param name what they sign in with
   */
  record Member(String name, String displayName, String role) {
    Role accountRole() {
      return Role.ofAccount(role).orElseThrow();
    }
  }

  /**
   * Something contributed, and what became of it.
   *
   * @param by the name of its author
   * @param hoursAgo when it was begun
   * @param picture the name of a drawing beside this class that its proposal shows
   */
  record Entry(
      String by,
      int hoursAgo,
      Proposal proposal,
      @Nullable String wantedFor,
      @Nullable String note,
      @Nullable String picture,
      @Nullable List<Step> steps) {
    List<Step> taken() {
      return steps == null ? List.of() : steps;
    }
  }

  /**
   * @param act one of {@code submit}, {@code revise}, {@code approve}, {@code return}, {@code
   *     decline}, {@code overrule}, {@code withdraw}, {@code reopen}
   * @param by whoever does it; the author where it is left out
   * @param proposal of a revision
   * @param finding that is overruled
   */
  record Step(
      String act,
      int hoursAgo,
      @Nullable String by,
      @Nullable String comment,
      @Nullable Proposal proposal,
      @Nullable String finding) {
    String words() {
      return Objects.requireNonNullElse(comment, "");
    }
  }

  static List<Member> members() {
    return read("members.json", new TypeReference<List<Member>>() {});
  }

  static List<Entry> entries() {
    return read("week.json", new TypeReference<List<Entry>>() {});
  }

  static byte[] drawing(String name) {
    try (InputStream in = open(name)) {
      return in.readAllBytes();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static <T> T read(String file, TypeReference<T> type) {
    try (InputStream in = open(file)) {
      return JSON.readValue(in, type);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static InputStream open(String name) {
    return Objects.requireNonNull(DemoScript.class.getResourceAsStream(name), name);
  }
}
