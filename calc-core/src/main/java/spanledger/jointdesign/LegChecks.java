package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import spanledger.joint.BracketLeg;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.LegForces;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.PlateLeg;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Checks a bracket leg where it bends away, and at its first row of bolts, less the holes. */
final class LegChecks {

  private static final CompiledProcedure LEG = LegDemand.PROCEDURE.compile();

  private final JointCode code;
  private final JointFace face;
  private final BracketLeg line;
  private final Ply ply;
  private final String where;
  private final Source source;

  LegChecks(JointCode code, JointFace face, String where, Source source) {
    this.code = code;
    this.face = face;
    this.line = face.leg().orElseThrow();
    this.ply = face.plies().get(0);
    this.where = where;
    this.source = source;
  }

  List<JointCheck> check(Working forces, PriedLeg pried) {
    List<JointCheck> checks = new ArrayList<>();
    String bend = where + ", " + ply.name() + " where it bends away";
    Working demand = demand(forces, bend, line.at());
    checks.add(leg(bend, 0, demand, demand.feed("M_o")));
    for (boolean above : new boolean[] {false, true}) {
      double row = Double.POSITIVE_INFINITY;
      for (FacePlace at : face.bolts().places()) {
        double away = pried.away(at, above);
        row = away > 0 ? Math.min(row, away) : row;
      }
      if (Double.isFinite(row)) {
        checks.add(atBolts(forces, pried, above, row));
      }
    }
    return checks;
  }

  private JointCheck atBolts(Working forces, PriedLeg pried, boolean above, double row) {
    String name = where + ", " + ply.name() + " at its bolts";
    long holes =
        face.bolts().places().stream()
            .filter(at -> Math.abs(pried.away(at, above) - row) < ply.hole())
            .count();
    Feed bending =
        pried
            .bendingAtBolts(above, row)
            .map(sum -> sum.feed("M_o"))
            .orElse(
                new Feed.Given(
                    0, name + ", nothing acts beyond", Source.derived("Equilibrium of the leg")));
    return leg(
        name, holes * ply.hole(), demand(forces, name, line.at() + (above ? row : -row)), bending);
  }

  private JointCheck leg(String name, double holes, Working demand, Feed bending) {
    double width =
        line.acrossFirst() ? ply.to().b() - ply.from().b() : ply.to().a() - ply.from().a();
    return code.leg(
        new PlateLeg(name, Metal.of(ply.alloy()), ply.thickness(), width, holes, source),
        JointState.ULTIMATE,
        new LegForces(bending, demand.feed("M_i"), demand.feed("V"), demand.feed("N_c")));
  }

  private Working demand(Working forces, String name, double place) {
    boolean first = line.acrossFirst();
    return Working.of(LEG, name)
        .same(forces, "N", "T")
        .from(forces, "V_l", first ? "V_z" : "V_y")
        .from(forces, "V_c", first ? "V_y" : "V_z")
        .from(forces, "M", first ? "M_z" : "M_y")
        .given("c", place, name + ", place", source)
        .given("k", first ? 1 : -1, name + ", which axis it crosses", source)
        .run();
  }
}
