package spanledger.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A section as a heap of rectangles, worked out the long way (own second moment plus area times
 * distance squared). Independent of the closed formulas under test.
 */
final class Rectangles {

  private record Part(double y, double z, double width, double depth) {
    double area() {
      return width * depth;
    }
  }

  private final List<Part> parts = new ArrayList<>();

  /** Adds the rectangle with corners (y0, z0) and (y1, z1), mm. */
  Rectangles add(double y0, double y1, double z0, double z1) {
    parts.add(new Part((y0 + y1) / 2, (z0 + z1) / 2, y1 - y0, z1 - z0));
    return this;
  }

  static Rectangles of(RectangularHollow s) {
    double h = s.depth();
    double b = s.width();
    double tw = s.webThickness();
    double tf = s.flangeThickness();
    return new Rectangles()
        .add(0, b, 0, tf)
        .add(0, b, h - tf, h)
        .add(0, tw, tf, h - tf)
        .add(b - tw, b, tf, h - tf);
  }

  static Rectangles of(Channel s) {
    double h = s.depth();
    double tf = s.flangeThickness();
    return new Rectangles()
        .add(0, s.width(), 0, tf)
        .add(0, s.width(), h - tf, h)
        .add(0, s.webThickness(), tf, h - tf);
  }

  static Rectangles of(ISection s) {
    double h = s.depth();
    double b = s.width();
    double tf = s.flangeThickness();
    return new Rectangles()
        .add(0, b, 0, tf)
        .add(0, b, h - tf, h)
        .add((b - s.webThickness()) / 2, (b + s.webThickness()) / 2, tf, h - tf);
  }

  static Rectangles of(Angle s) {
    double t = s.thickness();
    return new Rectangles().add(0, s.width(), 0, t).add(0, t, t, s.depth());
  }

  double area() {
    return parts.stream().mapToDouble(Part::area).sum();
  }

  double centroidY() {
    return mean(Part::y);
  }

  double centroidZ() {
    return mean(Part::z);
  }

  /** ∫z² dA about the centroid. */
  double inertiaY() {
    double zc = centroidZ();
    return parts.stream()
        .mapToDouble(p -> p.area() * (p.depth() * p.depth() / 12 + square(p.z() - zc)))
        .sum();
  }

  /** ∫y² dA about the centroid. */
  double inertiaZ() {
    double yc = centroidY();
    return parts.stream()
        .mapToDouble(p -> p.area() * (p.width() * p.width() / 12 + square(p.y() - yc)))
        .sum();
  }

  /** ∫yz dA about the centroid. */
  double productYz() {
    double yc = centroidY();
    double zc = centroidZ();
    return parts.stream().mapToDouble(p -> p.area() * (p.y() - yc) * (p.z() - zc)).sum();
  }

  /** ∫|z - axis| dA with the axis of equal areas found by halving. */
  double plasticY() {
    return plastic(Part::z, Part::depth);
  }

  /** ∫|y - axis| dA with the axis of equal areas found by halving. */
  double plasticZ() {
    return plastic(Part::y, Part::width);
  }

  private double plastic(ToDoubleFunction<Part> middle, ToDoubleFunction<Part> size) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Part p : parts) {
      low = Math.min(low, middle.applyAsDouble(p) - size.applyAsDouble(p) / 2);
      high = Math.max(high, middle.applyAsDouble(p) + size.applyAsDouble(p) / 2);
    }
    for (int i = 0; i < 200; i++) {
      double axis = (low + high) / 2;
      if (areaBelow(axis, middle, size) < area() / 2) {
        low = axis;
      } else {
        high = axis;
      }
    }
    double axis = (low + high) / 2;
    double modulus = 0;
    for (Part p : parts) {
      double from = middle.applyAsDouble(p) - size.applyAsDouble(p) / 2 - axis;
      double to = middle.applyAsDouble(p) + size.applyAsDouble(p) / 2 - axis;
      double across = p.area() / size.applyAsDouble(p);
      modulus += across * (to * Math.abs(to) - from * Math.abs(from)) / 2;
    }
    return modulus;
  }

  private double areaBelow(
      double axis, ToDoubleFunction<Part> middle, ToDoubleFunction<Part> size) {
    double below = 0;
    for (Part p : parts) {
      double from = middle.applyAsDouble(p) - size.applyAsDouble(p) / 2;
      double share = Math.min(1, Math.max(0, (axis - from) / size.applyAsDouble(p)));
      below += share * p.area();
    }
    return below;
  }

  private double mean(ToDoubleFunction<Part> coordinate) {
    return parts.stream().mapToDouble(p -> p.area() * coordinate.applyAsDouble(p)).sum() / area();
  }

  private static double square(double x) {
    return x * x;
  }
}
