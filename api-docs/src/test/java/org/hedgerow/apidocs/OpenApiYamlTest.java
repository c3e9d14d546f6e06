package org.hedgerow.apidocs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;

/** Strict readers of both versions of YAML understand the OpenAPI document, and alike. */
class OpenApiYamlTest {
  private static final String TEXT = new String(ApiDocs.openApi(), UTF_8);

  @Test
  void noKeyIsThereTwice() {
    assertThat(yaml12()).isInstanceOf(Map.class);
    assertThat(yaml11()).isInstanceOf(Map.class);
  }

  /** In YAML 1.1 a bare {@code on}, {@code off}, {@code yes} or {@code no} is a truth value. */
  @Test
  void everyKeyIsTextInYaml11() {
    assertThat(keys(yaml11())).allSatisfy(key -> assertThat(key).isInstanceOf(String.class));
  }

  @Test
  void bothVersionsOfYamlReadTheSame() {
    assertThat(yaml11().toString()).isEqualTo(yaml12().toString());
  }

  private static Object yaml12() {
    return new Load(LoadSettings.builder().setAllowDuplicateKeys(false).build())
        .loadFromString(TEXT);
  }

  private static Object yaml11() {
    LoaderOptions strict = new LoaderOptions();
    strict.setAllowDuplicateKeys(false);
    return new Yaml(strict).load(TEXT);
  }

  private static Stream<Object> keys(Object node) {
    if (node instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .flatMap(entry -> Stream.concat(Stream.of(entry.getKey()), keys(entry.getValue())));
    }
    return node instanceof List<?> list
        ? list.stream().flatMap(OpenApiYamlTest::keys)
        : Stream.empty();
  }
}
