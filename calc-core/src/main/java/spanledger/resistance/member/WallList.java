package spanledger.resistance.member;

import java.util.ArrayList;
import java.util.List;
import spanledger.section.outline.Point;
import spanledger.section.plate.Certainty;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/** Collects the walls of a shape with sizes. */
final class WallList {

  private final List<Plate> walls = new ArrayList<>();

  /** A wall held at both edges. */
  WallList internal(String name, Point start, Point end, double thickness) {
    return add(name, PlateKind.INTERNAL, start, end, start.distance(end), thickness);
  }

  /** A wall held at its start. */
  WallList outstand(String name, Point root, Point toe, double thickness) {
    return add(name, PlateKind.OUTSTAND, root, toe, root.distance(toe), thickness);
  }

  WallList round(String name, double diameter, double thickness) {
    Point at = new Point((diameter - thickness) / 2, 0);
    return add(name, PlateKind.ROUND, at, at, diameter, thickness);
  }

  private WallList add(
      String name, PlateKind kind, Point start, Point end, double width, double thickness) {
    walls.add(new Plate(name, kind, start, end, 0, width, thickness, Certainty.sure()));
    return this;
  }

  List<Plate> walls() {
    return walls;
  }
}
