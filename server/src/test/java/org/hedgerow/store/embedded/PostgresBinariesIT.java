package org.hedgerow.store.embedded;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hedgerow.store.TestServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** PostgreSQL's programs are unpacked, and again where they are damaged. */
class PostgresBinariesIT {
  @TempDir private Path folder;

  @Test
  void unpacksAgainWhatIsDamagedAndDeletesOtherVersions() throws IOException {
    Path old = Files.createDirectories(folder.resolve("PG-0123"));
    Path server = PostgresBinaries.unpackedIn(folder).home().resolve("bin/postgres");
    long size = Files.size(server);
    assertThat(old).doesNotExist();
    Files.write(server, new byte[0]);
    assertThat(PostgresBinaries.unpackedIn(folder).home().resolve("bin/postgres")).hasSize(size);
    assertThat(server).isExecutable();
  }

  @Test
  void leavesWhatIsWhole() throws IOException {
    Path engine = TestServer.engine();
    Path contents = PostgresBinaries.unpackedIn(engine).home().resolve(".contents");
    var unpacked = Files.getLastModifiedTime(contents);
    PostgresBinaries.unpackedIn(engine);
    assertThat(Files.getLastModifiedTime(contents)).isEqualTo(unpacked);
  }
}
