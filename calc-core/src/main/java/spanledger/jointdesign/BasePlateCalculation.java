package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.FacePlace;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.SharedForces;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Works out a base plate: pressure on the ground, anchor forces, sliding. */
final class BasePlateCalculation implements FootCalculation.Face {

  private static final CompiledProcedure PRESSURE = FootPressure.PROCEDURE.compile();
  private static final CompiledProcedure SLIDING = FootSliding.PROCEDURE.compile();

  /** In how many pieces a plate is divided either way. */
  private static final int PIECES = 4;

  /** How much stiffer the ground under a plate is than one anchor; common practice, no source. */
  private static final double GROUND_PER_ANCHOR = 20;

  /** Of an anchor, N/mm; only its ratio to the ground counts. */
  private static final double ANCHOR = 100_000;

  private static final Source PRACTICE =
      Source.derived("Ground twenty times as stiff as an anchor; common practice, no source");

  private static final String GROUND = "ground";

  private final BasePlateFoot plate;
  private final JointGeometry body;

  BasePlateCalculation(BasePlateFoot plate) {
    this.plate = plate;
    this.body = geometry(plate);
  }

  @Override
  public FaceRun run(Working onFoot, String where) {
    Working onGround = FootCalculation.about(plate.offset(), onFoot, where, plate.source());
    FaceSharing sharing = new FaceSharing(where, body, springs(where), plate.source());
    boolean anchored = !plate.anchors().isEmpty();
    SharedForces shared = anchored ? sharing.share(onGround) : sharing.shareOffFace(onGround);
    List<Working> shears = anchored ? sharing.shears(onGround, shared.movement()) : List.of();
    List<Working> tensions = sharing.tensions(shared.movement());
    List<Working> contacts = sharing.contacts(shared.movement());
    List<JointCheck> checks = new ArrayList<>();
    contacts.forEach(contact -> checks.add(pressure(contact, where)));
    List<String> open = new ArrayList<>();
    if (!anchored) {
      sliding(onGround, where, checks, open);
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

  private JointCheck pressure(Working contact, String where) {
    double area = plate.lengthX() * plate.lengthY() / (PIECES * PIECES);
    Working pressure =
        Working.of(PRESSURE, contact.label())
            .from(contact, "C", "C")
            .given("A", area, where + ", a sixteenth of the plate", plate.source())
            .given("p_d", plate.allowablePressure(), where + ", allowable pressure", plate.source())
            .run();
    return new JointCheck(
        pressure,
        List.of(new JointUse("η_p", "pressure on the ground", FootPressure.CLAUSE, "p", "p_d")));
  }

  private void sliding(Working onGround, String where, List<JointCheck> checks, List<String> open) {
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

  /** Only how stiff anchors and ground are beside each other counts. */
  private FaceSprings springs(String where) {
    Feed anchor = new Feed.Given(ANCHOR, where + ", an anchor; only its ratio counts", PRACTICE);
    double piece = body.contacts().get(0).stiffness();
    return new FaceSprings(
        body.bolts().stream().map(b -> anchor).toList(),
        new Feed.Given(piece, where + ", a piece of the ground; its ratio counts", PRACTICE),
        Optional.empty());
  }

  private static JointGeometry geometry(BasePlateFoot plate) {
    List<BoltPlace> anchors = new ArrayList<>();
    for (FacePlace at : plate.anchors()) {
      anchors.add(new BoltPlace("anchor " + (anchors.size() + 1), at.a(), at.b(), 1, 1, ANCHOR));
    }
    double bedding = GROUND_PER_ANCHOR * ANCHOR / (plate.lengthX() * plate.lengthY());
    return new JointGeometry(
        anchors,
        List.of(),
        ContactPoint.rectangle(
            GROUND, 0, 0, plate.lengthX(), plate.lengthY(), PIECES, PIECES, bedding));
  }
}
