package org.hedgerow.app;

import java.io.PrintWriter;
import java.lang.Thread.UncaughtExceptionHandler;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.accounts.Secret;
import org.hedgerow.language.BackgroundModel;
import org.hedgerow.language.TrigramModel;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.editions.EditionReader;
import org.hedgerow.store.editions.LiveEditions;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.security.Clients;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(name = "serve", description = "Runs the server until it is told to stop.")
final class ServeCommand implements Callable<Integer> {
  private static final Logger LOG = LoggerFactory.getLogger(ServeCommand.class);

  @Mixin private DatabaseOptions database = new DatabaseOptions();

  @Option(
      names = "--host",
      paramLabel = "ADDRESS",
      description =
          "The address to listen on (default: ${DEFAULT-VALUE}, this machine only; 0.0.0.0 for all).")
  private String host = "127.0.0.1";

  @Option(
      names = "--port",
      paramLabel = "NUMBER",
      description = "The port to listen on (default: ${DEFAULT-VALUE}; 0 for any that is free).")
  private int port = 8080;

  @Option(names = "--demo", description = "Adds an invented training centre to look around in.")
  private boolean demo;

  @Mixin private WebOptions web = new WebOptions();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    MemoryCheck.requireToServe();
    ListeningAddress address = address();
    Clients clients = web.clients(host);
    address.requireFree();
    try (ShutdownResources resources = ShutdownResources.create()) {
      BackgroundModel english = new BackgroundModel(TrigramModel::bundled);
      CompletableFuture<Void> loaded = CompletableFuture.runAsync(english::load);
      BankDatabase bank = resources.add(database.open());
      new SeedTask().runIfEmpty(bank, spec.commandLine().getOut());
      LiveEditions editions = resources.add(new LiveEditions(bank, first(bank)));
      AccountServices accounts = Wiring.accounts(bank);
      if (demo) {
        new DemoTask(bank, editions).run(spec.commandLine().getOut());
      }
      CachedCentre centre = resources.add(new CachedCentre(accounts.centre()).watch());
      CompletableFuture<Void> indexed =
          CompletableFuture.runAsync(() -> prepareFirst(editions.newest()));
      ReviewServices reviews =
          Wiring.reviews(
              bank,
              editions::newest,
              editions::catchUp,
              () -> centre.get().approvals(),
              InstantSource.system());
      WebServer server =
          resources.add(
              Wiring.webServer(
                  address,
                  bank,
                  editions,
                  accounts,
                  centre,
                  reviews,
                  Wiring.composer(english),
                  clients,
                  web.metrics(accounts.tokens())));
      CompletableFuture.allOf(loaded, indexed).join();
      server.rehearse();
      server.start();
      StopSignal stop = StopSignal.listen();
      bank.keepRunning(stop::fail);
      endWithoutMemory(stop);
      announce(server);
      firstLink(accounts).ifPresent(link -> announce(server, link));
      prepareOthers(editions.newest());
      stop.await();
    }
    return 0;
  }

  /** A server whose disk is full can't make a link, and goes on reading. */
  private static Optional<Secret> firstLink(AccountServices accounts) {
    try {
      return accounts.firstAdministrator().link();
    } catch (UnavailableException later) {
      return Optional.empty();
    }
  }

  /** Whatever thread runs out of memory, nothing can be relied on any more. */
  private static void endWithoutMemory(StopSignal stop) {
    UncaughtExceptionHandler others = Thread.getDefaultUncaughtExceptionHandler();
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, failure) -> {
          if (MemoryCheck.isExhaustedIn(failure)) {
            stop.fail(MemoryCheck.exhausted());
          } else if (others != null) {
            others.uncaughtException(thread, failure);
          } else {
            LOG.error("A fault in the program", failure);
          }
        });
  }

  private static Lexicon first(BankDatabase bank) {
    return new EditionReader(bank).first().lexicon(BundledPictures.read());
  }

  private static void prepareFirst(Lexicon lexicon) {
    lexicon.prepare(lexicon.accents().get(0).accent().tag());
  }

  /** Starting needn't wait for the accents that are asked for less. */
  private static void prepareOthers(Lexicon lexicon) {
    Thread others =
        new Thread(
            () -> lexicon.accents().forEach(each -> lexicon.prepare(each.accent().tag())),
            "prepare-others");
    others.setDaemon(true);
    others.start();
  }

  private ListeningAddress address() {
    if (port < 0 || port > 65_535) {
      throw new ParameterException(
          spec.commandLine(), "--port must be between 0 and 65535, not %d".formatted(port));
    }
    return new ListeningAddress(host, port);
  }

  private void announce(WebServer server) {
    PrintWriter out = spec.commandLine().getOut();
    String listening = "http://%s:%d".formatted(host, server.port());
    out.println("Hedgerow is ready at %s/".formatted(listening));
    web.publicOrigin()
        .ifPresent(origin -> out.println("Browsers find it at %s/".formatted(origin)));
    if (web.behindTls() && web.publicOrigin().isEmpty()) {
      out.println(
          "Say where browsers find it with --public-url: until then, links for invitations and"
              + " passwords begin with %s.".formatted(listening));
    }
  }

  private void announce(WebServer server, Secret link) {
    PrintWriter out = spec.commandLine().getOut();
    out.println("Nobody looks after accounts yet. This link makes the first administrator, once:");
    String listening =
        web.behindTls() ? "https://YOUR-ADDRESS" : "http://%s:%d".formatted(host, server.port());
    String origin = web.publicOrigin().orElse(listening);
    out.println("  %s/welcome/%s".formatted(origin, link.text()));
  }
}
