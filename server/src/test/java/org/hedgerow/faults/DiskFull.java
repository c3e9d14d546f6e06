package org.hedgerow.faults;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

/**
 * The disk under the data folder is full, also through a restart, and has room again. Needs root,
 * for a small file system in memory.
 */
final class DiskFull implements Scenario {
  private static final long ROOM = 150_000_000;
  private static final Duration RECOVERY = Duration.ofSeconds(60);

  @Override
  public String name() {
    return "disk-full";
  }

  @Override
  public Result run(Ground ground) throws Exception {
    Path folder = ground.empty(name());
    Path bank = ground.withBank("measured");
    long size = size(bank) + ROOM;
    Ground.delete(bank);
    Path disk = Files.createDirectory(folder.resolve("disk"));
    execute("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", disk.toString());
    try {
      ground.copyBank(disk.resolve("data"));
      return run(ground, folder, disk);
    } finally {
      execute("umount", "--lazy", disk.toString());
    }
  }

  private Result run(Ground ground, Path folder, Path disk) throws Exception {
    Path data = disk.resolve("data");
    try (ServerProcess server = ServerProcess.startWithData(folder, data).awaitReady();
        Load load = new Load(() -> List.of(server.address()), ground.crew())) {
      load.write();
      Writing.pause(5000);
      fill(disk);
      readsGoOn(server, load.tally());
      awaitRefusal(load.tally());
      server.stop();
      server.startAgain();
      server.awaitReady();
      readsGoOn(server, load.tally());
      Files.delete(disk.resolve("fill"));
      if (!new Recovery(server.address()).await(RECOVERY)) {
        load.tally().trouble("there is room again, and the server doesn't recover");
      }
      long before = load.ledger().size();
      Writing.pause(10_000);
      if (load.ledger().size() == before) {
        load.tally().trouble("there is room again, and nothing is written");
      }
      load.stop();
      Reckoning reckoning = new Auditor(server.address(), ground.crew(), load.ledger()).reckon();
      AmCheck.damage(data).forEach(load.tally()::trouble);
      server.stop();
      return Result.of(
          name(),
          "disk filled under writes, restart while it is full, room again",
          load.tally(),
          reckoning,
          load.tally().toString());
    }
  }

  private static void awaitRefusal(Tally tally) {
    for (int i = 0; i < 60 && tally.count(507) + tally.count(503) == 0; i++) {
      Writing.pause(500);
    }
    if (tally.count(507) + tally.count(503) == 0) {
      tally.trouble("no write was answered 507 or 503 while the disk was full");
    }
  }

  private static void readsGoOn(ServerProcess server, Tally tally) {
    FaultClient client = new FaultClient(tally);
    for (String path : Reader.PATHS) {
      int status =
          client
              .ask(server.address(), FaultClient.Call.get(path, ""))
              .map(answer -> answer.statusCode())
              .orElse(0);
      if (status != 200) {
        tally.trouble("the disk is full, and a read answered %d".formatted(status));
      }
    }
  }

  private static void fill(Path disk) {
    byte[] block = new byte[8192];
    try (OutputStream out = Files.newOutputStream(disk.resolve("fill"))) {
      while (true) {
        out.write(block);
      }
    } catch (IOException full) {
      return;
    }
  }

  private static long size(Path tree) throws IOException {
    try (Stream<Path> files = Files.walk(tree)) {
      return files
          .filter(Files::isRegularFile)
          .mapToLong(file -> (file.toFile().length() / 4096 + 1) * 4096)
          .sum();
    }
  }

  private static void execute(String... command) throws IOException, InterruptedException {
    if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
      throw new IOException("This takes root: " + String.join(" ", command));
    }
  }
}
