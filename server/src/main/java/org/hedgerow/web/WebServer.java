package org.hedgerow.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.json.JavalinJackson;
import io.javalin.util.JavalinException;
import io.micrometer.core.instrument.MeterRegistry;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.eclipse.jetty.server.AbstractConnector;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.component.LifeCycle;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.hedgerow.web.edge.Edge;
import org.hedgerow.web.edge.UnroutedErrors;
import org.hedgerow.web.problems.ErrorMapping;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The HTTP server. Closing it lets the requests in flight finish, for a while. */
public final class WebServer implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);
  private static final Duration STOP_TIME = Duration.ofSeconds(10);

  /** How long connections may be silent when it stops, unless a request is worked on. */
  private static final Duration MAX_SILENCE = Duration.ofMillis(250);

  /**
   * Many more than the database has connections: a request that waits for one shouldn't keep reads
   * from memory waiting.
   */
  private static final int THREADS = 32;

  private static final int IDLE_THREADS = 8;

  /** No form can be larger, so none is written to the disk. */
  private static final int LARGEST_FORM_MEGABYTES = 6;

  /** A connection costs some kilobytes; a browser opens six. */
  private static final int CONNECTIONS = 2000;

  /** How long connections may be silent when there are as many as there may be. */
  private static final Duration IDLE_WHEN_FULL = Duration.ofSeconds(2);

  private final ListeningAddress address;
  private final Javalin javalin;
  private final List<RouteGroup> groups;
  private final List<Route> table = new ArrayList<>();

  /** A server without accounts, which answers visitors only. */
  public WebServer(
      ListeningAddress address,
      ObjectMapper mapper,
      MeterRegistry meters,
      ErrorMapping errors,
      List<RouteGroup> groups) {
    this(address, mapper, meters, errors, Guard.VISITORS_ONLY, groups);
  }

  public WebServer(
      ListeningAddress address,
      ObjectMapper mapper,
      MeterRegistry meters,
      ErrorMapping errors,
      Guard guard,
      List<RouteGroup> groups) {
    this.address = address;
    this.groups = groups;
    this.javalin =
        Javalin.create(
            config -> {
              listen(config, address);
              config.jsonMapper(new JavalinJackson(mapper, false));
              config.requestLogger.http(new RequestTimes(meters));
              errors.addTo(config);
              putEdge(config, new UnroutedErrors(errors.json()));
              Routes routes = new Routes(config.routes, guard);
              groups.forEach(group -> group.addTo(routes));
              routes.before(RequestChecks::run);
              table.addAll(routes.table());
            });
  }

  private static void listen(JavalinConfig config, ListeningAddress address) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.jetty.host = address.host();
    config.jetty.port = address.port();
    config.jetty.multipartConfig.maxInMemoryFileSize(LARGEST_FORM_MEGABYTES, SizeUnit.MB);
    config.jetty.threadPool = new QueuedThreadPool(THREADS, IDLE_THREADS);
    config.jetty.modifyServer(WebServer::stopSoon);
  }

  /** No thread waits for a client; what is compressed and how is said there too. */
  private static void putEdge(JavalinConfig config, UnroutedErrors errors) {
    config.http.compressionStrategy = CompressionStrategy.NONE;
    config.jetty.modifyServer(
        server -> {
          server.insertHandler(new Edge());
          server.setErrorHandler(errors);
          server.addBean(connectionLimit(server));
        });
    config.jetty.modifyServletContextHandler(context -> context.setErrorHandler(errors));
  }

  private static NetworkConnectionLimit connectionLimit(Server server) {
    NetworkConnectionLimit limit = new NetworkConnectionLimit(CONNECTIONS, server);
    limit.setEndPointIdleTimeout(IDLE_WHEN_FULL.toMillis());
    return limit;
  }

  private static void stopSoon(Server server) {
    server.setStopTimeout(STOP_TIME.toMillis());
    server.addEventListener(
        new LifeCycle.Listener() {
          @Override
          public void lifeCycleStarting(LifeCycle starting) {
            for (Connector connector : server.getConnectors()) {
              if (connector instanceof AbstractConnector listening) {
                listening.setShutdownIdleTimeout(MAX_SILENCE.toMillis());
              }
            }
          }
        });
  }

  /**
   * Lets the first who ask be answered as fast as others. Starting does without, and what fails
   * here is left for whoever asks.
   */
  public void rehearse() {
    List<Runnable> rehearsals =
        groups.stream().flatMap(group -> group.rehearsals().stream()).toList();
    ExecutorService threads = Executors.newCachedThreadPool();
    try {
      CompletableFuture.allOf(
              rehearsals.stream()
                  .map(each -> CompletableFuture.runAsync(() -> attempt(each), threads))
                  .toArray(CompletableFuture[]::new))
          .join();
    } finally {
      threads.shutdown();
    }
  }

  private static void attempt(Runnable rehearsal) {
    try {
      rehearsal.run();
    } catch (RuntimeException failure) {
      LOG.warn("Something that the server prepares for couldn't be prepared", failure);
    }
  }

  /**
   * @throws ListeningException if it can't listen on its address
   */
  public void start() {
    try {
      javalin.start();
    } catch (JavalinException problem) {
      throw address.failure(cause(problem));
    }
  }

  private static Throwable cause(Throwable problem) {
    Throwable deepest = problem;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    return deepest;
  }

  /** The table of routes. */
  public List<Route> routes() {
    return List.copyOf(table);
  }

  /** The port it listens on. */
  public int port() {
    return javalin.port();
  }

  @Override
  public void close() {
    javalin.stop();
  }
}
