package org.hedgerow.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.http.HttpHeaders;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;

/**
 * A connection to a server of this machine that sends bytes as they are, where usual clients would
 * refuse to. It is kept as long as the server does. Not thread-safe.
 */
final class Wire implements AutoCloseable {
  /** Longer than any answer may take, so that a late one is told from none. */
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private static final int LARGEST_ANSWER = 64_000_000;

  private final int port;
  private final Map<String, String> tokens;
  private @Nullable Socket socket;
  private @Nullable InputStream in;

  /**
   * @param tokens by the names of roles
   */
  Wire(int port, Map<String, String> tokens) {
    this.port = port;
    this.tokens = tokens;
  }

  /** Sends a request and waits for the whole answer, 20 s at most. */
  Answer ask(HostileRequest request) {
    long start = System.nanoTime();
    boolean kept = socket != null && !request.broken();
    Answer answer = tryToAsk(request, start);
    return kept && answer.isMissing() ? tryToAsk(request, System.nanoTime()) : answer;
  }

  private Answer tryToAsk(HostileRequest request, long start) {
    try {
      if (request.broken()) {
        close();
      }
      InputStream from = send(request);
      Answer answer = read(from, request.isHead(), start);
      if (answer.closes() || request.broken()) {
        close();
      }
      return answer;
    } catch (SocketTimeoutException late) {
      close();
      return nothing(start);
    } catch (IOException gone) {
      close();
      return nothing(start);
    }
  }

  private static Answer nothing(long start) {
    return new Answer(0, headers(Map.of()), "", since(start), true);
  }

  private static Duration since(long start) {
    return Duration.ofNanos(System.nanoTime() - start);
  }

  private InputStream send(HostileRequest request) throws IOException {
    Socket to = socket;
    InputStream from = in;
    if (to == null || from == null) {
      to = new Socket(InetAddress.getLoopbackAddress(), port);
      to.setTcpNoDelay(true);
      to.setSoTimeout((int) PATIENCE.toMillis());
      from = new BufferedInputStream(to.getInputStream(), 1 << 14);
      socket = to;
      in = from;
    }
    write(to, request);
    return from;
  }

  /** A server may refuse a request before it has read all of it. */
  private void write(Socket to, HostileRequest request) throws IOException {
    try {
      to.getOutputStream().write(request.bytes(tokens));
      if (request.broken()) {
        to.shutdownOutput();
      }
    } catch (IOException refused) {
      if (request.body().length() < 60_000) {
        throw refused;
      }
    }
  }

  private static Answer read(InputStream in, boolean head, long start) throws IOException {
    String status = line(in);
    Map<String, List<String>> headers = headerLines(in);
    int code = status.matches("HTTP/1\\.[01] [0-9]{3}.*") ? number(status.substring(9, 12)) : 0;
    if (code / 100 == 1) {
      return read(in, head, start);
    }
    HttpHeaders named = headers(headers);
    boolean bare = head || code == 204 || code == 304;
    byte[] body = bare ? new byte[0] : body(in, named);
    return new Answer(
        code, named, new String(unzipped(body, named), UTF_8), since(start), closes(named));
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }

  private static HttpHeaders headers(Map<String, List<String>> headers) {
    return HttpHeaders.of(headers, (name, value) -> true);
  }

  private static boolean closes(HttpHeaders headers) {
    return headers.firstValue("Connection").orElse("").equalsIgnoreCase("close");
  }

  private static Map<String, List<String>> headerLines(InputStream in) throws IOException {
    Map<String, List<String>> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    for (String line = line(in); !line.isEmpty(); line = line(in)) {
      String[] parts = line.split(":", 2);
      headers
          .computeIfAbsent(parts[0].strip(), name -> new ArrayList<>())
          .add(parts.length < 2 ? "" : parts[1].strip());
    }
    return headers;
  }

  private static byte[] body(InputStream in, HttpHeaders headers) throws IOException {
    if (headers.firstValue("Transfer-Encoding").orElse("").equalsIgnoreCase("chunked")) {
      return chunks(in);
    }
    long length = headers.firstValueAsLong("Content-Length").orElse(-1);
    return length < 0 ? in.readNBytes(LARGEST_ANSWER) : exactly(in, (int) length);
  }

  private static byte[] chunks(InputStream in) throws IOException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (int size = chunkSize(in); size > 0; size = chunkSize(in)) {
      body.write(exactly(in, size));
      line(in);
    }
    headerLines(in);
    return body.toByteArray();
  }

  private static int chunkSize(InputStream in) throws IOException {
    return Integer.parseInt(line(in).split(";", 2)[0].strip(), 16);
  }

  private static byte[] exactly(InputStream in, int length) throws IOException {
    byte[] bytes = in.readNBytes(length);
    if (bytes.length < length) {
      throw new EOFException();
    }
    return bytes;
  }

  private static byte[] unzipped(byte[] body, HttpHeaders headers) throws IOException {
    if (body.length == 0 || !headers.firstValue("Content-Encoding").orElse("").equals("gzip")) {
      return body;
    }
    return new GZIPInputStream(new ByteArrayInputStream(body)).readAllBytes();
  }

  private static String line(InputStream in) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int next = in.read(); next != '\n'; next = in.read()) {
      if (next < 0) {
        throw new EOFException();
      }
      line.write(next);
    }
    return line.toString(ISO_8859_1).stripTrailing();
  }

  @Override
  public void close() {
    Socket open = socket;
    socket = null;
    in = null;
    if (open != null) {
      try {
        open.close();
      } catch (IOException gone) {
        return;
      }
    }
  }
}
