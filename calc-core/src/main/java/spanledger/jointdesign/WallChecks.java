package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import spanledger.joint.FacePlace;
import spanledger.joint.FaceWall;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.SlotLips;
import spanledger.joint.sharing.ContactPoint;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.WallBetweenWebs;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * Checks the wall behind a face, row by row: for the pull of the bolts, and apart from it for what
 * the joint presses; neither relieves the other.
 */
final class WallChecks {

  /**
   * Loads nearer to each other along the wall are in one row, whatever rounding of sizes did, mm.
   */
  private static final double ROW = 0.5;

  private final JointCode code;
  private final JointFace face;
  private final FaceWall wall;
  private final String where;

  WallChecks(JointCode code, JointFace face, FaceWall wall, String where) {
    this.code = code;
    this.face = face;
    this.wall = wall;
    this.where = where;
  }

  private record At(String name, Feed force, double part, double along, double toWeb) {}

  /**
   * All rows.
   *
   * @param pulls of the bolts, in order
   * @param bed the pieces of the bed
   * @param contacts what each of them presses
   */
  List<JointCheck> check(List<Feed> pulls, List<ContactPoint> bed, List<Working> contacts) {
    List<JointCheck> checks = new ArrayList<>(rows(pulled(pulls), "pulled"));
    if (!bearsOnWebs()) {
      checks.addAll(rows(pressed(bed, contacts), "pressed"));
    }
    return checks;
  }

  /** Whether the first ply reaches over both webs, so that what it presses goes into them. */
  private boolean bearsOnWebs() {
    Ply ply = face.plies().get(0);
    return wall.toWeb(ply.from().a(), ply.from().b()) <= 0
        && wall.toWeb(ply.to().a(), ply.to().b()) <= 0
        && across(ply.from()) < wall.middle()
        && across(ply.to()) > wall.middle();
  }

  private double across(FacePlace place) {
    return wall.alongFirst() ? place.b() : place.a();
  }

  /** Bolts pull where their heads are; heads in a slot pull at the roots of both lips. */
  private List<At> pulled(List<Feed> pulls) {
    List<At> loads = new ArrayList<>();
    for (int i = 0; i < pulls.size(); i++) {
      FacePlace place = face.bolts().places().get(i);
      String name = "bolt " + (i + 1);
      double along = wall.along(place.a(), place.b());
      if (face.lips().isPresent()) {
        double root = root(face.lips().get());
        for (int side = -1; side <= 1; side += 2) {
          double toWeb = toWeb(across(place) + side * root);
          loads.add(
              new At(
                  name + (side < 0 ? ", one lip" : ", other lip"),
                  pulls.get(i),
                  0.5,
                  along,
                  toWeb));
        }
      } else {
        loads.add(new At(name, pulls.get(i), 1, along, toWeb(across(place))));
      }
    }
    return loads;
  }

  private static double root(SlotLips lips) {
    return lips.opening() / 2 + lips.reach();
  }

  private double toWeb(double across) {
    return wall.width() / 2 - Math.abs(across - wall.middle());
  }

  private List<At> pressed(List<ContactPoint> bed, List<Working> contacts) {
    List<At> loads = new ArrayList<>();
    for (int i = 0; i < bed.size(); i++) {
      ContactPoint piece = bed.get(i);
      loads.add(
          new At(
              piece.name(),
              contacts.get(i).feed("C"),
              1,
              wall.along(piece.y(), piece.z()),
              wall.toWeb(piece.y(), piece.z())));
    }
    return loads;
  }

  private List<JointCheck> rows(List<At> loads, String how) {
    TreeMap<Double, List<At>> rows = new TreeMap<>();
    for (At load : loads) {
      Double near = rows.floorKey(load.along() + ROW);
      double key = near != null && load.along() - near < ROW ? near : load.along();
      rows.computeIfAbsent(key, k -> new ArrayList<>()).add(load);
    }
    List<JointCheck> checks = new ArrayList<>();
    int number = 0;
    for (Map.Entry<Double, List<At>> row : rows.entrySet()) {
      number++;
      double first = half(rows.lowerKey(row.getKey()), row.getKey());
      double second = half(rows.higherKey(row.getKey()), row.getKey());
      List<WallBetweenWebs.Load> own = new ArrayList<>();
      for (At load : row.getValue()) {
        if (load.toWeb() > 0) {
          own.add(
              new WallBetweenWebs.Load(
                  load.name(), load.force(), load.part(), load.toWeb(), first, second));
        }
      }
      if (!own.isEmpty()) {
        checks.add(code.wall(row(where + ", wall " + how + ", row " + number, own)));
      }
    }
    return checks;
  }

  private WallBetweenWebs row(String name, List<WallBetweenWebs.Load> loads) {
    return new WallBetweenWebs(
        name,
        Metal.of(wall.alloy()),
        wall.width(),
        wall.thickness(),
        wall.clamped(),
        loads,
        wall.source());
  }

  /** Half way to the next row, or to the end of the wall; at most the width, which is enough. */
  private double half(@Nullable Double next, double own) {
    double length = next == null ? wall.toEnd() : Math.abs(next - own) / 2;
    return Math.min(length, wall.width());
  }
}
