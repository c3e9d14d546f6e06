package org.hedgerow.web.page;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Pattern;
import org.hedgerow.web.http.Sending;

/**
 * Style, scripts, pictures and typefaces, held in memory. Addresses carry a checksum, so that
 * browsers keep a file for good and still see a new one.
 */
public final class Assets {

  private static final String FOLDER = "/static/";
  private static final String HTMX = "/META-INF/maven/org.webjars.npm/htmx.org/pom.properties";
  private static final String HTMX_SCRIPT =
      "/META-INF/resources/webjars/htmx.org/%s/dist/htmx.min.js";

  private static final int VERSION_BYTES = 6;

  private static final Map<String, String> FILES =
      Map.of(
          "hedgerow.js", "text/javascript; charset=utf-8",
          "review.js", "text/javascript; charset=utf-8",
          "review.css", "text/css; charset=utf-8",
          "hedge.svg", "image/svg+xml",
          "leaf.svg", "image/svg+xml",
          "andika-latin-400-normal.woff2", "font/woff2",
          "andika-latin-700-normal.woff2", "font/woff2",
          "andika-latin-ext-400-normal.woff2", "font/woff2",
          "andika-latin-ext-700-normal.woff2", "font/woff2");

  private static final Pattern FILE_IN_STYLE = Pattern.compile("url\\(([a-z0-9.-]+)\\)");

  private final Map<String, Asset> assets;
  private final PageHeader header;

  private Assets(Map<String, Asset> assets, PageHeader header) {
    this.assets = assets;
    this.header = header;
  }

  public Assets() {
    this(new LinkedHashMap<>(), PageHeader.ofVisitor(""));
    FILES.forEach((name, mediaType) -> add(name, mediaType, read(FOLDER + folder(name) + name)));
    add("hedgerow.css", "text/css; charset=utf-8", style());
    add("htmx.js", "text/javascript; charset=utf-8", read(HTMX_SCRIPT.formatted(htmxVersion())));
  }

  private static String folder(String name) {
    return name.endsWith(".woff2") ? "fonts/" : "";
  }

  /** The style names other files, each to be had by its checksum. */
  private byte[] style() {
    String style = new String(read(FOLDER + "hedgerow.css"), StandardCharsets.UTF_8);
    return FILE_IN_STYLE
        .matcher(style)
        .replaceAll(found -> "url(" + address(found.group(1)) + ")")
        .getBytes(StandardCharsets.UTF_8);
  }

  private void add(String name, String mediaType, byte[] bytes) {
    assets.put(name, new Asset(mediaType, bytes, version(bytes)));
  }

  private static byte[] read(String resource) {
    try (InputStream in = Assets.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("The program lacks its file " + resource);
      }
      return in.readAllBytes();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** The WebJar says it itself, so that a new one needs no change here. */
  private static String htmxVersion() {
    try (InputStream in = Assets.class.getResourceAsStream(HTMX)) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version");
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static String version(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest, 0, VERSION_BYTES);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The same for a page that somebody looks at. */
  Assets seenWith(PageHeader header) {
    return new Assets(assets, header);
  }

  /** What the top of the page says about who looks at it. */
  public PageHeader header() {
    return header;
  }

  /** The address of a file, with its checksum. */
  public String address(String name) {
    return "/assets/%s?v=%s".formatted(name, get(name).version());
  }

  private Asset get(String name) {
    Asset asset = assets.get(name);
    if (asset == null) {
      throw new NotFoundResponse();
    }
    return asset;
  }

  public void serve(Context context) {
    Asset asset = get(context.pathParam("name"));
    String tag = "\"" + asset.version() + "\"";
    boolean forGood = asset.version().equals(context.queryParam("v"));
    Sending.file(
        context,
        asset.bytes(),
        asset.mediaType(),
        tag,
        forGood ? Sending.FOR_GOOD : Sending.FOR_A_DAY);
  }
}
