package spanledger.resistance.adm;

import java.util.LinkedHashMap;
import java.util.Map;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.Weld;
import spanledger.section.plate.Plate;

/** Areas that holes take away and welds soften. */
public final class SoftArea {

  /** Where holes leave less, the section is all but cut through. */
  private static final double LEAST_LEFT = 0.01;

  private final MemberCase member;
  private final double reach;

  /**
   * @param reach of the softened zone to either side of a weld, mm, where a weld has none of its
   *     own
   */
  public SoftArea(MemberCase member, double reach) {
    this.member = member;
    this.reach = reach;
  }

  /** Area left beside the worst group of holes in one cut. */
  public Figured net(MemberInputs inputs) {
    double most = worst();
    double area = member.section().properties().area() - most;
    return inputs.section(area, most == 0 ? "A, no holes" : "A less the worst group of holes");
  }

  /** Area lost to the worst group of holes in one cut, mm². */
  private double worst() {
    Map<String, Double> lost = new LinkedHashMap<>();
    for (Hole hole : member.holes()) {
      double thickness = wall(hole).thickness();
      lost.merge(hole.name(), hole.diameter() * thickness, Double::sum);
    }
    return lost.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /** An area for shear less the worst group of holes, as if all of them were in it. */
  public Figured netShear(MemberInputs inputs, double area, String what) {
    double left = Math.max(area - worst(), area * LEAST_LEFT);
    return inputs.section(left, what + (member.holes().isEmpty() ? ", no holes" : " less holes"));
  }

  /** The plastic modulus less the first moments of the worst group of holes. */
  public Figured netPlastic(MemberInputs inputs, BendingSide side) {
    Map<String, Double> lost = new LinkedHashMap<>();
    for (Hole hole : member.holes()) {
      Plate plate = wall(hole);
      double along = hole.fromStart() / plate.start().distance(plate.end());
      double arm =
          Math.abs(side.distance(plate.start().towards(plate.end(), along)))
              + (along > 0 ? hole.diameter() / 2 : 0);
      lost.merge(hole.name(), hole.diameter() * plate.thickness() * arm, Double::sum);
    }
    double most = lost.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    double plastic = side.plastic(member.section());
    return inputs.section(
        Math.max(plastic - most, plastic * LEAST_LEFT),
        "plastic modulus" + (most == 0 ? ", no holes" : " less the worst group of holes"));
  }

  private Plate wall(Hole hole) {
    return member.section().wall(hole.plate()).orElseThrow();
  }

  /** Area softened by welds along the member. */
  public Figured along(MemberInputs inputs) {
    double area = 0;
    for (Weld weld : member.welds()) {
      if (weld instanceof Weld.Along along) {
        Plate plate = member.section().wall(along.plate()).orElseThrow();
        double half = along.reach().orElse(reach);
        double from = Math.max(0, along.fromStart() - half);
        double to = Math.min(plate.width(), along.fromStart() + half);
        area += Math.max(0, to - from) * plate.thickness();
      }
    }
    return inputs.section(
        Math.min(area, member.section().properties().area()), "area softened by welds along it");
  }

  /** The whole section where a weld runs across, else what welds along the member soften. */
  public Figured anywhere(MemberInputs inputs) {
    return hasAcross()
        ? inputs.section(member.section().properties().area(), "A, softened by a weld across")
        : along(inputs);
  }

  /** What welds anywhere soften of the net section. */
  public Figured ofNet(MemberInputs inputs) {
    Figured net = net(inputs);
    Figured soft = anywhere(inputs);
    return soft.value() <= net.value() ? soft : net;
  }

  /** Whether a weld runs across the member. */
  public boolean hasAcross() {
    return member.welds().stream().anyMatch(Weld.Across.class::isInstance);
  }

  /** Whether a weld runs along the member. */
  public boolean hasAlong() {
    return member.welds().stream().anyMatch(Weld.Along.class::isInstance);
  }

  /** The reach of a weld, mm. */
  public double reach(Weld.Across weld) {
    return weld.reach().orElse(reach);
  }
}
