package org.hedgerow.store;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import org.hedgerow.store.database.DatabaseAddress;
import org.hedgerow.store.embedded.EmbeddedServer;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/**
 * The PostgreSQL server that all tests of a run share.
 *
 * @param address of a database in which others can be created
 */
public record TestServer(DatabaseAddress address) {
  private static final String URL = "HEDGEROW_TEST_DATABASE_URL";
  private static final String USER = "HEDGEROW_TEST_DATABASE_USER";
  private static final String PASSWORD = "HEDGEROW_TEST_DATABASE_PASSWORD";
  private static final String IMAGE = "postgres:18-alpine";

  private static final class Holder {
    static final TestServer SHARED = new TestServer(choose());
  }

  static TestServer shared() {
    return Holder.SHARED;
  }

  /** The same server's database of another name. */
  DatabaseAddress database(String name) {
    URI uri = URI.create(address.url().substring("jdbc:".length()));
    String query = uri.getRawQuery() == null ? "" : "?" + uri.getRawQuery();
    return new DatabaseAddress(
        "jdbc:postgresql://" + uri.getRawAuthority() + "/" + name + query,
        address.user(),
        address.password());
  }

  private static DatabaseAddress choose() {
    String url = System.getenv(URL);
    if (url != null) {
      return new DatabaseAddress(url, environment(USER), environment(PASSWORD));
    }
    return DockerClientFactory.instance().isDockerAvailable() ? container() : embedded();
  }

  private static Optional<String> environment(String name) {
    return Optional.ofNullable(System.getenv(name));
  }

  // The library removes the container when this process ends.
  @SuppressWarnings("resource")
  private static DatabaseAddress container() {
    PostgreSQLContainer container = new PostgreSQLContainer(DockerImageName.parse(IMAGE));
    container.start();
    return new DatabaseAddress(
        container.getJdbcUrl(),
        Optional.of(container.getUsername()),
        Optional.of(container.getPassword()));
  }

  private static DatabaseAddress embedded() {
    EmbeddedServer server =
        EmbeddedServer.start(inFork("target/test-database"), Optional.of(engine()));
    Runtime.getRuntime().addShutdownHook(new Thread(server::close));
    return server.address();
  }

  /** A folder that programs of tests which run side by side don't share. */
  public static Path inFork(String folder) {
    return Path.of(folder + "-" + ProcessHandle.current().pid());
  }

  /** Where all embedded servers of the tests have their programs, which take a second to unpack. */
  public static Path engine() {
    return inFork("target/test-engine").toAbsolutePath();
  }
}
