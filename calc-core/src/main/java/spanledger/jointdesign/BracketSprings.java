package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import spanledger.joint.Bracket;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.BracketSharing;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.KeyPlace;
import spanledger.joint.sharing.PlacedFace;
import spanledger.joint.sharing.Softening;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** The springs of all faces of a joint, each part by its own. */
final class BracketSprings {

  private static final CompiledProcedure ADDED = FaceSpringsAdded.PROCEDURE.compile();
  private static final Source ACROSS = Source.derived("A key slides along its slot");

  private final List<List<PlacedFace>> brackets = new ArrayList<>();
  private final List<List<Working>> sums = new ArrayList<>();
  private final Map<SharingBound, BracketSharing> sharings = new EnumMap<>(SharingBound.class);

  /**
   * @throws IllegalArgumentException if a bolt lies where its leg cannot bend
   */
  BracketSprings(BracketJoint joint) {
    for (Bracket bracket : joint.brackets()) {
      List<PlacedFace> placed = new ArrayList<>();
      List<Working> added = new ArrayList<>();
      for (JointFace face : bracket.faces()) {
        String where = joint.name() + ", " + face.name();
        FaceGeometry body = FaceGeometry.of(face, where, bracket.source());
        FaceStiffness.Spring shear = new FaceStiffness(face, where, bracket.source()).shear();
        placed.add(
            new PlacedFace(sheared(body.geometry(), shear.value()), face.normal(), face.origin()));
        added.add(added(body, shear.feed(), where, bracket.source()));
      }
      brackets.add(placed);
      sums.add(added);
    }
  }

  private static JointGeometry sheared(JointGeometry body, double shear) {
    List<BoltPlace> bolts = new ArrayList<>();
    for (BoltPlace bolt : body.bolts()) {
      bolts.add(
          new BoltPlace(bolt.name(), bolt.y(), bolt.z(), shear, shear, bolt.tensionStiffness()));
    }
    return new JointGeometry(bolts, body.keys(), body.contacts());
  }

  private static Working added(FaceGeometry body, Feed shear, String where, Source source) {
    @Nullable Working sum = null;
    for (BoltPlace bolt : body.geometry().bolts()) {
      String name = where + ", " + bolt.name();
      sum =
          before(sum, name)
              .with("k_y", shear)
              .with("k_z", shear)
              .given("y", bolt.y(), name + ", place along the first axis", source)
              .given("z", bolt.z(), name + ", place along the second axis", source)
              .run();
    }
    for (KeyPlace key : body.geometry().keys()) {
      boolean slotAlongFirst = key.slotAngle() == 0;
      Feed half = body.springs().halfKey().orElseThrow();
      Feed none = new Feed.Given(0, where + ", key along its slot", ACROSS);
      for (int side = -1; side <= 1; side += 2) {
        String name = where + ", " + key.name() + (side < 0 ? ", first half" : ", second half");
        double arm = side * key.bearingArm();
        sum =
            before(sum, name)
                .with("k_y", slotAlongFirst ? none : half)
                .with("k_z", slotAlongFirst ? half : none)
                .given(
                    "y",
                    key.y() + (slotAlongFirst ? arm : 0),
                    name + ", its middle along the first axis",
                    source)
                .given(
                    "z",
                    key.z() + (slotAlongFirst ? 0 : arm),
                    name + ", its middle along the second axis",
                    source)
                .run();
      }
    }
    if (sum == null) {
      throw new IllegalArgumentException("Face " + where + " has no bolt.");
    }
    return sum;
  }

  private static Working.Feeding before(@Nullable Working sum, String name) {
    Working.Feeding run = Working.of(ADDED, name + ", in the face");
    for (String symbol : List.of("K_y", "K_z", "S_z", "S_y", "J")) {
      String input = symbol.equals("J") ? "J_0" : symbol + "0";
      if (sum == null) {
        run.given(input, 0, "nothing before the first part", JointFeeds.NOTHING_BEFORE);
      } else {
        run.from(sum, input, symbol);
      }
    }
    return run;
  }

  /** The springs in a face, added up; a run of {@link FaceSpringsAdded}. */
  Working inFace(int bracket, int face) {
    return sums.get(bracket).get(face);
  }

  /** All bodies and springs, as they are worked out. */
  BracketSharing sharing() {
    return new BracketSharing(brackets, Softening.NONE);
  }

  /** All bodies and springs, some of them softer. */
  BracketSharing sharing(SharingBound bound) {
    return sharings.computeIfAbsent(bound, b -> new BracketSharing(brackets, b.softening()));
  }
}
