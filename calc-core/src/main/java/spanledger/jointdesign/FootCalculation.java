package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.envelope.Instance;
import spanledger.frame.Vector;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.ClampFoot;
import spanledger.joint.FacePlace;
import spanledger.joint.JointType;
import spanledger.joint.Tightening;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.SharedForces;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Bolt;
import spanledger.resistance.joint.Friction;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointState;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.joint.Preload;
import spanledger.resistance.joint.SlipFaces;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Works out one foot: pressure, sliding, anchor forces, or slip of a clamp. */
final class FootCalculation {

  private static final CompiledProcedure FACE = ForcesOnFace.PROCEDURE.compile();
  private static final CompiledProcedure PRESSURE = FootPressure.PROCEDURE.compile();
  private static final CompiledProcedure SLIDING = FootSliding.PROCEDURE.compile();
  private static final CompiledProcedure CLAMP = ClampDemand.PROCEDURE.compile();

  /** In how many pieces a plate is divided either way. */
  private static final int PIECES = 4;

  /** How much stiffer the ground under a plate is than one anchor; common practice, no source. */
  private static final double GROUND_PER_ANCHOR = 20;

  /** Of an anchor, N/mm; only its ratio to the ground counts. */
  private static final double ANCHOR = 100_000;

  private static final Source PRACTICE =
      Source.derived("Ground twenty times as stiff as an anchor; common practice, no source");

  /** From which cosine on an axis of the foot lies along a global one. */
  private static final double ALONG = 0.9999;

  private static final String GROUND = "ground";

  private final JointCode code;
  private final JointEnd end;
  private final Vector u;
  private final Vector v;
  private final Vector w;
  private final JointType foot;

  /**
   * @param x the member's own axes, global
   */
  FootCalculation(JointCode code, JointEnd end, Vector x, Vector y, Vector z, JointType foot) {
    this.code = code;
    this.end = end;
    this.u = end.start() ? x : x.times(-1);
    this.v = end.start() ? y : y.times(-1);
    this.w = z;
    this.foot = foot;
  }

  /**
   * Works it out.
   *
   * @param forces N, V_y, V_z, T, M_y, M_z at the member end
   * @throws IllegalArgumentException if the post does not stand upright and square to its plate, or
   *     nothing resists one of the forces
   */
  JointRun run(Instance instance, double[] forces) {
    Working onJoint = JointCalculation.onJoint(end, foot.source(), forces);
    FaceRun face =
        foot instanceof BasePlateFoot plate
            ? plate(plate, onJoint)
            : clamp((ClampFoot) foot, onJoint);
    return new JointRun(end, foot, instance, onJoint, List.of(face));
  }

  private FaceRun plate(BasePlateFoot plate, Working onJoint) {
    String where = end.name() + ", " + plate.name();
    double alongV = along(v, plate);
    double alongW = along(w, plate);
    Working onGround = onGround(onJoint, where);
    JointGeometry body = geometry(plate, alongV, alongW);
    FaceSharing sharing = new FaceSharing(where, body, springs(body, where), plate.source());
    boolean anchored = !plate.anchors().isEmpty();
    SharedForces shared = anchored ? sharing.share(onGround) : sharing.shareOffFace(onGround);
    List<Working> shears = anchored ? sharing.shears(onGround, shared.movement()) : List.of();
    List<Working> tensions = sharing.tensions(shared.movement());
    List<Working> contacts = sharing.contacts(shared.movement());
    double area = alongV * alongW / (PIECES * PIECES);
    List<JointCheck> checks = new ArrayList<>();
    for (Working contact : contacts) {
      Working pressure =
          Working.of(PRESSURE, contact.label())
              .from(contact, "C", "C")
              .given("A", area, where + ", a sixteenth of the plate", plate.source())
              .given(
                  "p_d", plate.allowablePressure(), where + ", allowable pressure", plate.source())
              .run();
      checks.add(
          new JointCheck(
              pressure,
              List.of(
                  new JointUse("η_p", "pressure on the ground", FootPressure.CLAUSE, "p", "p_d"))));
    }
    List<String> open = new ArrayList<>();
    if (!anchored) {
      sliding(plate, onGround, where, checks, open);
    }
    return new FaceRun(
        GROUND,
        onGround,
        shared,
        shears,
        tensions,
        List.of(),
        contacts,
        anchored ? sharing.demands(shears, tensions) : List.of(),
        checks,
        open);
  }

