package spanledger.picture;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A drawing as an SVG file; words stay words, so that they can be searched and read aloud.
 *
 * <p>Reference: Scalable Vector Graphics (SVG) 1.1, W3C Recommendation.
 */
public final class SvgFile {

  private static final int DECIMALS = 2;

  /** The clear rim around letters, per their size. */
  static final double RIM = 0.28;

  private final XMLStreamWriter xml;

  private SvgFile(XMLStreamWriter xml) {
    this.xml = xml;
  }

  /** The text of the file, ending in a line break. */
  public static String of(Drawing drawing) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      new SvgFile(xml).write(drawing);
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("A drawing can always be written.", e);
    }
    return text.toString();
  }

  private void write(Drawing drawing) throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    xml.writeCharacters("\n");
    xml.writeStartElement("svg");
    xml.writeDefaultNamespace("http://www.w3.org/2000/svg");
    xml.writeAttribute("width", number(drawing.width()));
    xml.writeAttribute("height", number(drawing.height()));
    xml.writeAttribute(
        "viewBox", "0 0 " + number(drawing.width()) + " " + number(drawing.height()));
    xml.writeAttribute("role", "img");
    xml.writeAttribute("font-family", Lettering.FAMILY);
    xml.writeAttribute("fill-rule", "evenodd");
    xml.writeAttribute("stroke-linejoin", "round");
    xml.writeAttribute("stroke-linecap", "butt");
    element("title", drawing.title());
    element("desc", drawing.description());
    xml.writeCharacters("\n");
    xml.writeEmptyElement("rect");
    xml.writeAttribute("width", "100%");
    xml.writeAttribute("height", "100%");
    xml.writeAttribute("fill", Ink.WHITE.hex());
    for (Mark mark : drawing.marks()) {
      xml.writeCharacters("\n");
      if (mark instanceof Mark.Shape shape) {
        write(shape);
      } else if (mark instanceof Mark.Words words) {
        write(words);
      }
    }
    xml.writeCharacters("\n");
    xml.writeEndElement();
    xml.writeCharacters("\n");
    xml.writeEndDocument();
  }

  private void element(String name, String words) throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeStartElement(name);
    xml.writeCharacters(words);
    xml.writeEndElement();
  }

  private void write(Mark.Shape shape) throws XMLStreamException {
    xml.writeEmptyElement("path");
    xml.writeAttribute("d", path(shape.trace()));
    xml.writeAttribute("fill", shape.fill().map(Ink::hex).orElse("none"));
    if (shape.pen().isPresent()) {
      Pen pen = shape.pen().get();
      xml.writeAttribute("stroke", pen.ink().hex());
      xml.writeAttribute("stroke-width", number(pen.width()));
      if (!pen.dashes().isEmpty()) {
        xml.writeAttribute(
            "stroke-dasharray",
            pen.dashes().stream().map(SvgFile::number).collect(Collectors.joining(" ")));
      }
    }
  }

  private void write(Mark.Words words) throws XMLStreamException {
    if (words.cleared()) {
      // Two elements: not every program knows how to draw the rim of letters before their body.
      startWords(words);
      xml.writeAttribute("fill", Ink.WHITE.hex());
      xml.writeAttribute("stroke", Ink.WHITE.hex());
      xml.writeAttribute("stroke-width", number(words.size() * RIM));
      xml.writeAttribute("aria-hidden", "true");
      xml.writeCharacters(words.words());
      xml.writeEndElement();
    }
    startWords(words);
    xml.writeAttribute("fill", words.ink().hex());
    xml.writeCharacters(words.words());
    xml.writeEndElement();
  }

  private void startWords(Mark.Words words) throws XMLStreamException {
    xml.writeStartElement("text");
    xml.writeAttribute("x", number(words.at().x()));
    xml.writeAttribute("y", number(words.at().y()));
    xml.writeAttribute("font-size", number(words.size()));
    if (words.anchor() != Mark.Anchor.START) {
      xml.writeAttribute("text-anchor", words.anchor().word());
    }
    if (words.turn() != 0) {
      xml.writeAttribute(
          "transform", "rotate(" + number(words.turn()) + " " + place(words.at()) + ")");
    }
  }

  private static String path(Trace trace) {
    StringBuilder path = new StringBuilder();
    Spot here = new Spot(0, 0);
    for (Trace.Move move : trace.moves()) {
      if (move instanceof Trace.Start start) {
        path.append('M').append(place(start.at()));
        here = start.at();
      } else if (move instanceof Trace.Line line) {
        path.append('L').append(place(line.to()));
        here = line.to();
      } else if (move instanceof Trace.Arc arc) {
        double bulge = Math.abs(arc.bulge());
        double radius = here.distance(arc.to()) * (1 + bulge * bulge) / (4 * bulge);
        path.append('A').append(number(radius)).append(' ').append(number(radius)).append(" 0 ");
        path.append(bulge > 1 ? '1' : '0').append(' ').append(arc.bulge() > 0 ? '1' : '0');
        path.append(' ').append(place(arc.to()));
        here = arc.to();
      } else {
        path.append('Z');
      }
    }
    return path.toString();
  }

  private static String place(Spot spot) {
    return number(spot.x()) + " " + number(spot.y());
  }

  private static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
