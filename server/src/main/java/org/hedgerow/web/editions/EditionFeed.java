package org.hedgerow.web.editions;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.web.http.Answer;
import org.hedgerow.web.http.Sending;
import org.hedgerow.web.query.Parameters;

/** {@code GET /editions.atom}: the latest editions as an Atom feed (RFC 4287). */
public final class EditionFeed implements Handler {
  public static final String PATH = "/editions.atom";

  private static final String MEDIA_TYPE = "application/atom+xml; charset=utf-8";
  private static final String ATOM = "http://www.w3.org/2005/Atom";
  private static final int ENTRIES = 30;

  private final Editions editions;
  private final EditionLog log;

  public EditionFeed(Editions editions) {
    this.editions = editions;
    this.log = editions.log();
  }

  @Override
  public void handle(Context context) {
    Parameters.parsed(Optional.ofNullable(context.queryString()).orElse(""), List.of())
        .errors()
        .throwIfAny();
    int newest = editions.newest().edition();
    String feed = feed(log.before(Integer.MAX_VALUE, ENTRIES), bank());
    Sending.send(context, Answer.of(newest, feed.getBytes(UTF_8), MEDIA_TYPE));
  }

  /** Tells this bank from others, for good. */
  private String bank() {
    return log.edition(1).map(first -> first.at().toString()).orElse("");
  }

  private static String feed(List<PublishedEdition> editions, String bank) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeStartElement("feed");
      xml.writeDefaultNamespace(ATOM);
      write(xml, "title", "Hedgerow: editions of the word bank");
      write(xml, "id", id(bank, 0));
      write(xml, "updated", editions.isEmpty() ? bank : editions.get(0).at().toString());
      link(xml, "self", PATH);
      link(xml, "alternate", "/editions");
      author(xml, "Hedgerow");
      for (PublishedEdition each : editions) {
        entry(xml, each, bank);
      }
      xml.writeEndElement();
      xml.writeEndDocument();
    } catch (XMLStreamException impossible) {
      throw new IllegalStateException(impossible);
    }
    return text.toString();
  }

  private static void entry(XMLStreamWriter xml, PublishedEdition edition, String bank)
      throws XMLStreamException {
    xml.writeStartElement("entry");
    write(xml, "title", "Edition %d".formatted(edition.number()));
    write(xml, "id", id(bank, edition.number()));
    write(xml, "updated", edition.at().toString());
    link(xml, "alternate", "/editions/" + edition.number());
    if (edition.by().isPresent()) {
      author(xml, edition.by().get());
    }
    write(xml, "summary", edition.summary());
    xml.writeEndElement();
  }

  private static void author(XMLStreamWriter xml, String name) throws XMLStreamException {
    xml.writeStartElement("author");
    write(xml, "name", name);
    xml.writeEndElement();
  }

  private static void link(XMLStreamWriter xml, String relation, String address)
      throws XMLStreamException {
    xml.writeEmptyElement("link");
    xml.writeAttribute("rel", relation);
    xml.writeAttribute("href", address);
  }

  private static void write(XMLStreamWriter xml, String element, String text)
      throws XMLStreamException {
    xml.writeStartElement(element);
    xml.writeCharacters(writable(text));
    xml.writeEndElement();
  }

  /** Without the control characters that XML has no way to write. */
  private static String writable(String text) {
    return text.replaceAll("[\\p{Cntrl}&&[^\t\n\r]]", " ");
  }

  /** The feed's own with 0 for the number. */
  private static String id(String bank, int number) {
    return "urn:uuid:"
        + UUID.nameUUIDFromBytes("hedgerow %s %d".formatted(bank, number).getBytes(UTF_8));
  }
}
