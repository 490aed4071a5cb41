package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import spanledger.action.LimitState;
import spanledger.analysis.SegmentEffect;
import spanledger.analysis.SegmentResponse;
import spanledger.analysis.Side;
import spanledger.envelope.ForceEnvelope;
import spanledger.envelope.ForceExtreme;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;

/**
 * The greatest internal forces of members that are made alike: the greatest of all that the search
 * found, and the greatest under the combinations whose cases are in the workbook, which formulas
 * can prove.
 */
final class ShownForces {

  private static final List<SegmentEffect> EFFECTS =
      List.of(
          SegmentEffect.AXIAL,
          SegmentEffect.SHEAR_Y,
          SegmentEffect.SHEAR_Z,
          SegmentEffect.TORQUE,
          SegmentEffect.MOMENT_Y,
          SegmentEffect.MOMENT_Z);

  /** How much greater, per itself, a force must be to stand for others: more than rounding. */
  private static final double GREATER = 1e-9;

  /**
   * The greatest of one internal force of members alike.
   *
   * @param members their names, in order
   * @param found the greatest in size that the search found
   * @param shown where it is greatest in size under combinations that are in the workbook
   */
  record Row(TreeSet<String> members, ForceExtreme found, Cut shown) {

    /** The same with the cut shown by sums, also if its combination was solved as a state. */
    Row bySum(Predicate<Instance> isState) {
      return isState.test(shown.instance())
          ? new Row(members, found, new Cut(shown.instance(), shown.station(), true))
          : this;
    }
  }

  /** A cut with the greatest size of a force under combinations in the workbook. */
  private record Met(Cut cut, double size) {}

  private final KeptCases kept;
  private final List<Instance> instances;
  private final Map<String, double[][]> byCut = new HashMap<>();

  private ShownForces(KeptCases kept) {
    this.kept = kept;
    this.instances =
        kept.instances().stream()
            .filter(i -> i.combination().template().limitState() == LimitState.STRENGTH)
            .toList();
  }

  /** The rows, members alike together; forces that are nothing but rounding left out. */
  static List<Row> of(List<ForceEnvelope> envelopes, KeptCases kept) {
    Map<String, List<ForceEnvelope>> alike = new LinkedHashMap<>();
    for (ForceEnvelope envelope : envelopes) {
      alike
          .computeIfAbsent(Representatives.make(envelope.member()), k -> new ArrayList<>())
          .add(envelope);
    }
    ShownForces shown = new ShownForces(kept);
    List<Row> rows = new ArrayList<>();
    for (List<ForceEnvelope> group : alike.values()) {
      for (SegmentEffect effect : EFFECTS) {
        shown.add(group, effect, rows);
      }
    }
    return rows;
  }

  private void add(List<ForceEnvelope> group, SegmentEffect effect, List<Row> rows) {
    TreeSet<String> members = new TreeSet<>();
    List<ForceExtreme> extremes = new ArrayList<>();
    for (ForceEnvelope envelope : group) {
      members.add(envelope.member().name());
      envelope.governing().stream()
          .filter(e -> e.effect() == effect && e.governing().value() != 0)
          .forEach(extremes::add);
    }
    if (extremes.isEmpty() || instances.isEmpty()) {
      return;
    }
    ForceExtreme found = extremes.get(0);
    Met met = met(found);
    for (ForceExtreme extreme : extremes.subList(1, extremes.size())) {
      if (size(extreme) > size(found) * (1 + GREATER)) {
        found = extreme;
      }
      Met own = met(extreme);
      if (own.size() > met.size() * (1 + GREATER)) {
        met = own;
      }
    }
    rows.add(new Row(members, found, met.cut()));
  }

  private static double size(ForceExtreme extreme) {
    return Math.abs(extreme.governing().value());
  }

  private Met met(ForceExtreme extreme) {
    Station station = extreme.governing().station();
    int force = EFFECTS.indexOf(extreme.effect());
    double[][] cases =
        byCut.computeIfAbsent(station.segment().index() + "|" + station.x(), k -> forces(station));
    Instance worst = instances.get(0);
    double greatest = -1;
    for (Instance instance : instances) {
      double sum = 0;
      for (KeptCases.Part part : kept.parts(instance)) {
        double factor =
            part.term().map(instance.combination()::factor).orElse(instance.standingFactor());
        sum += factor * cases[part.kept().index()][force];
      }
      if (Math.abs(sum) > greatest * (1 + GREATER)) {
        greatest = Math.abs(sum);
        worst = instance;
      }
    }
    return new Met(new Cut(worst, station), greatest);
  }

  /** The internal forces at a cut, case by case. */
  private double[][] forces(Station station) {
    double[][] forces = new double[kept.cases().size()][EFFECTS.size()];
    for (KeptCases.Kept one : kept.cases()) {
      SegmentResponse response = one.result().response(station.segment());
      response.forces(station.x(), Side.BEFORE, forces[one.index()]);
    }
    return forces;
  }
}
