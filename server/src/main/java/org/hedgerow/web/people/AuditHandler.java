package org.hedgerow.web.people;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.accounts.AuditReader;
import org.hedgerow.accounts.AuditRecord;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.Formats;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.QueryString;
import org.hedgerow.web.security.Identity;

/** {@code GET /audit}: what was done, by whom and when, the newest first. */
final class AuditHandler implements Handler {
  static final String PATH = "/api/v1/audit";

  private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV, Format.NDJSON);

  private final AuditReader audit;
  private final Json json;

  AuditHandler(AuditReader audit, Json json) {
    this.audit = audit;
    this.json = json;
  }

  @Override
  public void handle(Context context) {
    ApiRequest request = ApiRequest.list(context, AuditQueryReader.PARAMETERS, FORMATS);
    var query = new AuditQueryReader(request.parameters()).read();
    request.parameters().errors().throwIfAny();
    KeysetPage<AuditRecord> found = audit.find(Identity.of(context).actor(), query);
    found
        .next()
        .ifPresent(
            next ->
                context.header(
                    "Link", "<%s>; rel=\"next\"".formatted(next(request.parameters(), next))));
    context
        .header(Header.CACHE_CONTROL, "no-store")
        .contentType(request.format().contentType())
        .result(bytes(AuditView.of(found), request.format()));
  }

  private byte[] bytes(AuditView view, Format format) {
    return switch (format) {
      case JSON -> json.bytes(view);
      case NDJSON -> json.lines(view.records());
      case CSV -> new AuditTable(json).of(view.records()).getBytes(UTF_8);
      default -> throw format.notOffered();
    };
  }

  private static String next(Parameters parameters, String next) {
    Map<String, String> query = new LinkedHashMap<>();
    for (String name : AuditQueryReader.PARAMETERS) {
      parameters.text(name).ifPresent(text -> query.put(name, text));
    }
    parameters.text(Formats.PARAMETER).ifPresent(text -> query.put(Formats.PARAMETER, text));
    query.put(KeysetParameters.AFTER, next);
    return PATH + "?" + new QueryString(query);
  }
}
