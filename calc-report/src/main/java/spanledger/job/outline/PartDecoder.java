package spanledger.job.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.section.outline.Extent;
import spanledger.section.outline.InvalidOutlineException;
import spanledger.section.outline.Outline;
import spanledger.section.outline.OutlineFault;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;

/** Decodes the outer ring and the holes of one piece. */
final class PartDecoder {

  /** Extrusions lie far within these, mm. */
  private static final double LEAST_SIZE = 1;

  private static final double GREATEST_SIZE = 5000;

  private final Reading reading;
  private final RingDecoder rings;

  PartDecoder(Reading reading, Lengths lengths) {
    this.reading = reading;
    this.rings = new RingDecoder(reading, lengths);
  }

  /** The outline of the keys {@code outer} and {@code holes}; faults are reported. */
  Optional<Outline> decode(Fields fields) {
    Optional<DrawnRing> outer = fields.require("outer").flatMap(rings::decode);
    List<DrawnRing> all = new ArrayList<>();
    outer.ifPresent(all::add);
    List<Located> holes = fields.findList("holes");
    for (Located hole : holes) {
      rings.decode(hole).ifPresent(all::add);
    }
    if (outer.isEmpty() || all.size() < 1 + holes.size()) {
      return Optional.empty();
    }
    return outline(all);
  }

  private Optional<Outline> outline(List<DrawnRing> drawn) {
    List<Ring> holes = drawn.subList(1, drawn.size()).stream().map(DrawnRing::ring).toList();
    try {
      Outline outline = new Outline(drawn.get(0).ring(), holes);
      return hasUsualSize(outline, drawn.get(0).value()) ? Optional.of(outline) : Optional.empty();
    } catch (InvalidOutlineException e) {
      for (OutlineFault fault : e.faults()) {
        Faults.report(reading, drawn.get(fault.ring()).nearest(fault.where()), fault);
      }
      return Optional.empty();
    }
  }

  private boolean hasUsualSize(Outline outline, Located value) {
    double size = 0;
    for (Point direction : List.of(new Point(1, 0), new Point(0, 1))) {
      Extent extent = Extent.of(outline.outer().edges(), direction);
      size = Math.max(size, extent.greatest() - extent.least());
    }
    if (size < LEAST_SIZE || size > GREATEST_SIZE) {
      reading.error(
          value,
          "an outline " + Rounded.mm(size) + " across",
          "a section from 1 mm to 5 m across",
          "check the unit of the file");
      return false;
    }
    return true;
  }
}
