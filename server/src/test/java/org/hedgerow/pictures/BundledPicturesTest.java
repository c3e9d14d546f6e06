package org.hedgerow.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The drawings that the program carries, which many hands drew in many programs. */
class BundledPicturesTest {

  private static final Path FOLDER =
      Path.of("../seed-lexicon/src/main/resources/seed/pictures/svg");

  @Test
  void allComeThroughWithEveryElementAndAttribute() throws Exception {
    PictureIntake intake = new PictureIntake();
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<Path> all = files.toList();
      assertThat(all).hasSizeGreaterThanOrEqualTo(300);
      for (Path file : all) {
        byte[] drawing = Files.readAllBytes(file);
        CleanPicture picture = intake.take(drawing);
        assertThat(elements(picture.content().toArray()))
            .as(file.toString())
            .isEqualTo(elements(drawing));
        assertThat(picture.width()).isEqualTo(72);
      }
    }
  }

  /** Each with its name, its parent's and its attributes, in order, read by another parser. */
  private static List<String> elements(byte[] svg) throws Exception {
    Document document =
        DocumentBuilderFactory.newNSInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg));
    NodeList all = document.getElementsByTagName("*");
    List<String> elements = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      Node element = all.item(i);
      elements.add(
          element.getParentNode().getNodeName() + element.getNodeName() + attributes(element));
    }
    return elements;
  }

  private static Map<String, String> attributes(Node element) {
    Map<String, String> attributes = new TreeMap<>();
    NamedNodeMap all = element.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      attributes.put(all.item(i).getNodeName(), all.item(i).getNodeValue());
    }
    return attributes;
  }
}