  private static void sliding(
      BasePlateFoot plate,
      Working onGround,
      String where,
      List<JointCheck> checks,
      List<String> open) {
    if (plate.friction().isEmpty()) {
      open.add(
          where
              + ": neither anchors nor friction hold it against sliding; add \"anchors\" or"
              + " \"friction\" to the foot");
      return;
    }
    Working sliding =
        Working.of(SLIDING, where)
            .same(onGround, "N", "V_y", "V_z")
            .given(
                "μ",
                plate.friction().get().lower(),
                where + ", friction",
                plate.friction().get().source())
            .run();
    checks.add(
        new JointCheck(
            sliding,
            List.of(new JointUse("η_s", "sliding of the foot", FootSliding.CLAUSE, "H", "F_μ"))));
  }

  private FaceRun clamp(ClampFoot clamp, Working onJoint) {
    String where = end.name() + ", " + clamp.name();
    Working demand = Working.of(CLAMP, where).same(onJoint, "P_u").run();
    Bolt bolt = new Bolt(clamp.size(), clamp.grade(), false);
    List<JointCheck> checks = new ArrayList<>();
    Feed preload;
    if (clamp.tightening() instanceof Tightening.Torque torque) {
      JointCheck tightened = Preload.of(bolt, torque);
      checks.add(tightened);
      preload = tightened.feed("F_p_min");
    } else {
      Tightening.Preload known = (Tightening.Preload) clamp.tightening();
      preload = new Feed.Given(known.lower(), where + ", least preload", known.source());
    }
    checks.add(
        code.slip(
            new SlipFaces(
                where,
                clamp.bolts(),
                clamp.surfaces(),
                new Friction(clamp.friction().lower(), clamp.friction().source()),
                clamp.source()),
            JointState.ULTIMATE,
            preload,
            new Feed.Given(
                0,
                where + ", pull on the bolts from outside",
                Source.derived("The post pulls across the bolts, not along them")),
            demand.feed("F_a")));
    Working onGround = onGround(onJoint, where);
    return new FaceRun(
        "clamp",
        onGround,
        new SharedForces(
            FaceSharing.forces(onGround),
            List.of(),
            List.of(),
            List.of(),
            FaceSharing.still(),
            FaceSharing.none(),
            0),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        checks,
        List.of());
  }

  /** Forces about the node, where the plate lies, beyond the rigid arm of the member end. */
  private Working onGround(Working onJoint, String where) {
    Vector arm = (end.start() ? end.member().start() : end.member().end()).offset().times(-1);
    return Working.of(FACE, where)
        .given("s_n", 1, where + ", which way it looks", foot.source())
        .from(onJoint, "P_n", "P_u")
        .from(onJoint, "P_a", "P_v")
        .from(onJoint, "P_b", "P_w")
        .from(onJoint, "C_n", "C_u")
        .from(onJoint, "C_a", "C_v")
        .from(onJoint, "C_b", "C_w")
        .given("o_n", arm.dot(u), where + ", node from the member end along u", foot.source())
        .given("o_a", arm.dot(v), where + ", node from the member end along v", foot.source())
        .given("o_b", arm.dot(w), where + ", node from the member end along w", foot.source())
        .run();
  }

  /** Only how stiff anchors and ground are beside each other counts. */
  private static FaceSprings springs(JointGeometry body, String where) {
    Feed anchor = new Feed.Given(ANCHOR, where + ", an anchor; only its ratio counts", PRACTICE);
    double piece = body.contacts().get(0).stiffness();
    return new FaceSprings(
        body.bolts().stream().map(b -> anchor).toList(),
        new Feed.Given(piece, where + ", a piece of the ground; its ratio counts", PRACTICE),
        Optional.empty());
  }

  private double along(Vector axis, BasePlateFoot plate) {
    if (Math.abs(axis.x()) > ALONG) {
      return plate.lengthX();
    }
    if (Math.abs(axis.y()) > ALONG) {
      return plate.lengthY();
    }
    throw new IllegalArgumentException(
        "The post does not stand upright, or its section is turned out of X and Y, so nobody can"
            + " tell how its plate lies. Set it upright and square, or check this foot by hand.");
  }

  private JointGeometry geometry(BasePlateFoot plate, double alongV, double alongW) {
    List<BoltPlace> anchors = new ArrayList<>();
    for (FacePlace at : plate.anchors()) {
      Vector place = new Vector(at.a(), at.b(), 0);
      anchors.add(
          new BoltPlace(
              "anchor " + (anchors.size() + 1), place.dot(v), place.dot(w), 1, 1, ANCHOR));
    }
    double bedding = GROUND_PER_ANCHOR * ANCHOR / (alongV * alongW);
    return new JointGeometry(
        anchors,
        List.of(),
        ContactPoint.rectangle(GROUND, 0, 0, alongV, alongW, PIECES, PIECES, bedding));
  }
}
