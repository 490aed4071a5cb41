package spanledger.resistance.adm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.resistance.member.MemberSection;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/**
 * A wall as the publications look at it under one kind of stress.
 *
 * @param plate the wall
 * @param loading how it is stressed
 * @param near its most compressed edge from the neutral axis, mm; 0 in a column
 * @param far its other edge, negative if it is stretched, mm
 * @param lip the lip along its free edge, present exactly for {@link Loading#LIPPED}
 */
public record SectionElement(
    Plate plate, Loading loading, double near, double far, Optional<Plate> lip) {

  /** A lip starts this near the edge that it stiffens, per both thicknesses. */
  private static final double JOINED = 1.5;

  /** A wall whose edges differ less than this, per its greater distance, is uniformly stressed. */
  private static final double LEVEL = 0.1;

  /** How a wall is stressed. */
  public enum Loading {
    /** Flat, uniform compression; also where compression varies without change of sign. */
    UNIFORM,
    /** The same, with a lip along the edge that is not held. */
    LIPPED,
    /** Flat, both edges held, one stretched or on the neutral axis. */
    BENT,
    /** Flat, the stretched edge held, the compressed one free. */
    BENT_TIP,
    /** A curved wall held along both edges. */
    CURVED,
    /** A whole round tube. */
    ROUND
  }

  /** Edges held: 1 or 2. */
  public int edges() {
    return plate.kind() == PlateKind.INTERNAL ? 2 : 1;
  }

  /** Radius to the middle of a round or curved wall, mm. */
  public double radius() {
    if (loading == Loading.ROUND) {
      return (plate.width() - plate.thickness()) / 2;
    }
    double bulge = Math.abs(plate.bulge());
    return plate.start().distance(plate.end()) * (1 + bulge * bulge) / (4 * bulge);
  }

  /** Width along the middle of the wall, mm. */
  public double developedWidth() {
    return loading == Loading.ROUND ? 2 * Math.PI * radius() : plate.width();
  }

  /** Walls that have no rule here: curved ones with a free edge. */
  public static List<Plate> withoutRule(MemberSection section) {
    return section.walls().stream()
        .filter(plate -> plate.bulge() != 0 && plate.kind() != PlateKind.ROUND)
        .filter(plate -> plate.kind() != PlateKind.INTERNAL)
        .toList();
  }

  /** The walls of a column; flat bars have none that buckles by itself. */
  public static List<SectionElement> ofColumn(MemberSection section) {
    List<SectionElement> elements = new ArrayList<>();
    for (Plate plate : section.walls()) {
      if (plate.kind() != PlateKind.FREE) {
        elements.add(of(plate, section, uniform(plate), 0, 0));
      }
    }
    return elements;
  }

  /**
   * The walls that bending compresses.
   *
   * @param side about which axis and towards which side
   */
  public static List<SectionElement> ofBeam(MemberSection section, BendingSide side) {
    List<SectionElement> elements = new ArrayList<>();
    for (Plate plate : section.walls()) {
      if (plate.kind() != PlateKind.FREE) {
        bent(plate, section, side).ifPresent(elements::add);
      }
    }
    return elements;
  }

  private static Optional<SectionElement> bent(
      Plate plate, MemberSection section, BendingSide side) {
    if (plate.kind() == PlateKind.ROUND) {
      double fibre = side.compressed(section);
      return Optional.of(of(plate, section, Loading.ROUND, fibre, -fibre));
    }
    double start = side.distance(plate.start());
    double end = side.distance(plate.end());
    double near = Math.max(start, end);
    double far = Math.min(start, end);
    if (near <= plate.thickness() / 2) {
      return Optional.empty();
    }
    boolean crossing = far <= 0 && near - far > LEVEL * near;
    Loading loading = uniform(plate);
    if (crossing && plate.bulge() == 0) {
      if (plate.kind() == PlateKind.INTERNAL) {
        loading = Loading.BENT;
      } else if (end > start) {
        loading = Loading.BENT_TIP;
      }
    }
    return Optional.of(of(plate, section, loading, near, far));
  }

  private static SectionElement of(
      Plate plate, MemberSection section, Loading loading, double near, double far) {
    Optional<Plate> lip =
        loading == Loading.UNIFORM && plate.kind() == PlateKind.STIFFENED_OUTSTAND
            ? section.walls().stream().filter(other -> isLip(other, plate)).findFirst()
            : Optional.empty();
    return new SectionElement(plate, lip.isPresent() ? Loading.LIPPED : loading, near, far, lip);
  }

  private static boolean isLip(Plate lip, Plate plate) {
    return !lip.name().equals(plate.name())
        && lip.kind() == PlateKind.OUTSTAND
        && lip.bulge() == 0
        && lip.start().distance(plate.end()) <= JOINED * (lip.thickness() + plate.thickness());
  }

  /** The angle between wall and lip, at most a right one, rad. */
  public double lipAngle() {
    Plate other = lip.orElseThrow();
    Point along = plate.end().minus(plate.start());
    Point across = other.end().minus(other.start());
    double cosine = Math.abs(along.dot(across)) / (along.length() * across.length());
    return Math.acos(Math.min(1, cosine));
  }

  private static Loading uniform(Plate plate) {
    if (plate.kind() == PlateKind.ROUND) {
      return Loading.ROUND;
    }
    return plate.bulge() == 0 ? Loading.UNIFORM : Loading.CURVED;
  }
}
