package org.hedgerow.web.site;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.chart.Chart;
import org.hedgerow.web.chart.ChartMaker;
import org.hedgerow.web.page.AccentQuestion;
import org.hedgerow.web.page.Canonical;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.OldEdition;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.page.ProblemPage;
import org.hedgerow.web.phonograms.ChartPage;
import org.hedgerow.web.query.InvalidQueryException;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.words.ListPage;
import org.hedgerow.web.words.ListPageMaker;
import org.hedgerow.web.words.PageQuestion;
import org.hedgerow.web.words.QueryProblem;
import org.hedgerow.web.words.WordParameters;

/** The chart of all phonograms, and the list for one of them, at {@code /}. */
final class FirstPage {

  private final Editions editions;
  private final ChartMaker charts;
  private final PageWriter writer;

  public FirstPage(Editions editions, ChartMaker charts, PageWriter writer) {
    this.editions = editions;
    this.charts = charts;
    this.writer = writer;
  }

  public void show(Context context) {
    PageQuestion question = PageQuestion.of(context.queryParamMap());
    if (!question.isAboutChart()) {
      showList(context, question);
    } else if (question.word().isPresent()) {
      String word = ListAddress.ofWord(question.word().get());
      Canonical.redirect(context, ListAddress.inEdition(word, question.namedEdition()));
    } else {
      showChart(context, question);
    }
  }

  private void showChart(Context context, PageQuestion question) {
    Lexicon lexicon = question.edition(editions);
    String find = question.find().orElse("");
    Parameters parameters = new Parameters(question.list(), PageQuestion.OF_CHART);
    ChosenAccents accents = AccentQuestion.accents(lexicon, parameters, ChosenAccents.PARAMETER);
    Optional<String> named = question.namedEdition();
    String now = ListAddress.ofFind(find, accents.parameter());
    if (Canonical.is(context, ListAddress.inEdition(now, named))) {
      Optional<OldEdition> old = OldEdition.of(lexicon, editions.newest(), now);
      ChartPage page = ChartPage.of(charts.chart(lexicon, accents), lexicon, find, named, old);
      writer.write(context, "phonograms/chart.jte", Map.of("page", page));
    }
  }

  private void showList(Context context, PageQuestion question) {
    try {
      ListPageMaker maker = maker(question);
      if (Canonical.is(context, maker.address())) {
        ListPage page = maker.page();
        context.status(page.look().error().isEmpty() ? 200 : 400);
        writer.write(context, "words/list.jte", Map.of("page", page));
      }
    } catch (InvalidQueryException invalid) {
      context.status(invalid.problem().status());
      if (isAboutTaught(invalid)) {
        showListWithError(context, question, invalid.problem().detail());
      } else {
        ProblemPage page = new QueryProblem(usual(editions.newest()), question).page(invalid);
        writer.write(context, "page/problem.jte", Map.of("page", page));
      }
    }
  }

  /** What people write, unlike what they choose, is told beside the field it stands in. */
  private void showListWithError(Context context, PageQuestion question, String error) {
    PageQuestion rest =
        new PageQuestion(
            question.find(), question.word(), question.listWithout(WordParameters.TAUGHT.name()));
    String typed = question.list().getOrDefault(WordParameters.TAUGHT.name(), List.of("")).get(0);
    ListPageMaker maker = maker(rest);
    writer.write(context, "words/list.jte", Map.of("page", maker.page(typed, error)));
  }

  private ListPageMaker maker(PageQuestion question) {
    return new ListPageMaker(question.edition(editions), editions.newest(), charts, question);
  }

  private Chart usual(Lexicon lexicon) {
    String first = lexicon.accents().get(0).accent().tag();
    return charts.chart(lexicon, ChosenAccents.of(lexicon, List.of(first)));
  }

  private static boolean isAboutTaught(InvalidQueryException invalid) {
    return invalid.errors().stream()
        .allMatch(error -> error.parameter().equals(WordParameters.TAUGHT.name()));
  }
}
