package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.HoleInPlate;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.KeyInSlot;
import spanledger.resistance.joint.LegForces;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.PlateLeg;
import spanledger.resistance.joint.ShearPlanes;
import spanledger.resistance.member.Working;

/** Checks the parts of one face by a code. */
final class FaceChecks {

  private static final CompiledProcedure KEY = KeyDemand.PROCEDURE.compile();
  private static final CompiledProcedure LEG = LegDemand.PROCEDURE.compile();
  private static final CompiledProcedure FACE = FaceDemand.PROCEDURE.compile();

  private final JointCode code;
  private final JointFace face;
  private final String where;
  private final Source source;
  private final Bolt bolt;
  private final BoltHold hold;
  private final List<JointCheck> checks = new ArrayList<>();
  private final List<String> open = new ArrayList<>();

  FaceChecks(JointCode code, JointFace face, String where, Source source) {
    this.code = code;
    this.face = face;
    this.where = where;
    this.source = source;
    bolt = new Bolt(face.bolts().size(), face.bolts().grade(), false);
    hold = new BoltHold(code, face, bolt, source);
  }

  /** Checks everything. */
  FaceChecks all(Working forces, List<Working> demands, List<Working> keys) {
    for (int i = 0; i < demands.size(); i++) {
      bolt(i, demands.get(i));
    }
    face.keys().ifPresent(own -> keys(keys));
    face.leg().ifPresent(line -> leg(forces));
    Working shears = Working.of(FACE, where).same(forces, "V_y", "V_z").run();
    blocks(shears);
    FaceSlip slip = new FaceSlip(code, face, bolt, where, source);
    slip.check(shears, mostPulled(demands));
    checks.addAll(slip.checks());
    slip.greatestPreload()
        .flatMap(preload -> hold.tightened(where + ", bolt while it is tightened", preload))
        .ifPresent(checks::add);
    open.addAll(slip.open());
    return this;
  }

  private static Working mostPulled(List<Working> demands) {
    return demands.stream()
        .max(Comparator.comparingDouble(d -> d.value("F_t")))
        .orElseThrow(() -> new IllegalArgumentException("A face needs a bolt."));
  }

  private void bolt(int index, Working demand) {
    String name = where + ", bolt " + (index + 1);
    JointCheck shear =
        code.boltShear(
            bolt,
            new ShearPlanes(
                name,
                face.bolts().shearPlanes(),
                face.bolts().threadInShear(),
                face.packing(),
                lengthOfGroup(),
                source),
            demand.feed("F_v"));
    JointCheck tension = hold.pulled(index, name, demand, checks);
    checks.add(shear);
    checks.add(tension);
    checks.add(code.boltShearAndTension(shear, tension));
    for (Ply ply : face.plies()) {
      bearing(name, ply, index, true, demand);
      bearing(name, ply, index, false, demand);
    }
  }

  private void bearing(String name, Ply ply, int index, boolean alongFirst, Working demand) {
    PlyEdges edges = PlyEdges.of(ply, face.bolts().places(), index, alongFirst);
    HoleInPlate hole =
        new HoleInPlate(
            name + " in " + ply.name() + " along " + letter(alongFirst),
            Metal.of(ply.alloy()),
            ply.thickness(),
            ply.hole(),
            HoleInPlate.Shape.NORMAL,
            edges.end(),
            edges.pitch(),
            edges.edge(),
            edges.gauge(),
            source);
    checks.add(code.bearing(bolt, hole, demand.feed(alongFirst ? "B_y" : "B_z")));
    checks.add(code.distances(bolt, hole));
  }

  private String letter(boolean first) {
    return (first ? face.first() : face.second()).letter();
  }

  private void keys(List<Working> bearings) {
    var own = face.keys().orElseThrow();
    for (int i = 0; i < own.places().size(); i++) {
      String name = where + ", key " + (i + 1);
      Working demand =
          Working.of(KEY, name)
              .from(bearings.get(2 * i), "B_1", "B")
              .from(bearings.get(2 * i + 1), "B_2", "B")
              .run();
      checks.add(
          code.key(
              new KeyInSlot(
                  name,
                  Metal.of(own.alloy()),
                  Metal.of(own.slotAlloy()),
                  own.depth(),
                  own.depth(),
                  own.length(),
                  own.thickness(),
                  source),
              demand.feed("F_k")));
    }
  }

  private void leg(Working forces) {
    var line = face.leg().orElseThrow();
    Ply ply = face.plies().get(0);
    String name = where + ", " + ply.name() + " where it bends away";
    boolean first = line.acrossFirst();
    Working demand =
        Working.of(LEG, name)
            .same(forces, "N", "T")
            .from(forces, "V_l", first ? "V_z" : "V_y")
            .from(forces, "V_c", first ? "V_y" : "V_z")
            .from(forces, "M", first ? "M_z" : "M_y")
            .given("c", line.at(), name + ", place", source)
            .given("k", first ? 1 : -1, name + ", which axis it crosses", source)
            .run();
    double width = first ? ply.to().b() - ply.from().b() : ply.to().a() - ply.from().a();
    checks.add(
        code.leg(
            new PlateLeg(name, Metal.of(ply.alloy()), ply.thickness(), width, 0, source),
            JointState.ULTIMATE,
            new LegForces(
                demand.feed("M_o"), demand.feed("M_i"), demand.feed("V"), demand.feed("N_c"))));
  }

  /** Blocks of the plies; where keys carry the shear across the slot, bolts tear along it only. */
  private void blocks(Working shears) {
    for (Ply ply : face.plies()) {
      for (boolean alongFirst : new boolean[] {true, false}) {
        boolean byKeys = face.keys().map(k -> k.bearsAlongFirst() == alongFirst).orElse(false);
        if (!byKeys) {
          PlyBlock.of(
                  where + ", " + ply.name() + " along " + letter(alongFirst),
                  ply,
                  face.bolts().places(),
                  alongFirst,
                  source)
              .ifPresent(
                  block ->
                      checks.add(
                          code.blockTearing(block, shears.feed(alongFirst ? "H_y" : "H_z"))));
        }
      }
    }
  }

  /** From the first to the last bolt along the longer side of the group, on the safe side, mm. */
  private double lengthOfGroup() {
    double length = 0;
    for (FacePlace one : face.bolts().places()) {
      for (FacePlace other : face.bolts().places()) {
        length = Math.max(length, Math.abs(one.a() - other.a()));
        length = Math.max(length, Math.abs(one.b() - other.b()));
      }
    }
    return length;
  }

  /** What was checked, in order. */
  List<JointCheck> checks() {
    return checks;
  }

  /** What cannot be checked, and what to add. */
  List<String> open() {
    return open;
  }
}
