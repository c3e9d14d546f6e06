package org.hedgerow.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.ParameterNames;
import org.hedgerow.web.query.QueryString;

/** Addresses of pages. */
public final class ListAddress {

  private ListAddress() {}

  /**
   * @param accents as in addresses, or an empty text
   */
  public static String of(Correspondence value, String accents) {
    return "/?phonogram=%s&value=%d".formatted(value.grapheme(), value.value().orElseThrow())
        + (accents.isEmpty() ? "" : "&accent=" + accents);
  }

  public static String ofShape(String shape, String accents) {
    return "/?" + before(accents) + "shape=" + shape;
  }

  public static String ofSound(String ipa, String accents) {
    return "/?" + before(accents) + new QueryString(Map.of("sound", ipa));
  }

  public static String ofWord(String spelling) {
    return ofWord(spelling, "");
  }

  public static String ofWord(String spelling, String accents) {
    return "/words/"
        + URLEncoder.encode(spelling, StandardCharsets.UTF_8)
        + (accents.isEmpty() ? "" : "?accent=" + accents);
  }

  /** A list, or the chart where there are no parameters. */
  public static String ofList(QueryString list) {
    return list.parameters().isEmpty() ? "/" : "/?" + list;
  }

  /**
   * An address of a list or a word in an edition, if one is named.
   *
   * @param edition as it stands in addresses
   */
  public static String inEdition(String address, Optional<String> edition) {
    return edition
        .map(number -> address + (address.contains("?") ? "&" : "?") + "edition=" + number)
        .orElse(address);
  }

  /** The sentences of the bank for a value. */
  public static String ofSentences(Correspondence value, String accents) {
    QueryString query = new QueryString(Map.of(ParameterNames.FOR, value.label()));
    return "/sentences?"
        + (accents.isEmpty() ? query : query.with(ChosenAccents.PARAMETER, accents));
  }

  private static String before(String accents) {
    return accents.isEmpty() ? "" : "accent=" + accents + "&";
  }

  /** A page that only accents are chosen for. */
  public static String ofPlan(String path, String accents) {
    return accents.isEmpty() ? path : path + "?accent=" + accents;
  }

  /** The chart. */
  public static String ofChart(String accents) {
    return ofPlan("/", accents);
  }

  /** The chart, or what is found in it. */
  public static String ofFind(String find, String accents) {
    return find.isEmpty()
        ? ofChart(accents)
        : "/?"
            + new QueryString(Map.of(ParameterNames.FIND, find))
            + (accents.isEmpty() ? "" : "&accent=" + accents);
  }
}
