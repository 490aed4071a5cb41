package spanledger.verification.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFReader.SheetIterator;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;

/**
 * The cells of an xlsx file, read from its XML: what is in the file, not what a library makes of
 * it.
 */
final class Book {

  private final Map<String, Map<String, BookCell>> sheets = new LinkedHashMap<>();
  private final StylesTable styles;

  private Book(StylesTable styles) {
    this.styles = styles;
  }

  static Book read(Path file) throws IOException {
    try (OPCPackage parts = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
      XSSFReader reader = new XSSFReader(parts);
      Book book = new Book(reader.getStylesTable());
      SharedStrings words = reader.getSharedStringsTable();
      SheetIterator each = (SheetIterator) reader.getSheetsData();
      while (each.hasNext()) {
        try (InputStream sheet = each.next()) {
          book.sheets.put(each.getSheetName(), cells(each.getSheetName(), sheet, words));
        }
      }
      return book;
    } catch (OpenXML4JException | XMLStreamException e) {
      throw new IOException("Not a workbook: " + file, e);
    }
  }

  private static Map<String, BookCell> cells(String sheet, InputStream in, SharedStrings words)
      throws XMLStreamException {
    XMLInputFactory readers = XMLInputFactory.newDefaultFactory();
    readers.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    XMLStreamReader reader = readers.createXMLStreamReader(in);
    Map<String, BookCell> cells = new LinkedHashMap<>();
    while (reader.hasNext()) {
      if (reader.next() == XMLStreamConstants.START_ELEMENT && reader.getLocalName().equals("c")) {
        BookCell cell = cell(sheet, reader, words);
        cells.put(cell.reference(), cell);
      }
    }
    return cells;
  }

  private static BookCell cell(String sheet, XMLStreamReader reader, SharedStrings words)
      throws XMLStreamException {
    CellReference at = new CellReference(reader.getAttributeValue(null, "r"));
    String type = Optional.ofNullable(reader.getAttributeValue(null, "t")).orElse("n");
    String style = Optional.ofNullable(reader.getAttributeValue(null, "s")).orElse("0");
    String formula = "";
    String value = "";
    while (reader.next() != XMLStreamConstants.END_ELEMENT || !reader.getLocalName().equals("c")) {
      if (reader.isStartElement() && reader.getLocalName().equals("f")) {
        formula = reader.getElementText();
      } else if (reader.isStartElement() && reader.getLocalName().equals("v")) {
        value = reader.getElementText();
      }
    }
    BookCell.Kind kind =
        value.isEmpty()
            ? BookCell.Kind.NOTHING
            : switch (type) {
              case "n" -> BookCell.Kind.NUMBER;
              case "b" -> BookCell.Kind.TRUTH;
              case "e" -> BookCell.Kind.ERROR;
              default -> BookCell.Kind.WORDS;
            };
    String text = type.equals("s") ? words.getItemAt(Integer.parseInt(value)).getString() : value;
    return new BookCell(
        sheet, at.getRow(), at.getCol(), formula, kind, text, Integer.parseInt(style));
  }

  List<String> names() {
    return List.copyOf(sheets.keySet());
  }

  /** The cells of a sheet, row by row. */
  List<BookCell> sheet(String name) {
    return List.copyOf(find(name).values());
  }

  Stream<BookCell> cells() {
    return sheets.values().stream().flatMap(s -> s.values().stream());
  }

  Optional<BookCell> cell(String sheet, String reference) {
    return Optional.ofNullable(find(sheet).get(reference));
  }

  BookCell at(String sheet, int row, int column) {
    String reference = CellReference.convertNumToColString(column) + (row + 1);
    return cell(sheet, reference)
        .orElse(new BookCell(sheet, row, column, "", BookCell.Kind.NOTHING, "", 0));
  }

  /** The tables of a sheet: the runs of rows between empty rows, each as its cells row by row. */
  List<List<BookCell>> tables(String sheet) {
    List<List<BookCell>> tables = new ArrayList<>();
    int last = Integer.MIN_VALUE;
    for (BookCell cell : sheet(sheet)) {
      if (tables.isEmpty() || cell.row() > last + 1) {
        tables.add(new ArrayList<>());
      }
      tables.get(tables.size() - 1).add(cell);
      last = cell.row();
    }
    return tables;
  }

  /** The styles of the file. */
  StylesTable styles() {
    return styles;
  }

  private Map<String, BookCell> find(String sheet) {
    return Optional.ofNullable(sheets.get(sheet))
        .orElseThrow(() -> new IllegalArgumentException("No sheet " + sheet));
  }
}
