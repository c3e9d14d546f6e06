package org.hedgerow.faults;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The memory of a Java process after a collection of garbage, in megabytes.
 *
 * @param heap in use
 * @param resident of the whole process (RSS)
 */
record Memory(long heap, long resident) {
  private static final Pattern USED = Pattern.compile("used ([0-9]+)K");
  private static final Pattern RESIDENT = Pattern.compile("VmRSS:\\s+([0-9]+) kB");

  static Memory of(long process) throws IOException, InterruptedException {
    jcmd(process, "GC.run");
    String heap = jcmd(process, "GC.heap_info");
    String status = Files.readString(Path.of("/proc/" + process + "/status"));
    return new Memory(sum(USED, heap.split("Metaspace", 2)[0]), sum(RESIDENT, status));
  }

  private static long sum(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    long kilobytes = 0;
    while (matcher.find()) {
      kilobytes += Long.parseLong(matcher.group(1));
    }
    return kilobytes / 1024;
  }

  private static String jcmd(long process, String command)
      throws IOException, InterruptedException {
    Path program = Path.of(System.getProperty("java.home"), "bin", "jcmd");
    Process run =
        new ProcessBuilder(program.toString(), String.valueOf(process), command)
            .redirectErrorStream(true)
            .start();
    String output = new String(run.getInputStream().readAllBytes(), UTF_8);
    run.waitFor();
    return output;
  }
}
