package spanledger.overturning;

import java.util.ArrayList;
import java.util.List;
import spanledger.action.ActionCategory;
import spanledger.action.SelfWeight;
import spanledger.action.Surface;
import spanledger.action.UserCase;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.frame.Vector;

/**
 * All permanent loads on a structure.
 *
 * @param members the weight of each member, in the frame's order
 * @param ballast the weight of each ballast, in the job's order
 * @param finishes the weight on each floor that has any
 * @param given permanent loads of the job's own cases
 */
public record PermanentLoads(
    List<LineWeight> members,
    List<LineWeight> ballast,
    List<FloorWeight> finishes,
    List<Acting> given) {

  public PermanentLoads {
    members = List.copyOf(members);
    ballast = List.copyOf(ballast);
    finishes = List.copyOf(finishes);
    given = List.copyOf(given);
  }

  static PermanentLoads of(StandingStructure structure, Standing standing) {
    List<LineWeight> members = new ArrayList<>();
    for (Member member : structure.frame().members()) {
      members.add(weight(member, structure.frame().segmentsOf(member)));
    }
    List<LineWeight> ballast = new ArrayList<>();
    for (Standing.Ballast one : standing.ballast()) {
      ballast.add(LineWeight.at(one.name(), one.place(), one.mass() * SelfWeight.GRAVITY));
    }
    List<FloorWeight> finishes = new ArrayList<>();
    for (Surface floor : structure.floors()) {
      if (floor.finishes() > 0) {
        finishes.add(new FloorWeight(floor, floor.finishes()));
      }
    }
    List<Acting> given = new ArrayList<>();
    for (UserCase user : structure.userCases()) {
      if (user.category() == ActionCategory.PERMANENT) {
        given.addAll(LoadForces.of(user.loads()));
      }
    }
    return new PermanentLoads(members, ballast, finishes, given);
  }

  private static LineWeight weight(Member member, List<Segment> segments) {
    Vector from = segments.get(0).from();
    Vector to = segments.get(segments.size() - 1).to();
    return new LineWeight(
        member.name(),
        from,
        to,
        MemberWeight.of(member.section().properties().area(), member.alloy().density(), from, to));
  }

  /** The moments of all of them about a line. */
  PermanentMoments about(TippingEdge edge) {
    PermanentMoments sum = PermanentMoments.NONE;
    for (LineWeight member : members) {
      sum = sum.plus(member.about(edge));
    }
    for (LineWeight one : ballast) {
      sum = sum.plus(one.about(edge));
    }
    for (FloorWeight floor : finishes) {
      sum = sum.plus(floor.about(edge));
    }
    for (Acting one : given) {
      sum = sum.plus(about(one, edge));
    }
    return sum;
  }

  /** The moments of a permanent load; a resultant holds or tips as a whole. */
  public static PermanentMoments about(Acting load, TippingEdge edge) {
    if (load instanceof LineWeight line) {
      return line.about(edge);
    }
    if (load instanceof FloorWeight floor) {
      return floor.about(edge);
    }
    PlacedForce force = (PlacedForce) load;
    double moment = force.about(edge);
    return new PermanentMoments(
        Math.max(0, -moment),
        Math.max(0, moment),
        Math.max(0, -force.force().z()) * edge.above(force.place()));
  }

  /** Their whole weight, N, upward loads taken off. */
  public double weight() {
    double sum = 0;
    for (LineWeight member : members) {
      sum += member.weight();
    }
    for (LineWeight one : ballast) {
      sum += one.weight();
    }
    for (FloorWeight floor : finishes) {
      sum += floor.load();
    }
    for (Acting one : given) {
      sum += one instanceof LineWeight line ? line.weight() : -((PlacedForce) one).force().z();
    }
    return sum;
  }

  /** Level forces among them, which act without a factor of their own. */
  List<PlacedForce> level() {
    List<PlacedForce> forces = new ArrayList<>();
    for (Acting one : given) {
      if (one instanceof PlacedForce force
          && Math.hypot(force.force().x(), force.force().y()) > 0) {
        forces.add(force);
      }
    }
    return forces;
  }
}
