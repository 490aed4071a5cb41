package spanledger.verification.calc;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLEventFactory;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLEventWriter;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.Attribute;
import javax.xml.stream.events.StartElement;
import javax.xml.stream.events.XMLEvent;

/** The results of formulas that a workbook carries beside the formulas. */
public final class CachedValues {

  /** Namespace of sheets: ECMA-376, Office Open XML, SpreadsheetML main. */
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  private static final QName CELL = new QName(MAIN, "c");
  private static final QName FORMULA = new QName(MAIN, "f");
  private static final QName TYPE = new QName("t");

  private CachedValues() {}

  /**
   * Copies a workbook without the results of its formulas: whatever program opens the copy must
   * work them out itself. Formulas, other cells and everything else stay.
   *
   * @param in an xlsx file, not modified
   * @param out the file to write, another than {@code in}
   * @return how many formula cells the workbook has
   * @throws IOException if {@code in} cannot be read as xlsx or {@code out} cannot be written
   */
  public static int strip(Path in, Path out) throws IOException {
    int formulas = 0;
    try (ZipInputStream from = new ZipInputStream(Files.newInputStream(in));
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(out))) {
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        ZipEntry copy = new ZipEntry(entry.getName());
        copy.setTime(entry.getTime());
        to.putNextEntry(copy);
        if (entry.getName().matches("/?xl/worksheets/[^/]+\\.xml")) {
          formulas += stripSheet(from, to, in + ", " + entry.getName());
        } else {
          from.transferTo(to);
        }
        to.closeEntry();
      }
    }
    return formulas;
  }

  private static int stripSheet(InputStream from, OutputStream to, String where)
      throws IOException {
    XMLInputFactory readers = XMLInputFactory.newDefaultFactory();
    readers.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    readers.setProperty(XMLInputFactory.IS_COALESCING, true);
    int formulas = 0;
    try {
      // The reader may close its stream; the zip must stay open.
      XMLEventReader reader =
          readers.createXMLEventReader(new ByteArrayInputStream(from.readAllBytes()));
      XMLEventWriter writer =
          XMLOutputFactory.newDefaultFactory().createXMLEventWriter(to, "UTF-8");
      while (reader.hasNext()) {
        XMLEvent event = reader.nextEvent();
        if (event.isStartElement() && event.asStartElement().getName().equals(CELL)) {
          List<XMLEvent> cell = restOfElement(event, reader);
          boolean formula = cell.stream().anyMatch(e -> starts(e, FORMULA));
          for (XMLEvent part : formula ? withoutResult(cell) : cell) {
            writer.add(part);
          }
          formulas += formula ? 1 : 0;
        } else {
          writer.add(event);
        }
      }
      writer.flush();
    } catch (XMLStreamException e) {
      throw new IOException("Not a sheet of a workbook: " + where, e);
    }
    return formulas;
  }

  /** The element that {@code start} begins, to its end. */
  private static List<XMLEvent> restOfElement(XMLEvent start, XMLEventReader reader)
      throws XMLStreamException {
    List<XMLEvent> events = new ArrayList<>(List.of(start));
    int depth = 1;
    while (depth > 0) {
      XMLEvent event = reader.nextEvent();
      depth += event.isStartElement() ? 1 : event.isEndElement() ? -1 : 0;
      events.add(event);
    }
    return events;
  }

  /**
   * A formula cell with nothing but its formula; its type is the type of the result, so it goes.
   */
  private static List<XMLEvent> withoutResult(List<XMLEvent> cell) {
    List<XMLEvent> kept = new ArrayList<>();
    kept.add(withoutType(cell.get(0).asStartElement()));
    boolean inFormula = false;
    for (XMLEvent event : cell.subList(1, cell.size() - 1)) {
      inFormula |= starts(event, FORMULA);
      if (inFormula) {
        kept.add(event);
      }
      if (event.isEndElement() && event.asEndElement().getName().equals(FORMULA)) {
        inFormula = false;
      }
    }
    kept.add(cell.get(cell.size() - 1));
    return kept;
  }

  private static StartElement withoutType(StartElement cell) {
    List<Attribute> attributes = new ArrayList<>();
    for (Iterator<Attribute> each = cell.getAttributes(); each.hasNext(); ) {
      Attribute attribute = each.next();
      if (!attribute.getName().equals(TYPE)) {
        attributes.add(attribute);
      }
    }
    return XMLEventFactory.newDefaultFactory()
        .createStartElement(cell.getName(), attributes.iterator(), cell.getNamespaces());
  }

  private static boolean starts(XMLEvent event, QName name) {
    return event.isStartElement() && event.asStartElement().getName().equals(name);
  }
}
