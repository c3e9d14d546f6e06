package org.hedgerow.web.testing;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.ByteArrayOutputStream;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.accounts.MemoryAccountRepository;
import org.hedgerow.accounts.MemoryAnswers;
import org.hedgerow.accounts.NewAccount;
import org.hedgerow.accounts.PlainHash;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.SettableClock;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.pictures.PictureIntake;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.HealthRoutes;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.MetricsRoutes;
import org.hedgerow.web.Route;
import org.hedgerow.web.SettableHealth;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.contract.Exchange;
import org.hedgerow.web.contract.OpenApiContract;
import org.hedgerow.web.curriculum.CurriculumRoutes;
import org.hedgerow.web.curriculum.SavingRoutes;
import org.hedgerow.web.docs.DocsRoutes;
import org.hedgerow.web.page.PageLayout;
import org.hedgerow.web.people.AccountRoutes;
import org.hedgerow.web.people.AdministrationRoutes;
import org.hedgerow.web.people.PeopleRoutes;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.review.ContributionRoutes;
import org.hedgerow.web.review.ReviewRoutes;
import org.hedgerow.web.review.WaitingCount;
import org.hedgerow.web.security.AccessGuard;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.IdempotentRequests;
import org.hedgerow.web.security.MetricsAccess;
import org.hedgerow.web.security.RateLimits;
import org.hedgerow.web.security.SessionCookie;
import org.hedgerow.web.sentences.SentenceOrders;
import org.hedgerow.web.site.ApiRoutes;
import org.hedgerow.web.site.Pages;

/** A server with all routes, whose accounts are kept in memory. */
public final class PeopleServer implements AutoCloseable {
  public static final String METRICS_TOKEN = "the token of the metrics";

  public static final String PASSWORD = "wild cherry and hazel";

  private static final Pattern TOKEN = Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");

  private final SettableClock clock = new SettableClock();
  private final AccountServices accounts =
      AccountServices.of(new MemoryAccountRepository(), new PlainHash(), clock);
  private final CachedCentre centre = new CachedCentre(accounts.centre());
  private final ReviewMemory memory = new ReviewMemory(SeededLexicon::get);
  private final ReviewServices reviews =
      ReviewServices.of(
          memory, memory::newest, () -> centre.get().approvals(), edition -> {}, clock);
  private final PictureIntake pictures = new PictureIntake();
  private final WebServer server;

  private PeopleServer(boolean behindTls) {
    var mapper = JsonMapping.mapper();
    JsonProblems problems = new JsonProblems(mapper);
    Clients clients = new Clients(behindTls);
    SessionCookie cookies = new SessionCookie(clients);
    FormTokens forms = new FormTokens(cookies);
    AccessGuard guard = new AccessGuard(accounts, forms, clients);
    ValueCounts counts = new ValueCounts();
    PageLayout frame =
        new PageLayout(
            Optional.of(forms), centre::name, Optional.of(new WaitingCount(reviews.queue())));
    IdempotentRequests once = new IdempotentRequests(new MemoryAnswers());
    RateLimits paces = RateLimits.by(clients, clock);
    SentenceOrders orders = new SentenceOrders(SeededComposer.get(), paces.orders());
    Pages pages = new Pages(memory, counts, orders, frame);
    this.server =
        new WebServer(
            new ListeningAddress("127.0.0.1", 0),
            mapper,
            new SimpleMeterRegistry(),
            new ErrorMapping(problems, pages.problems(problems)),
            guard,
            List.of(
                guard,
                new HealthRoutes(new SettableHealth()),
                new MetricsRoutes(
                    new PrometheusMeterRegistry(PrometheusConfig.DEFAULT),
                    new MetricsAccess(
                        false, Optional.of(new Secret(METRICS_TOKEN)), accounts.tokens())),
                new ApiRoutes(memory, counts, orders, mapper),
                new AccountRoutes(accounts, once, mapper),
                new AdministrationRoutes(accounts, centre, clients, once, mapper),
                new SavingRoutes(new ChangeCurriculum(reviews.context()), memory, mapper),
                new ContributionRoutes(
                    reviews, memory::newest, pictures::take, paces, once, mapper),
                new DocsRoutes(),
                pages,
                new PeopleRoutes(accounts, centre, pages.writer(), forms, cookies, clients),
                new CurriculumRoutes(
                    new ChangeCurriculum(reviews.context()), memory, pages.writer(), forms),
                new ReviewRoutes(reviews, memory::newest, pages.writer(), forms, paces)));
  }

  public static PeopleServer start() {
    return start(false);
  }

  public static PeopleServer start(boolean behindTls) {
    PeopleServer people = new PeopleServer(behindTls);
    people.server.start();
    return people;
  }

  public AccountServices accounts() {
    return accounts;
  }

  public SettableClock clock() {
    return clock;
  }

  public List<Route> routes() {
    return server.routes();
  }

  public String origin() {
    return "http://127.0.0.1:" + server.port();
  }

  /** Makes an account. */
  public Actor person(String name, Role role) {
    return person(name, name, role);
  }

