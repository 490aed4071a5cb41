package spanledger.resistance.member;

import java.util.List;
import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.section.Angle;
import spanledger.section.Channel;
import spanledger.section.ISection;
import spanledger.section.OutlineShape;
import spanledger.section.RectangularHollow;
import spanledger.section.RoundHollow;
import spanledger.section.Section;
import spanledger.section.SectionProperties;
import spanledger.section.Shape;
import spanledger.section.SolidRectangle;
import spanledger.section.SolidRound;
import spanledger.section.outline.Point;

/**
 * What member checks need of every kind of section.
 *
 * <p>Thin-walled closed forms for shear centre and warping of the shapes with sizes: C. F.
 * Kollbrunner and K. Basler, Torsion in Structures, 1969 (from memory).
 */
public final class MemberSections {

  private static final Source THIN =
      Source.derived("Sizes of the section; shear centre and warping of thin walls");

  private MemberSections() {}

  /**
   * The section as member checks look at it.
   *
   * @return nothing for a row of properties, which tells neither walls nor warping; see {@link
   *     #lack}
   */
  public static Optional<MemberSection> of(Section section) {
    Shape shape = section.shape();
    SectionProperties p = section.properties();
    String name = section.name();
    if (shape instanceof OutlineShape outline) {
      return Optional.of(OutlineMemberSection.of(name, outline, p));
    }
    if (shape instanceof RectangularHollow tube) {
      return Optional.of(tube(name, tube, p));
    }
    if (shape instanceof ISection beam) {
      return Optional.of(beam(name, beam, p));
    }
    if (shape instanceof Channel channel) {
      return Optional.of(channel(name, channel, p));
    }
    if (shape instanceof Angle angle) {
      return Optional.of(angle(name, angle, p));
    }
    if (shape instanceof RoundHollow tube) {
      double r = tube.diameter() / 2;
      WallList walls = new WallList().round("wall", tube.diameter(), tube.thickness());
      return Optional.of(symmetric(name, SectionForm.HOLLOW, p, r, r, 0, 0, walls));
    }
    if (shape instanceof SolidRectangle bar) {
      double z = bar.depth() / 2;
      double y = bar.width() / 2;
      return Optional.of(symmetric(name, SectionForm.SOLID, p, z, y, 0, 0, new WallList()));
    }
    if (shape instanceof SolidRound bar) {
      double r = bar.diameter() / 2;
      return Optional.of(symmetric(name, SectionForm.SOLID, p, r, r, 0, 0, new WallList()));
    }
    return Optional.empty();
  }

  /** What a section without walls lacks. */
  public static NotCheckable.Lack lack(Section section) {
    return new NotCheckable.Lack(
        "section "
            + section.name()
            + " is a "
            + section.shape().kind()
            + " and tells neither the places of its walls nor its warping",
        "give its outline, or a shape with sizes");
  }

  private static MemberSection tube(String name, RectangularHollow s, SectionProperties p) {
    double z = s.depth() / 2;
    double y = s.width() / 2;
    double zi = z - s.flangeThickness();
    double yi = y - s.webThickness();
    double zm = z - s.flangeThickness() / 2;
    double ym = y - s.webThickness() / 2;
    WallList walls =
        new WallList()
            .internal("flange top", new Point(-yi, zm), new Point(yi, zm), s.flangeThickness())
            .internal("flange bottom", new Point(-yi, -zm), new Point(yi, -zm), s.flangeThickness())
            .internal("web left", new Point(-ym, -zi), new Point(-ym, zi), s.webThickness())
            .internal("web right", new Point(ym, -zi), new Point(ym, zi), s.webThickness());
    return symmetric(name, SectionForm.HOLLOW, p, z, y, 0, 0, walls);
  }

  private static MemberSection beam(String name, ISection s, SectionProperties p) {
    double z = s.depth() / 2;
    double y = s.width() / 2;
    double zi = z - s.flangeThickness();
    double zm = z - s.flangeThickness() / 2;
    double root = s.webThickness() / 2;
    double tf = s.flangeThickness();
    WallList walls =
        new WallList()
            .outstand("flange top left", new Point(-root, zm), new Point(-y, zm), tf)
            .outstand("flange top right", new Point(root, zm), new Point(y, zm), tf)
            .outstand("flange bottom left", new Point(-root, -zm), new Point(-y, -zm), tf)
            .outstand("flange bottom right", new Point(root, -zm), new Point(y, -zm), tf)
            .internal("web", new Point(0, -zi), new Point(0, zi), s.webThickness());
    double warping = tf * Math.pow(s.width(), 3) / 6 * zm * zm;
    return symmetric(name, SectionForm.OPEN, p, z, y, warping, zm * y, walls);
  }

