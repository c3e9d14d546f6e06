package org.hedgerow.apidocs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/** Gives the documents of the HTTP interface as they are served. Every call reads them anew. */
public final class ApiDocs {
  private ApiDocs() {}

  /** The OpenAPI 3.1 document: YAML in UTF-8. */
  public static byte[] openApi() {
    return bytes("openapi.yaml");
  }

  /** The guide to the first steps: Markdown in UTF-8. */
  public static byte[] guide() {
    return bytes("guide.md");
  }

  /** How a server is protected: Markdown in UTF-8. */
  public static byte[] security() {
    return bytes("security.md");
  }

  /** How the program fares in bad weather: Markdown in UTF-8. */
  public static byte[] faults() {
    return bytes("faults.md");
  }

  /** What has changed for users and programs: Markdown in UTF-8. */
  public static byte[] changelog() {
    return bytes("changelog.md");
  }

  /** How to report a weakness: Markdown in UTF-8. */
  public static byte[] securityPolicy() {
    return bytes("security-policy.md");
  }

  private static byte[] bytes(String name) {
    try (@Nullable InputStream stream = ApiDocs.class.getResourceAsStream("/openapi/" + name)) {
      if (stream == null) {
        throw new IllegalStateException("The program was packed without openapi/" + name);
      }
      return stream.readAllBytes();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