  public Actor person(String name, String displayName, Role role) {
    var link = accounts.invitations().make(Actor.OPERATOR, role, 7);
    return Actor.of(
        accounts.invitations().accept(link, new NewAccount(name, displayName, PASSWORD)));
  }

  public ReviewServices reviews() {
    return reviews;
  }

  public Client client() {
    return new Client();
  }

  /** A browser, as far as cookies go. */
  public final class Client {
    private final CookieManager jar = new CookieManager();
    private final HttpClient http = HttpClient.newBuilder().cookieHandler(jar).build();

    public HttpResponse<String> send(String method, String path, String body, String... headers)
        throws Exception {
      HttpRequest.Builder request =
          HttpRequest.newBuilder(URI.create(origin() + path))
              .method(method, BodyPublishers.ofString(body))
              .header("Accept", "text/html,application/json;q=0.9");
      for (int i = 0; i < headers.length; i += 2) {
        request.header(headers[i], headers[i + 1]);
      }
      return http.send(request.build(), BodyHandlers.ofString());
    }

    public HttpResponse<String> get(String path, String... headers) throws Exception {
      return send("GET", path, "", headers);
    }

    /** With the token of a form on a page. */
    public HttpResponse<String> form(String page, String path, String... fields) throws Exception {
      return post(path, token(page), fields);
    }

    public HttpResponse<String> post(String path, String token, String... fields) throws Exception {
      StringBuilder body = new StringBuilder("form-token=" + encoded(token));
      for (int i = 0; i < fields.length; i += 2) {
        body.append('&').append(fields[i]).append('=').append(encoded(fields[i + 1]));
      }
      return send(
          "POST", path, body.toString(), "Content-Type", "application/x-www-form-urlencoded");
    }

    /** Sends a file with the form of a page, and with its other fields. */
    public HttpResponse<String> upload(String page, byte[] file, String... fields)
        throws Exception {
      return upload(page, page, file, fields);
    }

    public HttpResponse<String> upload(String path, String page, byte[] file, String... fields)
        throws Exception {
      ByteArrayOutputStream body = new ByteArrayOutputStream();
      body.writeBytes(part("form-token", "").getBytes(StandardCharsets.UTF_8));
      body.writeBytes(token(page).getBytes(StandardCharsets.UTF_8));
      for (int i = 0; i < fields.length; i += 2) {
        body.writeBytes((part(fields[i], "") + fields[i + 1]).getBytes(StandardCharsets.UTF_8));
      }
      body.writeBytes(part("file", "; filename=\"file\"").getBytes(StandardCharsets.UTF_8));
      body.writeBytes(file);
      body.writeBytes("\r\n--part--\r\n".getBytes(StandardCharsets.UTF_8));
      HttpRequest request =
          HttpRequest.newBuilder(URI.create(origin() + path))
              .header("Accept", "text/html")
              .header("Content-Type", "multipart/form-data; boundary=part")
              .POST(BodyPublishers.ofByteArray(body.toByteArray()))
              .build();
      return http.send(request, BodyHandlers.ofString());
    }

    private static String part(String name, String more) {
      return "\r\n--part\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n\r\n"
          .formatted(name, more);
    }

    public String token(String page) throws Exception {
      Matcher matcher = TOKEN.matcher(get(page).body());
      return matcher.find() ? matcher.group(1) : "";
    }

    public Client signIn(String name) throws Exception {
      form("/sign-in", "/sign-in", "name", name, "password", PASSWORD);
      return this;
    }

    public Optional<HttpCookie> cookie(String name) {
      return jar.getCookieStore().getCookies().stream()
          .filter(cookie -> cookie.getName().equals(name))
          .findFirst();
    }
  }

  /** A program that acts for somebody. */
  public Program program(Actor owner) {
    return program(owner, owner.role());
  }

  /**
   * @param role that its token has at most
   */
  public Program program(Actor owner, Role role) {
    return new Program(accounts.tokens().make(owner, "a program", role, 30).text());
  }

  /** Sends a token with every request; what is answered is held against the document. */
  public final class Program {
    private static final OpenApiContract CONTRACT = OpenApiContract.published();

    private final HttpClient http = HttpClient.newHttpClient();
    private final String token;

    Program(String token) {
      this.token = token;
    }

    public HttpResponse<String> get(String path, String... headers) throws Exception {
      return send("GET", path, "", headers);
    }

    public HttpResponse<String> delete(String path) throws Exception {
      return send("DELETE", path, "");
    }

    /** A body that isn't empty is sent as JSON. */
    public HttpResponse<String> send(String method, String path, String body, String... headers)
        throws Exception {
      HttpRequest.Builder request =
          HttpRequest.newBuilder(URI.create(origin() + path))
              .method(method, BodyPublishers.ofString(body))
              .header("Authorization", "Bearer " + token);
      if (!body.isEmpty()) {
        request.header("Content-Type", "application/json");
      }
      for (int i = 0; i < headers.length; i += 2) {
        request.header(headers[i], headers[i + 1]);
      }
      HttpResponse<String> response = http.send(request.build(), BodyHandlers.ofString());
      CONTRACT.require(Exchange.of(body, response));
      return response;
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    centre.close();
    server.close();
  }
}
