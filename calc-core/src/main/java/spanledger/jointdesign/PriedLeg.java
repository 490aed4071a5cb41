package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.joint.BracketLeg;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.JointGeometry;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/**
 * What the bolts and the bed put on a bracket leg, seen from the line where it bends away. The
 * sharing has the pressing of the edge beyond the bolts in their tension; what is left is the pull.
 */
final class PriedLeg {

  private static final CompiledProcedure BEYOND = LegBeyond.PROCEDURE.compile();
  private static final CompiledProcedure PULL = LegPull.PROCEDURE.compile();
  private static final Source SENSE = Source.derived("Sense of the moment about the line");
  private static final Source START = Source.derived("nothing added yet");

  private final JointFace face;
  private final BracketLeg line;
  private final Source source;
  private final List<BoltPlace> bolts;
  private final List<ContactPoint> bed;
  private final List<Working> tensions;
  private final List<Working> contacts;

  /**
   * @param tensions runs of the tension of each bolt
   * @param contacts runs of the pressing of each piece
   */
  PriedLeg(
      JointFace face,
      BracketLeg line,
      Source source,
      JointGeometry geometry,
      List<Working> tensions,
      List<Working> contacts) {
    this.face = face;
    this.line = line;
    this.source = source;
    this.bolts = geometry.bolts();
    this.bed = geometry.contacts();
    this.tensions = tensions;
    this.contacts = contacts;
  }

  /** The pull on the leg at a bolt, step F. */
  Feed pull(int index, Feed tension) {
    boolean above = side(index);
    double farthest = 0;
    for (int i = 0; i < bolts.size(); i++) {
      if (side(i) == above) {
        farthest = Math.max(farthest, away(place(i), above));
      }
    }
    String name = tensions.get(index).label();
    Feed edge = nothing("force");
    Feed moment = nothing("moment");
    for (int i = 0; i < bed.size(); i++) {
      FacePlace at = new FacePlace(bed.get(i).y(), bed.get(i).z());
      double beyond = away(at, above) - farthest;
      if (beyond > 0) {
        Working sum =
            plus(
                edge,
                moment,
                contacts.get(i).feed("C"),
                1,
                beyond,
                contacts.get(i).label(),
                "the outermost bolts");
        edge = sum.feed("S");
        moment = sum.feed("L");
      }
    }
    Feed all = nothing("force");
    for (int i = 0; i < bolts.size(); i++) {
      if (side(i) == above) {
        Working sum =
            plus(
                all,
                nothing("moment"),
                tensions.get(i).feed("F_t"),
                1,
                0,
                tensions.get(i).label(),
                "the bend");
        all = sum.feed("S");
      }
    }
    return Working.of(PULL, name)
        .with("F_B", tension)
        .with("T_B", all)
        .with("C_e", edge)
        .run()
        .feed("F");
  }

  /**
   * Bending of the leg just before its first row of bolts, by all that acts beyond; empty if
   * nothing does.
   */
  Optional<Working> bendingAtBolts(boolean above, double row) {
    Working sum = null;
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < bed.size(); i++) {
      FacePlace at = new FacePlace(bed.get(i).y(), bed.get(i).z());
      parts.add(new Part(contacts.get(i), "C", 1, away(at, above) - row));
    }
    for (int i = 0; i < bolts.size(); i++) {
      parts.add(new Part(tensions.get(i), "F_t", -1, away(place(i), above) - row));
    }
    for (Part part : parts) {
      if (part.beyond() > 0) {
        sum =
            plus(
                sum == null ? nothing("force") : sum.feed("S"),
                sum == null ? nothing("moment") : sum.feed("L"),
                part.run().feed(part.symbol()),
                part.sense(),
                part.beyond(),
                part.run().label(),
                "the first row of bolts");
      }
    }
    return Optional.ofNullable(sum);
  }

  private record Part(Working run, String symbol, int sense, double beyond) {}

  private Working plus(
      Feed force, Feed moment, Feed part, int sense, double beyond, String label, String from) {
    String name = label + ", beyond " + from;
    return Working.of(BEYOND, name)
        .with("S_0", force)
        .with("L_0", moment)
        .with("F", part)
        .given("s", sense, sense > 0 ? "counts" : "takes off", SENSE)
        .given("d", beyond, name + ", distance", source)
        .run();
  }

  private static Feed nothing(String what) {
    return new Feed.Given(0, "no " + what + " added yet", START);
  }

  private FacePlace place(int index) {
    return face.bolts().places().get(index);
  }

  /** Whether a bolt lies beyond the line in the sense of its axis. */
  boolean side(int index) {
    return LegStub.across(place(index), line) > line.at();
  }

  /** How far a place is from the line, on one side of it. */
  double away(FacePlace place, boolean above) {
    double across = LegStub.across(place, line) - line.at();
    return above ? across : -across;
  }
}
