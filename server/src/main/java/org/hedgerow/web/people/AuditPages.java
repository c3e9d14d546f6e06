package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.hedgerow.accounts.AuditQuery;
import org.hedgerow.accounts.AuditRecord;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.QueryString;

/** The record of what was done, for administrators. */
final class AuditPages {
  private final AccountPageSupport desk;

  AuditPages(AccountPageSupport desk) {
    this.desk = desk;
  }

  void show(Context context) {
    Map<String, List<String>> given = Parameters.withoutEmpty(context.queryParamMap());
    Parameters parameters = Parameters.ofPage(given, AuditQueryReader.PARAMETERS);
    AuditQuery query = new AuditQueryReader(parameters).read();
    AuditFilter filter = AuditFilter.of(given, parameters.errors().list());
    if (filter.hasErrors()) {
      context.status(400);
      show(context, filter, KeysetPage.empty());
    } else {
      show(context, filter, desk.accounts().audit().find(desk.actor(context), query));
    }
  }

  private void show(Context context, AuditFilter filter, KeysetPage<AuditRecord> found) {
    Actor actor = desk.actor(context);
    QueryString query = filter.query();
    desk.show(
        context,
        "people/audit.jte",
        new AuditPage(
            filter,
            AuditFilter.options(desk.accounts().audit().actions(actor)),
            ShownRecords.of(found.items()),
            found.next().map(next -> "/audit?" + query.with("after", next)).orElse(""),
            "/api/v1/audit?" + query.with("format", "csv").with("limit", "500")));
  }
}
