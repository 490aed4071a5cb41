package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.joint.BoltHead;
import spanledger.joint.FaceBolts;
import spanledger.joint.FaceKeys;
import spanledger.joint.FacePlace;
import spanledger.joint.FaceWall;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.SlotLips;
import spanledger.joint.Steel;
import spanledger.joint.stiffness.BedPiece;
import spanledger.joint.stiffness.BoltStretch;
import spanledger.joint.stiffness.KeyTooth;
import spanledger.joint.stiffness.LipBending;
import spanledger.joint.stiffness.PlateBending;
import spanledger.joint.stiffness.SpringsInSeries;
import spanledger.joint.stiffness.WallBending;
import spanledger.material.Alloy;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.LipHold;
import spanledger.resistance.joint.TStub;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * Works out how stiff the parts of a face are, each by its procedure: bolts with the leg or the
 * lips that they bend in series, keys, pieces of the bed.
 */
final class FaceStiffness {

  private static final CompiledProcedure STRETCH = BoltStretch.PROCEDURE.compile();
  private static final CompiledProcedure PLATE = PlateBending.PROCEDURE.compile();
  private static final CompiledProcedure LIPS = LipBending.PROCEDURE.compile();
  private static final CompiledProcedure TWO = SpringsInSeries.TWO.compile();
  private static final CompiledProcedure THREE = SpringsInSeries.THREE.compile();
  private static final CompiledProcedure FOUR = SpringsInSeries.FOUR.compile();
  private static final CompiledProcedure WALL = WallBending.PROCEDURE.compile();
  private static final CompiledProcedure KEY = KeyTooth.PROCEDURE.compile();
  private static final CompiledProcedure BED = BedPiece.PROCEDURE.compile();

  /** A step of a run that is a stiffness. */
  record Spring(Working run, String symbol) {

    double value() {
      return run.value(symbol);
    }

    Feed feed() {
      return run.feed(symbol);
    }
  }

  private final JointFace face;
  private final String where;
  private final Source source;

  /**
   * @param where the joint and the face, in words
   */
  FaceStiffness(JointFace face, String where, Source source) {
    this.face = face;
    this.where = where;
    this.source = source;
  }

  /**
   * Each bolt off the face: its stretch, the leg and lips that it bends, the wall behind it.
   *
   * @throws IllegalArgumentException if a bolt lies where no leg can bend
   */
  List<Spring> bolts() {
    Spring stretch = stretch();
    List<Spring> bolts = new ArrayList<>();
    for (int i = 0; i < face.bolts().places().size(); i++) {
      String name = where + ", bolt " + (i + 1);
      List<Spring> chain = new ArrayList<>(List.of(stretch));
      int index = i;
      face.leg()
          .ifPresent(line -> chain.add(plate(LegStub.of(face, line, index, name, source), name)));
      if (face.bolts().head() instanceof BoltHead.InSlot head && face.lips().isPresent()) {
        SlotLips lips = face.lips().get();
        chain.add(lips(HeadOnLips.lips(face, head, lips, i, name), lips, name));
      }
      face.wall().ifPresent(wall -> chain.add(wall(wall, index, name)));
      bolts.add(inSeries(chain, name));
    }
    return bolts;
  }

  private static Spring inSeries(List<Spring> chain, String name) {
    if (chain.size() == 1) {
      return chain.get(0);
    }
    CompiledProcedure series =
        switch (chain.size()) {
          case 2 -> TWO;
          case 3 -> THREE;
          default -> FOUR;
        };
    Working.Feeding run = Working.of(series, name + " off the face");
    for (int i = 0; i < chain.size(); i++) {
      run.with("k_" + (i + 1), chain.get(i).feed());
    }
    return new Spring(run.run(), "k_x");
  }

  private Spring stretch() {
    FaceBolts bolts = face.bolts();
    double length = face.packing() + bolts.size().nutHeight() / 2;
    if (bolts.head() instanceof BoltHead.InSlot head) {
      length += head.height() / 2 + face.lips().map(SlotLips::thickness).orElse(0.0);
    } else {
      length += bolts.size().headHeight() / 2;
    }
    for (Ply ply : face.plies()) {
      length += ply.thickness();
    }
    boolean stainless = bolts.grade().stainless();
    return new Spring(
        Working.of(STRETCH, where + ", a bolt")
            .given(
                "E",
                stainless ? Steel.AUSTENITIC : Steel.YOUNGS_MODULUS,
                "bolts, modulus",
                Steel.SOURCE)
            .given(
                "A_s",
                bolts.size().stressArea(),
                bolts.size().name() + ", stress area",
                bolts.size().areaSource())
            .given(
                "L_b", length, where + ", plies, packing, half of head and nut of a bolt", source)
            .run(),
        "k_b");
  }