  private static MemberSection symmetric(
      String name,
      SectionForm form,
      SectionProperties p,
      double z,
      double y,
      double warping,
      double ordinate,
      WallList walls) {
    return new MemberSection(
        name,
        form,
        true,
        p,
        z,
        z,
        y,
        y,
        0,
        0,
        0,
        0,
        warping,
        ordinate,
        walls.walls(),
        Optional.empty(),
        THIN);
  }

  private static MemberSection channel(String name, Channel s, SectionProperties p) {
    double z = s.depth() / 2;
    double tw = s.webThickness();
    double tf = s.flangeThickness();
    double hm = s.depth() - tf;
    double bm = s.width() - tw / 2;
    double zi = z - tf;
    double zm = hm / 2;
    double outstand = s.width() - tw;
    double back = -(zi * tw * tw + tf * s.width() * s.width()) / (2 * (zi * tw + tf * s.width()));
    double e = 3 * bm * bm * tf / (hm * tw + 6 * bm * tf);
    double midline = back + tw / 2;
    double ys = midline - e;
    double warping =
        tf * Math.pow(bm, 3) * hm * hm / 12 * (3 * bm * tf + 2 * hm * tw) / (6 * bm * tf + hm * tw);
    double ordinate = zm * Math.max(bm - e, e);
    WallList walls =
        new WallList()
            .outstand("flange top", new Point(back + tw, zm), new Point(back + s.width(), zm), tf)
            .outstand(
                "flange bottom", new Point(back + tw, -zm), new Point(back + s.width(), -zm), tf)
            .internal("web", new Point(midline, -zi), new Point(midline, zi), tw);
    Rectangles parts =
        new Rectangles()
            .add(new Point(midline, 0), new Point(tw / 2, 0), new Point(0, z))
            .add(
                new Point(back + tw + outstand / 2, zm),
                new Point(outstand / 2, 0),
                new Point(0, tf / 2))
            .add(
                new Point(back + tw + outstand / 2, -zm),
                new Point(outstand / 2, 0),
                new Point(0, tf / 2));
    double wagnerY = ys - parts.cubicMoment().y() / (2 * p.secondMomentZ());
    return new MemberSection(
        name,
        SectionForm.OPEN,
        false,
        p,
        z,
        z,
        back + s.width(),
        -back,
        ys,
        0,
        wagnerY,
        0,
        warping,
        ordinate,
        walls.walls(),
        Optional.empty(),
        THIN);
  }

  /**
   * Legs of thin angles do not warp; what little they do is left out, which is on the safe side.
   */
  private static MemberSection angle(String name, Angle s, SectionProperties p) {
    double t = s.thickness();
    double h = s.depth();
    double b = s.width();
    double area = t * (h + b - t);
    Point centroid =
        new Point(
            (t * b * b + (h - t) * t * t) / (2 * area), (t * h * h + (b - t) * t * t) / (2 * area));
    PrincipalAxes axes = new PrincipalAxes(centroid, p.principalRotation());
    WallList walls =
        new WallList()
            .outstand("leg along z", axes.of(new Point(t / 2, t)), axes.of(new Point(t / 2, h)), t)
            .outstand("leg along y", axes.of(new Point(t, t / 2)), axes.of(new Point(b, t / 2)), t);
    Rectangles parts =
        new Rectangles()
            .add(
                axes.of(new Point(t / 2, h / 2)),
                axes.turned(new Point(t / 2, 0)),
                axes.turned(new Point(0, h / 2)))
            .add(
                axes.of(new Point((t + b) / 2, t / 2)),
                axes.turned(new Point((b - t) / 2, 0)),
                axes.turned(new Point(0, t / 2)));
    Point shearCentre = axes.of(new Point(t / 2, t / 2));
    List<Point> corners =
        List.of(
            axes.of(new Point(0, 0)),
            axes.of(new Point(b, 0)),
            axes.of(new Point(b, t)),
            axes.of(new Point(t, h)),
            axes.of(new Point(0, h)));
    Point cubic = parts.cubicMoment();
    return new MemberSection(
        name,
        SectionForm.OPEN,
        false,
        p,
        corners.stream().mapToDouble(Point::z).max().orElseThrow(),
        -corners.stream().mapToDouble(Point::z).min().orElseThrow(),
        corners.stream().mapToDouble(Point::y).max().orElseThrow(),
        -corners.stream().mapToDouble(Point::y).min().orElseThrow(),
        shearCentre.y(),
        shearCentre.z(),
        shearCentre.y() - cubic.y() / (2 * p.secondMomentZ()),
        shearCentre.z() - cubic.z() / (2 * p.secondMomentY()),
        0,
        0,
        walls.walls(),
        Optional.empty(),
        THIN);
  }
}
