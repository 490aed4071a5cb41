package spanledger.job.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedObject;
import spanledger.section.outline.ArcEdge;
import spanledger.section.outline.InvalidOutlineException;
import spanledger.section.outline.OutlineFault;
import spanledger.section.outline.Point;
import spanledger.section.outline.Ring;
import spanledger.section.outline.RoundedPolygon;
import spanledger.section.outline.StraightEdge;

/** Decodes one ring. */
final class RingDecoder {

  /** Corners nearer to each other are one place, mm. */
  private static final double ONE_PLACE = 1e-6;

  /** Smaller radii are slips; no die has them, mm. */
  private static final double LEAST_RADIUS = 0.01;

  private final Reading reading;
  private final Lengths lengths;
  private final ArcDecoder arcs;

  RingDecoder(Reading reading, Lengths lengths) {
    this.reading = reading;
    this.lengths = lengths;
    this.arcs = new ArcDecoder(reading, lengths);
  }

  /**
   * A corner as it stands in the file.
   *
   * @param arc the arc that leaves it, if any
   */
  private record Drawn(
      Located value, Point at, double fillet, Optional<Located> arc, String face) {}

  /** The ring, unless it has faults; they are reported. */
  Optional<DrawnRing> decode(Located value) {
    if (value instanceof LocatedArray list) {
      return polygon(list);
    }
    return reading.fields("standardRing", value).flatMap(fields -> standard(value, fields));
  }

  private Optional<DrawnRing> polygon(LocatedArray list) {
    List<Drawn> points = new ArrayList<>();
    for (Located element : list.elements()) {
      point(element).ifPresent(points::add);
    }
    if (points.size() < list.elements().size() || points.size() < 2) {
      reading.gap(list.pointer());
      return Optional.empty();
    }
    // Many write the first corner again at the end; the ring closes either way.
    Drawn last = points.get(points.size() - 1);
    if (points.size() > 2
        && last.at().distance(points.get(0).at()) < ONE_PLACE
        && last.arc().isEmpty()
        && last.fillet() == 0) {
      points.remove(points.size() - 1);
    }
    return chained(list, points);
  }

  private Optional<DrawnRing> chained(Located whole, List<Drawn> points) {
    RoundedPolygon polygon = new RoundedPolygon();
    boolean sound = true;
    for (int i = 0; i < points.size(); i++) {
      Drawn point = points.get(i);
      Drawn next = points.get((i + 1) % points.size());
      if (point.at().distance(next.at()) < ONE_PLACE) {
        sound = false;
        reading.error(
            next.value(),
            "the corner " + next.at() + " mm a second time in a row",
            "each corner once; a full circle as \"circle\"",
            "remove one of the two");
        continue;
      }
      polygon.corner(point.at().y(), point.at().z(), point.fillet()).face(point.face());
      if (point.arc().isPresent()) {
        Optional<Double> bulge = arcs.bulge(point.arc().get(), point.at(), next.at());
        bulge.ifPresent(polygon::arc);
        sound &= bulge.isPresent();
      }
    }
    if (!sound) {
      return Optional.empty();
    }
    List<DrawnRing.Corner> corners =
        points.stream().map(p -> new DrawnRing.Corner(p.at(), p.value())).toList();
    try {
      return Optional.of(new DrawnRing(polygon.close(), whole, corners));
    } catch (InvalidOutlineException e) {
      for (OutlineFault fault : e.faults()) {
        Located at =
            corners.stream()
                .filter(corner -> corner.at().equals(fault.where()))
                .map(DrawnRing.Corner::value)
                .findFirst()
                .orElse(whole);
        Faults.report(reading, at, fault);
      }
      return Optional.empty();
    }
  }

  private Optional<Drawn> point(Located value) {
    if (value instanceof LocatedArray list) {
      Optional<Point> at = lengths.place(value);
      Optional<Double> fillet =
          list.elements().size() > 2 ? radius(list.elements().get(2)) : Optional.of(0.0);
      return at.isPresent() && fillet.isPresent()
          ? Optional.of(new Drawn(value, at.get(), fillet.get(), Optional.empty(), ""))
          : Optional.empty();
    }
    return reading.fields("cornerObject", value).flatMap(fields -> point(value, fields));
  }

  private Optional<Drawn> point(Located value, Fields fields) {
    Optional<Point> at = fields.require("at").flatMap(lengths::place);
    Optional<Double> fillet = fields.find("fillet").map(this::radius).orElse(Optional.of(0.0));
    Optional<Located> arc = fields.find("arc");
    String face = fields.findText("face");
    return at.isPresent() && fillet.isPresent()
        ? Optional.of(new Drawn(value, at.get(), fillet.get(), arc, face))
        : Optional.empty();
  }

