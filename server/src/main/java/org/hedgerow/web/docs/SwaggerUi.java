package org.hedgerow.web.docs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/** Where the files of Swagger UI lie in its jar: in a folder named after its version. */
final class SwaggerUi {

  private static final String PROPERTIES = "/META-INF/maven/org.webjars/swagger-ui/pom.properties";

  private SwaggerUi() {}

  static String resource(String file) {
    return "/META-INF/resources/webjars/swagger-ui/%s/%s".formatted(version(), file);
  }

  private static String version() {
    Properties properties = new Properties();
    try (InputStream stream = SwaggerUi.class.getResourceAsStream(PROPERTIES)) {
      properties.load(Objects.requireNonNull(stream, PROPERTIES));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    return properties.getProperty("version", "");
  }
}
