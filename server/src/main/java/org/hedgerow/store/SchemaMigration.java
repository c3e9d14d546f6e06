package org.hedgerow.store;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.output.MigrateResult;

/**
 * What bringing the schema up to date came to.
 *
 * @param applied how many migrations were needed
 * @param version the schema's version now
 */
public record SchemaMigration(int applied, String version) {

  /**
   * Several servers may do this at once: Flyway lets one after the other through. It never repairs
   * anything by itself.
   */
  static SchemaMigration run(DataSource dataSource) {
    try {
      Flyway flyway =
          Flyway.configure()
              .dataSource(dataSource)
              .locations("classpath:db/migration")
              .failOnMissingLocations(true)
              .validateMigrationNaming(true)
              .load();
      MigrateResult result = flyway.migrate();
      return new SchemaMigration(result.migrationsExecuted, version(flyway));
    } catch (FlywayException problem) {
      throw new DatabaseUnavailableException(
          "The database's schema doesn't fit this version of Hedgerow: %s"
              .formatted(words(problem)),
          problem);
    }
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
