package org.hedgerow.pictures;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads an SVG document into known elements and puts its style sheets aside. Notes of editors and
 * descriptions are left out; anything else that isn't known, and whatever runs, is refused. No DTD
 * is read and no entity replaced.
 */
final class SvgReading {

  static final int MAX_ELEMENTS = 5_000;
  static final int MAX_LEVELS = 50;

  private static final int MAX_ATTRIBUTES = 200;
  private static final String LIMITS = "http://www.oracle.com/xml/jaxp/properties/";
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String XHTML = "http://www.w3.org/1999/xhtml";
  private static final String XLINK = "http://www.w3.org/1999/xlink";

  /** They say something about the picture and draw nothing. */
  private static final Set<String> DESCRIPTIONS = Set.of("title", "desc", "metadata");

  private final XMLStreamReader reader;
  private final StringBuilder styleSheets = new StringBuilder();
  private int elements;

  private SvgReading(String text) throws XMLStreamException {
    this.reader = factory().createXMLStreamReader(new StringReader(text));
  }

  /**
   * As read.
   *
   * @param root with the attributes that the file has, unchecked
   * @param styleSheets the text of all of them
   */
  record Document(SvgElement root, String styleSheets) {}

  /**
   * @throws UnusablePictureException if it is no SVG, damaged, too large, or holds what can't be
   *     kept
   */
  static Document read(String text) {
    try {
      return new SvgReading(text).document();
    } catch (UnusablePictureException refused) {
      throw refused;
    } catch (XMLStreamException damage) {
      throw damaged(
          damage.getLocation() == null ? 1 : damage.getLocation().getLineNumber(), damage);
    } catch (RuntimeException damage) {
      // The JDK's reader fails in more ways than it declares.
      throw damaged(1, damage);
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    factory.setProperty(LIMITS + "elementAttributeLimit", String.valueOf(MAX_ATTRIBUTES));
    return factory;
  }

  private static UnusablePictureException damaged(int line, Exception damage) {
    return new UnusablePictureException(
        "This file begins like an SVG but can't be read (line %d). Save the picture again, as"
                .formatted(line)
            + " plain SVG or as PNG, and upload that file.",
        damage);
  }

  private Document document() throws XMLStreamException {
    while (reader.next() != XMLStreamConstants.START_ELEMENT) {
      requireNoStyleSheetOutside();
    }
    if (!isSvg() || !reader.getLocalName().equals(SvgVocabulary.ROOT)) {
      throw new UnusablePictureException(
          "This file is a document, not a picture (<%s>). Only PNG, JPEG and SVG can be read."
              .formatted(SvgRefusal.quote(reader.getLocalName())));
    }
    SvgElement root = element(1);
    while (reader.next() != XMLStreamConstants.END_DOCUMENT) {
      requireNoStyleSheetOutside();
    }
    return new Document(root, styleSheets.toString());
  }

  private void requireNoStyleSheetOutside() {
    boolean instruction = reader.getEventType() == XMLStreamConstants.PROCESSING_INSTRUCTION;
    if (instruction && reader.getPITarget().startsWith("xml-stylesheet")) {
      throw SvgRefusal.reference("xml-stylesheet", String.valueOf(reader.getPIData()));
    }
  }

  /** The documents that have no namespace were copied out of a web page. */
  private boolean isSvg() {
    String namespace = reader.getNamespaceURI();
    return namespace == null || namespace.isEmpty() || namespace.equals(SVG);
  }

  private SvgElement element(int level) throws XMLStreamException {
    count(level);
    String name = reader.getLocalName();
    Map<String, String> attributes = attributes(name);
    List<SvgElement> children = new ArrayList<>();
    while (reader.next() != XMLStreamConstants.END_ELEMENT) {
      if (reader.getEventType() == XMLStreamConstants.START_ELEMENT) {
        child(level + 1, children);
      }
    }
    return new SvgElement(name, attributes, children);
  }

  private void count(int level) {
    elements++;
    if (elements > MAX_ELEMENTS) {
      throw SvgRefusal.large("has more than %,d shapes and other parts".formatted(MAX_ELEMENTS));
    }
    if (level > MAX_LEVELS) {
      throw SvgRefusal.large("has groups in groups, more than %d deep".formatted(MAX_LEVELS));
    }
  }

  private void child(int level, List<SvgElement> children) throws XMLStreamException {
    String name = reader.getLocalName();
    if (!isSvg()) {
      requireEditorsNote(name);
      skip(level);
    } else if (DESCRIPTIONS.contains(name)) {
      skip(level);
    } else if (name.equals("style")) {
      count(level);
      attributes(name);
      styleSheets.append(reader.getElementText()).append('\n');
    } else if (SvgVocabulary.attributes(name).isPresent()) {
      children.add(element(level));
    } else {
      throw SvgRefusal.element(name);
    }
  }

  /** Browsers show and run what is XHTML, wherever it stands, and draw nothing that is unknown. */
  private void requireEditorsNote(String name) {
    if (reader.getNamespaceURI().equals(XHTML)) {
      throw SvgRefusal.element(name);
    }
  }

  /** What is left out may hold nothing that runs either: nobody wants such a file. */
  private void skip(int level) throws XMLStreamException {
    count(level);
    requireNothingThatRuns(reader.getLocalName());
    while (reader.next() != XMLStreamConstants.END_ELEMENT) {
      if (reader.getEventType() == XMLStreamConstants.START_ELEMENT) {
        skip(level + 1);
      }
    }
  }

  private void requireNothingThatRuns(String name) {
    if (name.toLowerCase(Locale.ROOT).equals("script")) {
      throw SvgRefusal.element(name);
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      requireNoEvent(reader.getAttributeLocalName(i), name);
    }
  }

  private static void requireNoEvent(String attribute, String element) {
    if (attribute.toLowerCase(Locale.ROOT).startsWith("on")) {
      throw SvgRefusal.event(attribute, element);
    }
  }

  private Map<String, String> attributes(String element) {
    Map<String, String> attributes = new LinkedHashMap<>();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String name = reader.getAttributeLocalName(i);
      requireNoEvent(name, element);
      String namespace = reader.getAttributeNamespace(i);
      if (namespace == null || namespace.isEmpty()) {
        attributes.put(name, reader.getAttributeValue(i));
      } else if (namespace.equals(XLINK) && name.equals("href")) {
        attributes.putIfAbsent(name, reader.getAttributeValue(i));
      }
    }
    return attributes;
  }
}
