package org.hedgerow.web.pages;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.QueryString;

/** Addresses of pages. */
final class ListAddress {

  private ListAddress() {}

  static String of(Correspondence value) {
    return "/?phonogram=%s&value=%d".formatted(value.grapheme(), value.value().orElseThrow());
  }

  static String ofShape(String shape) {
    return "/?shape=" + shape;
  }

  static String ofSound(String ipa) {
    return "/?" + new QueryString(Map.of("sound", ipa));
  }

  static String ofWord(String spelling) {
    return "/words/" + URLEncoder.encode(spelling, StandardCharsets.UTF_8);
  }

  /** A list, or the chart where there are no parameters. */
  static String ofList(QueryString list) {
    return list.parameters().isEmpty() ? "/" : "/?" + list;
  }

  /** The chart, or what is found in it. */
  static String ofFind(String find) {
    return find.isEmpty() ? "/" : "/?" + new QueryString(Map.of(PageQuestion.FIND, find));
  }
}
