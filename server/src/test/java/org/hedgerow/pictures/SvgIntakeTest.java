package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings as programs write them, and attacks that are known of SVG. */
class SvgIntakeTest {

  private static final String OPEN =
      "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink'"
          + " viewBox='0 0 72 72'>";
  private static final String SHAPE = "<rect id='r' width='9' height='9'/>";

  private final PictureIntake intake = new PictureIntake();

  private CleanPicture take(String svg) {
    return Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(10), () -> intake.take(svg.getBytes(UTF_8)));
  }

  private String taken(String content) {
    return text(take(OPEN + content + "</svg>"));
  }

  private static String text(CleanPicture picture) {
    return new String(picture.content().toArray(), UTF_8);
  }

  @Test
  void writesTheShapesAloneAndAlwaysTheSameWay() {
    CleanPicture picture =
        take(
            """
            <?xml version="1.0" encoding="UTF-8" standalone="no"?>
            <!-- drawn by Rosa -->
            <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
            <svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="36mm" height="100%"
                 xmlns:sodipodi="http://sodipodi.sourceforge.net/DTD/sodipodi-0.dtd"
                 viewBox="0, 0  72 36" sodipodi:docname="C:\\Users\\rosa\\boat.svg">
              <title>Rosa's boat</title>
              <metadata><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"/></metadata>
              <sodipodi:namedview pagecolor="#fff"/>
              <g data-name="hull"><path fill="red" id="p1" d="M0 0h9z" class="x"/></g>
            </svg>
            """);
    assertThat(text(picture))
        .isEqualTo(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 72 36\">"
                + "<g><path d=\"M0 0h9z\" fill=\"red\" id=\"p1\"/></g></svg>");
    assertThat(picture.mediaType()).isEqualTo("image/svg+xml");
    assertThat(picture.width()).isEqualTo(72);
    assertThat(picture.height()).isEqualTo(36);
    assertThat(intake.take(picture.content().toArray())).isEqualTo(picture);
  }

  @Test
  void turnsStyleIntoAttributesInTheOrderOfTheCascade() {
    assertThat(
            taken(
                "<style>path { fill: red; stroke: red } .a { fill: green } #i { fill: blue }"
                    + " .b { stroke-width: 3px !important; font-family: Arial }</style>"
                    + "<path d='M0 0' fill='black' opacity='.5' class='b a'/>"
                    + "<path d='M0 0' class='a' id='i'/>"
                    + "<path d='M0 0' class='a' id='j' style='fill : none;stroke:#0f0'/>"))
        .endsWith(
            "<path d=\"M0 0\" fill=\"green\" opacity=\".5\" stroke=\"red\" stroke-width=\"3px\"/>"
                + "<path d=\"M0 0\" fill=\"blue\" id=\"i\" stroke=\"red\"/>"
                + "<path d=\"M0 0\" fill=\"none\" id=\"j\" stroke=\"#0f0\"/></svg>");
  }

  @Test
  void keepsWhatRefersToPartsOfItself() {
    assertThat(
            taken(
                "<defs><linearGradient id='a'><stop offset='50%' style='stop-color:#f00'/>"
                    + "</linearGradient><linearGradient id='b' xlink:href='#a'/>"
                    + "<clipPath id='c'><use href='#r'/></clipPath></defs>"
                    + SHAPE
                    + "<rect width='2' height='2' clip-path=\"url( '#c' )\" fill='url(#b) red'/>"))
        .contains(
            "xmlns:xlink=\"http://www.w3.org/1999/xlink\"",
            "<stop offset=\"50%\" stop-color=\"#f00\"/>",
            "<linearGradient xlink:href=\"#a\" id=\"b\"/>",
            "<use xlink:href=\"#r\"/>",
            "clip-path=\"url(#c)\" fill=\"url(#b) red\"");
  }

  @ParameterizedTest
  @CsvSource({
    "width='40' height='20', 0 0 40 20",
    "width='1in' height='2.54cm', 0 0 96 96",
    "width='30px' height='30px' viewBox='', 0 0 30 30"
  })
  void takesTheViewBoxFromTheSize(String size, String viewBox) {
    assertThat(
            text(
                take("<svg xmlns='http://www.w3.org/2000/svg' %s>%s</svg>".formatted(size, SHAPE))))
        .contains("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"" + viewBox + "\">");
  }

  @ParameterizedTest
  @ValueSource(strings = {"width='100%' height='100%'", "", "viewBox='0 0 0 72'", "width='9'"})
  void asksHowLargeItIs(String size) {
    refused(
        "<svg xmlns='http://www.w3.org/2000/svg' %s>%s</svg>".formatted(size, SHAPE), "viewBox");
  }

  @Test
  void readsOtherEncodings() {
    String svg = OPEN + "<g id='ö'>" + SHAPE + "</g></svg>";
    assertThat(text(intake.take(svg.getBytes(UTF_16)))).contains("id=\"ö\"");
    assertThat(text(intake.take(svg.getBytes(UTF_16LE)))).contains("id=\"ö\"");
    String latin = "<?xml version='1.0' encoding='iso-8859-1'?>" + svg;
    assertThat(text(intake.take(latin.getBytes(ISO_8859_1)))).contains("id=\"ö\"");
    refused("<?xml version='1.0' encoding='UTF-7'?>" + svg, "UTF-7");
    assertThatThrownBy(() -> intake.take(svg.getBytes(ISO_8859_1)))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining("UTF-8");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<script xlink:href='https://example.org/a.js'/>",
        "<g><SCRIPT>alert(1)</SCRIPT></g>",
        "<x:script xmlns:x='http://www.w3.org/1999/xhtml'>alert(1)</x:script>",
        "<metadata><script>alert(1)</script></metadata>",
        "<g onload='alert(1)'/>",
        "<rect width='1' height='1' OnClick='alert(1)'/>",
        "<title onfocusin='alert(1)'>boat</title>",
        "<use href='javascript:alert(1)'/>",
        "<use xlink:href=' JavaScript:alert(1)'/>"
      })
  void refusesScripts(String attack) {
    if (attack.contains("SCRIPT>")) {
      refused(OPEN + SHAPE + attack + "</svg>", "<SCRIPT>");
    } else {
      refused(OPEN + SHAPE + attack + "</svg>", "script");
    }
  }

  @Test
  void refusesAScriptOnTheDocumentItself() {
    refused(
        OPEN.replace("viewBox", "onload='alert(1)' viewBox") + SHAPE + "</svg>", "onload on <svg>");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          <image href='data:image/png;base64,AAAA'/>                               | <image>
          <foreignObject><p xmlns='http://www.w3.org/1999/xhtml'/></foreignObject> | <foreignObject>
          <p:iframe xmlns:p='http://www.w3.org/1999/xhtml' src='https://a.b'/>     | <iframe>
          <a href='https://example.org'><path d='M0 0'/></a>                       | a link
          <text>boat</text>                                                        | paths
          <animate attributeName='x' from='0' to='9'/>                             | movement
          <set attributeName='onload' to='alert(1)'/>                              | movement
          <filter id='f'><feImage href='https://example.org/x'/></filter>          | <filter>
          <pattern id='p'/>                                                        | <pattern>
          <switch><path d='M0 0'/></switch>                                        | <switch>
          <g filter='url(#f)'/>                                                    | blur
          <g style='mix-blend-mode:multiply'/>                                     | mix
          <path d='M0 0' marker-end='url(#m)'/>                                    | arrowheads
          <path style='transform:rotate(45deg)'/>                                  | transform
          <path d='M0 0 url(x)'/>                                                  | not understood
          <path d='M0 0' fill='var(--x)'/>                                         | not understood
          <path d='M0 0' fill='\\75rl(https://example.org/x)'/>                    | not understood
          """)
  void refusesWhatCannotBeKept(String found, String named) {
    refused(OPEN + SHAPE + found + "</svg>", named);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<use href='https://example.org/boat.svg#r'/>",
        "<use xlink:href='//example.org/boat.svg#r'/>",
        "<use href='data:image/svg+xml,%3Csvg/%3E#r'/>",
        "<path d='M0 0' fill='url(https://example.org/a#b)'/>",
        "<path d='M0 0' style='fill:URL(\"data:image/svg+xml,x\")'/>",
        "<path d='M0 0' style='background-image:url(https://example.org/a)'/>",
        "<path d='M0 0' href='https://example.org'/>",
        "<g style='clip-path:url(other.svg#c)'/>"
      })
  void refusesWhatIsOutside(String attack) {
    refused(OPEN + SHAPE + attack + "</svg>", "outside");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "@import url(https://example.org/a.css);",
        "@font-face { font-family: x; src: url(https://example.org/a.woff) }",
        "@media print { path { fill: red } }",
        "path:hover { fill: red }",
        "g > path { fill: red }",
        "/* } */ @import 'a.css';",
        "path { fill: red",
        "} path { fill: red }"
      })
  void refusesStyleSheetsThatAreMoreThanColours(String style) {
    refused(
        OPEN + "<style>" + style.replace(">", "&gt;") + "</style>" + SHAPE + "</svg>",
        "style rule");
  }

  @Test
  void refusesStyleSheetsFromOutside() {
    refused(
        "<?xml-stylesheet href='https://example.org/a.css'?>" + OPEN + SHAPE + "</svg>", "outside");
    refused(OPEN + "<style>path{fill:url(http://x/#a)}</style><path d='M0 0'/></svg>", "outside");
  }

  @Test
  void replacesNoEntities() {
    String laughs =
        IntStream.range(1, 10)
            .mapToObj(i -> "<!ENTITY a%d '%s'>".formatted(i, ("&a" + (i - 1) + ";").repeat(10)))
            .collect(Collectors.joining("", "<!DOCTYPE svg [<!ENTITY a0 'ha'>", "]>"));
    refused(laughs + OPEN + "<g id='&a9;'/>" + SHAPE + "</svg>", "<!ENTITY");
    String file = "<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/passwd'>]>";
    refused(file + OPEN + SHAPE + "<g>&a;</g></svg>", "<!ENTITY");
    assertThatThrownBy(
            () -> intake.take((file + OPEN + SHAPE + "<g>&a;</g></svg>").getBytes(UTF_16)))
        .hasMessageContaining("<!ENTITY");
    refused(OPEN + SHAPE + "<g id='&unknown;'/></svg>", "can't be read");
  }

  @Test
  void asksNoOtherServer() throws Exception {
    try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      other.setSoTimeout(300);
      String doctype =
          "<!DOCTYPE svg SYSTEM 'http://127.0.0.1:%d/a.dtd'>".formatted(other.getLocalPort());
      assertThat(text(take(doctype + OPEN + SHAPE + "</svg>"))).doesNotContain("DOCTYPE");
      assertThatThrownBy(other::accept).isInstanceOf(SocketTimeoutException.class);
    }
  }

  /** Ten parts that each use the one before ten times: ten thousand million shapes. */
  @Test
  void countsWhatPartsThatUsePartsComeTo() {
    String uses =
        IntStream.range(1, 11)
            .mapToObj(
                i ->
                    "<g id='u%d'>%s</g>"
                        .formatted(i, "<use href='#u%d'/>".formatted(i - 1).repeat(10)))
            .collect(Collectors.joining());
    refused(OPEN + "<rect id='u0' width='1' height='1'/>" + uses + "</svg>", "repeats its parts");
    refused(OPEN + "<g id='u'><use href='#u'/></g></svg>", "made of itself");
    refused(OPEN + "<mask id='m' mask='url(#m)'>" + SHAPE + "</mask></svg>", "#m");
    refused(OPEN + SHAPE + "<use href='#gone'/></svg>", "#gone");
  }

  @Test
  void boundsWhatIsRead() {
    refused(OPEN + SHAPE.replace("id='r'", "").repeat(5_001) + "</svg>", "5,000");
    refused(OPEN + "<g>".repeat(60) + SHAPE + "</g>".repeat(60) + "</svg>", "50 deep");
    refused(OPEN + "<title>" + "<g>".repeat(20_000), "50 deep");
    refused(OPEN + "<path d='" + "M0 0".repeat(140_000) + "'/></svg>", "512 KB");
    String attributes =
        IntStream.range(0, 3_000).mapToObj(i -> "a" + i + "=''").collect(Collectors.joining(" "));
    refused(OPEN + "<g " + attributes + "/></svg>", "can't be read");
    refused(OPEN + "<style>" + "a{}".repeat(600) + "</style>" + SHAPE + "</svg>", "300");
  }

  @Test
  void readsLongPathsWithoutTakingLong() {
    String path = "M0 0" + "l1.5-2e-1".repeat(20_000) + "z";
    assertThat(taken("<path d='" + path + "'/>")).contains(path);
    refused(
        OPEN + "<path d='M0 0' transform='" + "rotate(1) ".repeat(10_000) + "x'/></svg>",
        "transform");
  }

  /** Each of these would take minutes if it were looked at letter by letter from every letter. */
  @Test
  void takesNoLongerForTextThatIsMadeToTakeLong() {
    String rect = "<rect width='1' height='1' ";
    refused(OPEN + rect + "x='" + "1".repeat(400_000) + "x'/></svg>", "not understood");
    refused(OPEN + rect + "style='fill:a" + " ".repeat(400_000) + "b'/></svg>", "not understood");
    refused(OPEN + rect + "style='fill:" + "/* ".repeat(100_000) + "'/></svg", "can't be read");
    assertThat(taken(rect + "style='fill:red" + "/* ".repeat(100_000) + "'/>")).contains("\"red\"");
    refused(OPEN + "<style>" + "a,".repeat(100_000) + "a{}</style>" + SHAPE + "</svg>", "rules");
    refused(
        OPEN + "<svg viewBox='" + "1".repeat(600) + " " + "1".repeat(600) + " 1 x'/></svg>",
        "not understood");
    String rules = "*{fill:red;stroke:red;opacity:1;color:red;clip-rule:a;mask:none}".repeat(300);
    assertThat(taken("<style>" + rules + "</style>" + SHAPE + "<g/>".repeat(4_900)))
        .contains("clip-rule");
  }

  @Test
  void boundsHowDeepPartsAreMadeOfParts() {
    String chain =
        IntStream.range(0, 2_000)
            .mapToObj(i -> "<g id='u%d'><use href='#u%d'/></g>".formatted(i, i + 1))
            .collect(Collectors.joining());
    refused(OPEN + chain + "<g id='u2000'>" + SHAPE + "</g></svg>", "30 deep");
  }

  @Test
  void asksForAPicture() {
    refused(OPEN + "<g/></svg>", "shows nothing");
    refused(OPEN.replace("72 72", "1700 100") + SHAPE + "</svg>", "narrow");
    refused("<html xmlns='http://www.w3.org/1999/xhtml'/>", "<html>");
    refused("<!doctype html><html><script>alert(1)</script>", "");
    refused("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'>", "can't be read");
    refused(OPEN + SHAPE + "</svg><svg/>", "can't be read");
  }

  @Test
  void leavesTheSizeOnThePageToThePage() {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg' style='width:9px' viewBox='0 0 9 9'>";
    assertThat(text(take(svg + "<style>svg{height:9em}</style><path d='M0 0'/></svg>")))
        .endsWith("viewBox=\"0 0 9 9\"><path d=\"M0 0\"/></svg>");
  }

  @Test
  void keepsTheFirstOfTwoIds() {
    assertThat(taken("<g id='a'/><g id='a'/><g id='1 b'/>" + SHAPE))
        .contains("<g id=\"a\"/><g/><g/>");
  }

  @Test
  void quotesStrangersShortly() {
    assertThatThrownBy(
            () -> taken(SHAPE + "<use href='http://a/" + "\u202eb\n".repeat(200) + "'/>"))
        .isInstanceOf(UnusablePictureException.class)
        .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(400))
        .hasMessageNotContaining("\u202e");
  }

  private void refused(String svg, String named) {
    assertThatThrownBy(() -> take(svg))
        .isInstanceOf(UnusablePictureException.class)
        .hasMessageContaining(named)
        .hasMessageMatching("(?s)[A-Z].*\\.");
  }
}