  private Optional<DrawnRing> standard(Located value, Fields fields) {
    Optional<Located> circle = fields.find("circle");
    Optional<Located> slot = fields.find("roundedSlot");
    Optional<Located> rectangle = fields.find("rectangle");
    Optional<Ring> ring = Optional.empty();
    if (circle.isPresent()) {
      ring = circle.flatMap(v -> reading.fields("circle", v)).flatMap(this::circle);
    } else if (slot.isPresent()) {
      ring = slot.flatMap(v -> reading.fields("roundedSlot", v)).flatMap(this::roundedSlot);
    } else if (rectangle.isPresent()) {
      ring = rectangle.flatMap(v -> reading.fields("rectangle", v)).flatMap(this::rectangle);
    } else {
      reading.gap(value.pointer());
    }
    return ring.map(r -> new DrawnRing(r, value, List.of()));
  }

  private Optional<Ring> circle(Fields fields) {
    Optional<Point> centre = fields.require("centre").flatMap(lengths::place);
    Optional<Double> diameter = fields.require("diameter").flatMap(this::width);
    return centre.isPresent() && diameter.isPresent()
        ? sound(fields, () -> Ring.circle(centre.get(), diameter.get() / 2))
        : Optional.empty();
  }

  private Optional<Ring> roundedSlot(Fields fields) {
    Optional<Point> from = fields.require("from").flatMap(lengths::place);
    Optional<Point> to = fields.require("to").flatMap(lengths::place);
    Optional<Double> width = fields.require("width").flatMap(this::width);
    if (from.isEmpty() || to.isEmpty() || width.isEmpty()) {
      return Optional.empty();
    }
    Point along = to.get().minus(from.get());
    if (along.length() < ONE_PLACE) {
      return sameEnds(fields.object());
    }
    Point side = along.quarterTurn().times(width.get() / 2 / along.length());
    Point[] at = {
      from.get().minus(side), to.get().minus(side), to.get().plus(side), from.get().plus(side)
    };
    return sound(
        fields,
        () ->
            new Ring(
                List.of(
                    new StraightEdge(at[0], at[1]),
                    new ArcEdge(at[1], at[2], 1),
                    new StraightEdge(at[2], at[3]),
                    new ArcEdge(at[3], at[0], 1))));
  }

  /** The ring, unless its sizes leave it no inside. */
  private Optional<Ring> sound(Fields fields, Supplier<Ring> ring) {
    try {
      return Optional.of(ring.get());
    } catch (InvalidOutlineException e) {
      Faults.report(reading, fields.object(), e.faults().get(0));
      return Optional.empty();
    }
  }

  private Optional<Ring> rectangle(Fields fields) {
    Optional<Point> from = fields.require("from").flatMap(lengths::place);
    Optional<Point> to = fields.require("to").flatMap(lengths::place);
    Optional<Double> fillet = fields.find("fillet").map(this::radius).orElse(Optional.of(0.0));
    if (from.isEmpty() || to.isEmpty() || fillet.isEmpty()) {
      return Optional.empty();
    }
    double y0 = Math.min(from.get().y(), to.get().y());
    double y1 = Math.max(from.get().y(), to.get().y());
    double z0 = Math.min(from.get().z(), to.get().z());
    double z1 = Math.max(from.get().z(), to.get().z());
    if (y1 - y0 < ONE_PLACE || z1 - z0 < ONE_PLACE) {
      return sameEnds(fields.object());
    }
    double r = fillet.get();
    return sound(
        fields,
        () ->
            new RoundedPolygon()
                .corner(y0, z0, r)
                .corner(y1, z0, r)
                .corner(y1, z1, r)
                .corner(y0, z1, r)
                .close());
  }

  /** A width between round ends, mm. */
  private Optional<Double> width(Located value) {
    Optional<Double> width = lengths.positive(value);
    if (width.isPresent() && width.get() < 2 * LEAST_RADIUS) {
      reading.error(
          value,
          value.words() + " between round ends",
          "at least " + 2 * LEAST_RADIUS + " mm",
          "correct the number");
      return Optional.empty();
    }
    return width;
  }

  /** A radius of a corner, mm; 0 for a sharp one. */
  private Optional<Double> radius(Located value) {
    Optional<Double> radius = lengths.notNegative(value);
    if (radius.isPresent() && radius.get() > 0 && radius.get() < LEAST_RADIUS) {
      reading.error(
          value,
          value.words() + " as the radius of a corner",
          "0 for a sharp corner, or a radius of at least 0.01 mm",
          "correct the radius");
      return Optional.empty();
    }
    return radius;
  }

  private Optional<Ring> sameEnds(LocatedObject value) {
    reading.error(
        value, "\"from\" and \"to\" that leave no width", "two different places", "correct one");
    return Optional.empty();
  }
}
