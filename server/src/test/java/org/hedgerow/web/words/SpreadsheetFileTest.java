package org.hedgerow.web.words;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hedgerow.web.http.Spreadsheet;
import org.hedgerow.web.testing.ApiServer;
import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Lists as spreadsheet files, read as ECMA-376 says (part 1, sections 18.3.1 and 18.4): as XML in a
 * ZIP archive, without the library that writes them.
 */
class SpreadsheetFileTest {
  private static final String LIST = "phonogram=oa&letters=4";

  private static ApiServer api;
  private static PagesServer pages;

  @BeforeAll
  static void start() {
    api = ApiServer.start();
    pages = PagesServer.start();
  }

  @AfterAll
  static void stop() {
    pages.close();
    api.close();
  }

  @Test
  void programsGetTheColumnsOfTheTableWithTheTargetInRed() throws Exception {
    HttpResponse<byte[]> answer = api.bytes("/api/v1/words?" + LIST + "&format=xlsx");
    assertThat(answer.headers().firstValue("Content-Type"))
        .hasValue("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");
    Map<String, byte[]> parts = parts(answer.body());
    List<Element> rows = elements(sheet(parts), "row");
    assertThat(texts(rows.get(0), parts))
        .containsExactly(
            "spelling",
            "status",
            "commonness",
            "syllables",
            "accent",
            "sounds",
            "graphemes",
            "target",
            "picturable",
            "starter");
    assertThat(texts(rows.get(1), parts))
        .containsExactly("boat", "seeded", "5", "1", "en-US", "b oʊ t", "b oa t", "oa", "3", "yes");
    assertThat(red(elements(rows.get(1), "c").get(0))).containsExactly("oa");
    assertThat(type(rows.get(1), 2)).as("commonness is a number").isIn("", "n");
  }

  @Test
  void teachersGetTheWholeListByItsName() throws Exception {
    HttpResponse<byte[]> answer = pages.bytes("/words.xlsx?" + LIST);
    assertThat(answer.headers().firstValue("Content-Disposition"))
        .hasValue("attachment; filename=\"oa-1-boat.xlsx\"");
    Map<String, byte[]> parts = parts(answer.body());
    List<Element> rows = elements(sheet(parts), "row");
    long listed = pages.get("/words.txt?" + LIST).body().lines().count();
    assertThat(rows).hasSize((int) listed + 1);
    assertThat(texts(rows.get(1), parts)).startsWith("boat", "oa", "b oa t", "b oʊ t");
    assertThat(red(elements(rows.get(1), "c").get(0))).containsExactly("oa");
  }

  @Test
  void theSameListIsTheSameFileWheneverItIsWritten() throws Exception {
    byte[] file = pages.bytes("/words.xlsx?" + LIST).body();
    assertThat(new String(parts(file).get("docProps/core.xml"), UTF_8)).doesNotContain("created");
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 1, 0, 0));
      }
    }
  }

  @Test
  void noTextIsTakenForAFormula() throws Exception {
    byte[] file =
        Spreadsheet.of("words", List.of("a", "b"), List.of(List.of("=1+1", "<b>&\u0001")));
    Map<String, byte[]> parts = parts(file);
    assertThat(elements(sheet(parts), "f")).isEmpty();
    assertThat(texts(elements(sheet(parts), "row").get(1), parts)).startsWith("=1+1");
  }

  @Test
  void aMarkOfUtf8HasNoPlaceInIt() throws Exception {
    assertThat(api.get("/api/v1/words?" + LIST + "&format=xlsx&bom=true").statusCode())
        .isEqualTo(400);
  }

  private static Map<String, byte[]> parts(byte[] file) throws IOException {
    Map<String, byte[]> parts = new HashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    return parts;
  }

  private static Element sheet(Map<String, byte[]> parts) throws Exception {
    return xml(parts, "xl/worksheets/sheet1.xml");
  }

  private static Element xml(Map<String, byte[]> parts, String name) throws Exception {
    Document document =
        DocumentBuilderFactory.newDefaultInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(parts.get(name)));
    return document.getDocumentElement();
  }

  private static List<Element> elements(Element within, String name) {
    NodeList found = within.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  private static String type(Element row, int column) {
    return elements(row, "c").get(column).getAttribute("t");
  }

  /** What the cells of a row say; texts may stand in the table of shared strings. */
  private static List<String> texts(Element row, Map<String, byte[]> parts) throws Exception {
    List<String> texts = new ArrayList<>();
    for (Element cell : elements(row, "c")) {
      String text = cell.getTextContent();
      texts.add(
          cell.getAttribute("t").equals("s")
              ? elements(xml(parts, "xl/sharedStrings.xml"), "si")
                  .get(Integer.parseInt(text))
                  .getTextContent()
              : text);
    }
    return texts;
  }

  /** The runs of a cell that are in the red of the pages. */
  private static List<String> red(Element cell) {
    return elements(cell, "r").stream()
        .filter(
            run ->
                elements(run, "color").stream()
                    .anyMatch(color -> color.getAttribute("rgb").endsWith("C8101C")))
        .map(run -> elements(run, "t").get(0).getTextContent())
        .toList();
  }
}
