package org.hedgerow.web.page;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.Header;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.problems.ProblemWriter;
import org.hedgerow.web.security.LocalPath;

/** Problems as pages, for those who look at pages. */
public final class PageProblems implements ProblemWriter {

  private static final String INTERFACE = "/api/";

  /** Statuses of problems that pass by themselves. */
  private static final Set<Integer> PASSING = Set.of(429, 503);

  private final PageWriter writer;
  private final ProblemWriter programs;

  public PageProblems(PageWriter writer, ProblemWriter programs) {
    this.writer = writer;
    this.programs = programs;
  }

  @Override
  public void write(Context context, Problem problem) {
    if (isForPeople(context)) {
      ProblemPage page =
          new ProblemPage(title(problem.type()), List.of(problem.detail()), ways(context, problem));
      context.status(problem.status());
      writer.write(context, "page/problem.jte", Map.of("page", page));
    } else {
      programs.write(context, problem);
    }
  }

  private static List<FittingList> ways(Context context, Problem problem) {
    FittingList first = new FittingList("All phonograms", "/");
    return PASSING.contains(problem.status()) && context.method().equals(HandlerType.GET)
        ? List.of(new FittingList("Try again", address(context)), first)
        : List.of(first);
  }

  private static String address(Context context) {
    String query = context.queryString();
    return LocalPath.of(query == null ? context.path() : context.path() + "?" + query);
  }

  /** People who have mistyped an address know nothing of parameters. */
  private static String title(ProblemType type) {
    return switch (type) {
      case INVALID_PARAMETER, UNKNOWN_PARAMETER, REPEATED_PARAMETER ->
          "Something in this address is wrong";
      default -> type.title();
    };
  }

  private static boolean isForPeople(Context context) {
    String accept = context.header(Header.ACCEPT);
    return !context.path().startsWith(INTERFACE) && accept != null && accept.contains("text/html");
  }
}
