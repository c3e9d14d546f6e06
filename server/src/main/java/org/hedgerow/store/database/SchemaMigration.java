package org.hedgerow.store.database;

import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationState;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.flywaydb.core.api.output.MigrateResult;

/**
 * What bringing the schema up to date came to.
 *
 * @param applied how many migrations were needed
 * @param version the schema's version now
 */
public record SchemaMigration(int applied, String version) {

  /** The version that this program goes by. */
  public static final String NEWEST = "latest";

  /**
   * Several servers may do this at once: Flyway lets one after the other through. It never repairs
   * anything by itself.
   */
  public static SchemaMigration run(DataSource dataSource) {
    return run(configuration(dataSource).load());
  }

  /**
   * Makes a schema in the database, or brings it further.
   *
   * @param schema its name in the database
   * @param version where to stop
   */
  public static SchemaMigration run(DataSource dataSource, String schema, String version) {
    return run(
        configuration(dataSource).schemas(schema).createSchemas(true).target(version).load());
  }

  private static FluentConfiguration configuration(DataSource dataSource) {
    return Flyway.configure()
        .dataSource(dataSource)
        .locations("classpath:db/migration")
        .failOnMissingLocations(true)
        .validateMigrationNaming(true);
  }

  private static SchemaMigration run(Flyway flyway) {
    try {
      refuseNewer(flyway);
      MigrateResult result = flyway.migrate();
      return new SchemaMigration(result.migrationsExecuted, version(flyway));
    } catch (FlywayException problem) {
      throw new DatabaseUnavailableException(
          "The database's schema doesn't fit this version of Hedgerow: %s"
              .formatted(words(problem)),
          problem);
    }
  }

  /** A newer program may have changed what this one relies on. */
  private static void refuseNewer(Flyway flyway) {
    MigrationInfoService migrations = flyway.info();
    Stream.of(migrations.applied())
        .filter(migration -> migration.getState() == MigrationState.FUTURE_SUCCESS)
        .findAny()
        .ifPresent(
            future -> {
              throw new DatabaseUnavailableException(
                  "The database's schema is version %s, newer than this program knows. Start the Hedgerow that was used last, or a newer one."
                      .formatted(version(flyway)));
            });
  }

  private static String version(Flyway flyway) {
    var current = flyway.info().current();
    return current == null ? "none" : String.valueOf(current.getVersion());
  }

  private static String words(FlywayException problem) {
    return String.join(
        " ", String.valueOf(problem.getMessage()).lines().map(String::strip).toList());
  }
}