  private static Spring plate(TStub stub, String name) {
    return new Spring(
        Working.of(PLATE, name + ", leg")
            .given("E", stub.metal().youngsModulus(), "leg, modulus", stub.metal().source())
            .from(stub.lengths(), "l_eff", "l_row")
            .given("t", stub.thickness(), stub.name() + ", thickness", stub.source())
            .given("m", stub.toRoot(), stub.name() + ", bolt to root", stub.source())
            .run(),
        "k_p");
  }

  private static Spring lips(LipHold hold, SlotLips lips, String name) {
    double arm = hold.reach() - hold.overlap() / 2;
    double width =
        hold.headLength() + Math.min(arm, hold.beyondFirst()) + Math.min(arm, hold.beyondSecond());
    Source source = lips.source();
    return new Spring(
        Working.of(LIPS, name + ", lips")
            .given("E", modulus(lips.alloy()), "lips, modulus", lips.alloy().source())
            .given("G", lips.alloy().shearModulus(), "lips, shear modulus", lips.alloy().source())
            .given("a", arm, name + ", root of a lip to the middle of the overlap", source)
            .given("t", hold.thickness(), name + ", thickness of a lip", source)
            .given("b_e", width, name + ", head and the arm to both sides, where lips are", source)
            .run(),
        "k_l");
  }

  /** The wall behind a bolt, as if it pulled at its own place. */
  private Spring wall(FaceWall wall, int index, String name) {
    FacePlace place = face.bolts().places().get(index);
    Source given = wall.source();
    return new Spring(
        Working.of(WALL, name + ", wall")
            .given("E", modulus(wall.alloy()), "wall, modulus", wall.alloy().source())
            .given("t", wall.thickness(), where + ", thickness of the wall", given)
            .given("w", wall.width(), where + ", width of the wall between webs", given)
            .given("x", wall.toWeb(place.a(), place.b()), name + ", to the nearer web", given)
            .given("clamped", wall.clamped() ? 1 : 0, where + ", whether webs clamp it", given)
            .run(),
        "k_w");
  }

  private static double modulus(Alloy alloy) {
    return alloy.youngsModulus();
  }

  /** The bearing depth of keys: the lesser of their own and that of the slot's side, mm. */
  static double keyDepth(FaceKeys keys, Optional<SlotLips> lips) {
    return Math.min(keys.depth(), keys.sideDepth(lips).orElse(keys.depth()));
  }

  /** A key, whole. */
  Optional<Spring> key() {
    return face.keys()
        .map(
            keys ->
                new Spring(
                    Working.of(KEY, where + ", a key")
                        .given("E", modulus(keys.alloy()), "keys, modulus", keys.alloy().source())
                        .given(
                            "G",
                            keys.alloy().shearModulus(),
                            "keys, shear modulus",
                            keys.alloy().source())
                        .given("l", keys.length(), where + ", length of a key", source)
                        .given("b", keys.thickness(), where + ", thickness of a key", source)
                        .given(
                            "h",
                            keyDepth(keys, face.lips()),
                            where + ", bearing depth of a key",
                            source)
                        .run(),
                    "k_k"));
  }

  /** A bolt in shear and bearing, alike both ways. */
  Spring shear() {
    return new BoltShearStiffness(face, where, source).spring();
  }

  /** A piece of the bed with these sides, mm. */
  Spring bed(double first, double second) {
    Ply leg = face.plies().get(0);
    return new Spring(
        Working.of(BED, where + ", a piece of the bed")
            .given("E", modulus(leg.alloy()), leg.name() + ", modulus", leg.alloy().source())
            .given("t", leg.thickness(), where + ", " + leg.name() + ", thickness", source)
            .given("a", first, where + ", side of a piece of the bed, first axis", source)
            .given("b", second, where + ", side of a piece of the bed, second axis", source)
            .run(),
        "k_c");
  }
}
