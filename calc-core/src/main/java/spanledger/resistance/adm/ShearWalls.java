package spanledger.resistance.adm;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spanledger.resistance.member.MemberSection;
import spanledger.section.plate.Plate;
import spanledger.section.plate.PlateKind;

/**
 * The walls that carry shear.
 *
 * @param area of the walls in the direction of the shear, mm²
 * @param slenderest the wall that buckles first; none in a solid bar
 */
public record ShearWalls(double area, Optional<Plate> slenderest) {

  /** A wall within this of the direction of the shear, as a cosine, carries it. */
  private static final double ALONG = 0.5;

  /** For shear along y or z. */
  public static ShearWalls along(MemberSection section, boolean z) {
    Optional<Plate> round =
        section.walls().stream().filter(p -> p.kind() == PlateKind.ROUND).findFirst();
    if (round.isPresent()) {
      return new ShearWalls(section.properties().area() / 2, round);
    }
    List<Plate> walls =
        section.walls().stream()
            .filter(p -> p.kind() != PlateKind.FREE && share(p, z) > ALONG)
            .toList();
    double area = walls.stream().mapToDouble(p -> p.width() * p.thickness() * share(p, z)).sum();
    double peak = z ? section.properties().peakShearAreaZ() : section.properties().peakShearAreaY();
    return new ShearWalls(area > 0 ? area : peak, slenderest(walls));
  }

  /** All walls, for torsion. */
  public static ShearWalls around(MemberSection section) {
    List<Plate> walls = section.walls().stream().filter(p -> p.kind() != PlateKind.FREE).toList();
    return new ShearWalls(section.properties().area() / 2, slenderest(walls));
  }

  private static double share(Plate plate, boolean z) {
    double along = z ? plate.end().z() - plate.start().z() : plate.end().y() - plate.start().y();
    return Math.abs(along) / plate.start().distance(plate.end());
  }

  private static Optional<Plate> slenderest(List<Plate> walls) {
    return walls.stream().max(Comparator.comparingDouble(Plate::slenderness));
  }

  /** Whether it is a round tube. */
  public boolean isRound() {
    return slenderest.filter(p -> p.kind() == PlateKind.ROUND).isPresent();
  }
}
