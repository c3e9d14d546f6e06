package org.hedgerow.store.embedded;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hedgerow.store.database.FileTrees;
import org.hedgerow.store.database.PrivateFiles;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The way into an embedded cluster: a password that lies in the data folder, where only its owner
 * can read it. Without it the server lets nobody in, not even from this machine.
 */
final class ClusterAccess {
  private static final Logger LOG = LoggerFactory.getLogger(ClusterAccess.class);
  private static final int PASSWORD_BYTES = 32;

  /** A line of {@code pg_hba.conf} that asks for no password. */
  private static final Pattern TRUST =
      Pattern.compile("(?m)^(\\s*(?:local|host)[^#\\n]*\\s)trust\\b");

  private final DataFolder folder;
  private final Cluster cluster;

  ClusterAccess(DataFolder folder, Cluster cluster) {
    this.folder = folder;
    this.cluster = cluster;
  }

  /** The password of the server that runs on a folder; empty where it was made without one. */
  static Optional<String> password(DataFolder folder) {
    try {
      return Optional.of(Files.readString(folder.password(), UTF_8).strip());
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  /**
   * Makes the cluster if there is none, and closes one that an earlier version left open. The
   * server must not run.
   *
   * @return the password
   */
  String prepare() {
    if (cluster.isNew()) {
      String password = newPassword();
      cluster.initialise(folder.password());
      return password;
    }
    return password(folder).filter(present -> !isOpen()).orElseGet(this::renew);
  }

  /** Gives the cluster a new password. The server must not run. */
  String renew() {
    LOG.info("The embedded database gets a new password, kept in {}.", folder.password());
    String password = newPassword();
    cluster.execute("alter role %s password '%s'".formatted(EmbeddedServer.USER, password));
    close();
    return password;
  }

  private String newPassword() {
    byte[] random = new byte[PASSWORD_BYTES];
    new SecureRandom().nextBytes(random);
    String password = HexFormat.of().formatHex(random);
    try {
      PrivateFiles.write(folder.password(), password + "\n");
      return password;
    } catch (IOException problem) {
      throw DataFolder.unusable(folder.root(), problem);
    }
  }

  private boolean isOpen() {
    return TRUST.matcher(rules()).find();
  }

  private void close() {
    try {
      Path closed = rulesFile().resolveSibling("pg_hba.conf.new");
      PrivateFiles.write(closed, TRUST.matcher(rules()).replaceAll("$1scram-sha-256"));
      FileTrees.replace(closed, rulesFile());
    } catch (IOException problem) {
      throw DataFolder.unusable(folder.root(), problem);
    }
  }

  private String rules() {
    try {
      return Files.readString(rulesFile(), UTF_8);
    } catch (IOException problem) {
      throw DataFolder.unusable(folder.root(), problem);
    }
  }

  private Path rulesFile() {
    return folder.cluster().resolve("pg_hba.conf");
  }
}
