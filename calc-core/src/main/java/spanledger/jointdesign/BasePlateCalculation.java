package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.frame.Vector;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.FacePlace;
import spanledger.joint.Spindle;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.SharedForces;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Works out a base plate: pressure on the ground, anchor forces, sliding. */
final class BasePlateCalculation implements FootCalculation.Face {

  private static final CompiledProcedure PRESSURE = FootPressure.PROCEDURE.compile();
  private static final CompiledProcedure SPINDLE = SpindleStress.PROCEDURE.compile();

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
  private final JointCode code;
  private final String where;
  private final Optional<PlateCheck> bending;
  private final Optional<Working> width;
  private final JointGeometry body;

  /**
   * @param where the foot, in words
   */
  BasePlateCalculation(JointCode code, BasePlateFoot plate, String where) {
    this.plate = plate;
    this.where = where;
    this.code = code;
    this.bending = plate.bending().map(b -> new PlateCheck(code, plate, b, where));
    this.width = bending.map(PlateCheck::width);
    this.body = geometry();
  }

  @Override
  public FaceRun run(Working onFoot) {
    Working onGround = FootCalculation.about(plate.offset(), onFoot, where, plate.source());
    FaceSharing sharing = new FaceSharing(where, body, springs(), plate.source());
    boolean anchored = !plate.anchors().isEmpty();
    SharedForces shared = anchored ? sharing.share(onGround) : sharing.shareOffFace(onGround);
    List<Working> shears = anchored ? sharing.shears(onGround, shared.movement()) : List.of();
    List<Working> tensions = sharing.tensions(shared.movement());
    List<Working> contacts = sharing.contacts(shared.movement());
    List<JointCheck> checks = new ArrayList<>();
    contacts.forEach(contact -> checks.add(pressure(contact)));
    List<Working> demands = anchored ? sharing.demands(shears, tensions) : List.of();
    List<String> open = new ArrayList<>();
    if (anchored) {
      bending.ifPresent(plates -> checks.addAll(plates.checks(demands)));
    } else {
      FootOnGround.sliding(
          plate.friction(),
          onGround,
          where,
          "\"anchors\" or \"friction\" to the foot",
          checks,
          open);
    }
    plate.spindle().ifPresent(spindle -> checks.add(spindle(spindle, onFoot)));
    if (bending.isEmpty()) {
      open.add(
          where
              + ": whether its plate bends is not known; add \"plate\" to the foot, with its"
              + " thickness, its material and what stands on it");
    }
    return new FaceRun(
        GROUND, onGround, shared, shears, tensions, List.of(), contacts, demands, checks, open);
  }

  private JointCheck pressure(Working contact) {
    Feed area =
        width
            .map(plates -> plates.feed("A"))
            .orElseGet(
                () ->
                    new Feed.Given(
                        plate.lengthX() * plate.lengthY() / (PIECES * PIECES),
                        where + ", a sixteenth of the plate",
                        plate.source()));
    Working pressure =
        Working.of(PRESSURE, contact.label())
            .from(contact, "C", "C")
            .with("A", area)
            .given("p_d", plate.allowablePressure(), where + ", allowable pressure", plate.source())
            .run();
    return new JointCheck(
        pressure,
        List.of(new JointUse("η_p", "pressure on the ground", FootPressure.CLAUSE, "p", "p_d")));
  }

  private JointCheck spindle(Spindle spindle, Working onFoot) {
    String name = where + ", spindle";
    Source source = spindle.source();
    // The node is on the ground; the spindle is guided right above it.
    Working guided =
        FootCalculation.about(new Vector(0, 0, spindle.extension()), onFoot, name, source);
    Working stress =
        Working.of(SPINDLE, name)
            .same(guided, "N", "M_y", "M_z")
            .given("d", spindle.rootDiameter(), name + ", root diameter", source)
            .given("L", spindle.extension(), name + ", extension", source)
            .given("e", spindle.eccentricity(), name + ", eccentricity", source)
            .given(
                "E",
                spindle.metal().youngsModulus(),
                name + ", modulus",
                spindle.metal().modulusSource())
            .from(PlateCheck.strengths(code, spindle.metal(), source), "f_od", "f_od")
            .run();
    return new JointCheck(
        stress,
        List.of(
            new JointUse(
                "η_sp", "spindle in compression and bending", SpindleStress.CLAUSE, "σ", "f_od")));
  }

  /** Only how stiff anchors and ground are beside each other counts. */
  private FaceSprings springs() {
    Feed anchor = new Feed.Given(ANCHOR, where + ", an anchor; only its ratio counts", PRACTICE);
    double piece = body.contacts().get(0).stiffness();
    return new FaceSprings(
        body.bolts().stream().map(b -> anchor).toList(),
        new Feed.Given(piece, where + ", a piece of the ground; its ratio counts", PRACTICE),
        Optional.empty());
  }

  private JointGeometry geometry() {
    List<BoltPlace> anchors = new ArrayList<>();
    for (FacePlace at : plate.anchors()) {
      anchors.add(new BoltPlace("anchor " + (anchors.size() + 1), at.a(), at.b(), 1, 1, ANCHOR));
    }
    double first = width.map(plates -> plates.value("B_1")).orElse(plate.lengthX());
    double second = width.map(plates -> plates.value("B_2")).orElse(plate.lengthY());
    double bedding = GROUND_PER_ANCHOR * ANCHOR / (first * second);
    return new JointGeometry(
        anchors,
        List.of(),
        ContactPoint.rectangle(
            GROUND,
            width.map(plates -> plates.value("e_1")).orElse(0.0),
            width.map(plates -> plates.value("e_2")).orElse(0.0),
            first,
            second,
            PIECES,
            PIECES,
            bedding));
  }
}
