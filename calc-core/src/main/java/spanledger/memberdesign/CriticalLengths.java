package spanledger.memberdesign;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import spanledger.analysis.FrameAnalysis;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.Segment;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.stability.BucklingModes;
import spanledger.stability.FrameMode;
import spanledger.stability.FrameStiffness;

/**
 * Buckling lengths from the elastic buckling of the frame, member by member and axis by axis, from
 * the first mode in which the member takes part, in the state that compresses it most.
 *
 * <p>A member takes part if both its bending and the work of its own compression are at least a
 * tenth of what the member with the most has. So a beam that only holds a column, and a pinned
 * column that only leans on others, take part in their own modes, not in those of others. The tenth
 * is judgement (common practice, no source).
 *
 * <p>A member that takes part in no mode below 30 times the forces is given the length as if it
 * buckled there, which is on the safe side. Nothing is said of members that no state compresses.
 */
public final class CriticalLengths implements FrameBucklingLengths {

  /** The share of the most from which a member takes part. */
  private static final double TAKES_PART = 0.1;

  /**
   * Factors beyond this are no longer looked for: a member that takes part in none below uses less
   * than a thirtieth of its buckling force.
   */
  private static final double LIMIT = 30;

  /** Compression below this part of Euler's force counts as none. */
  private static final double NONE = 1e-6;

  /** N, V_y, V_z, T, M_y, M_z. */
  private static final int FORCES = 6;

  private static final int MOST_TRIALS = 6000;

  private static final CompiledProcedure LENGTH = CriticalLength.PROCEDURE.compile();

  /** A state under which the frame may buckle. Immutable. */
  public static final class Axial {
    private final String name;
    private final double[] forces;

    /**
     * A state.
     *
     * @param name of the state
     * @param forces mean axial force of each segment, N, tension positive, copied
     */
    public Axial(String name, double[] forces) {
      this.name = name;
      this.forces = forces.clone();
    }
  }

  private record Key(String member, BucklingMode mode) {}

  private final Map<Key, BucklingLength> lengths = new HashMap<>();

  /**
   * Searches.
   *
   * @param stiffness the frame in the state of its joints and supports that counts
   * @param states whose axial forces matter
   */
  public CriticalLengths(FrameStiffness stiffness, List<Axial> states) {
    Frame frame = stiffness.frame();
    Map<Axial, List<Member>> byState = new HashMap<>();
    for (Member member : frame.members()) {
      Axial most = null;
      for (Axial state : states) {
        double pressed = compression(frame, member, state);
        if (pressed > 0 && (most == null || pressed > compression(frame, member, most))) {
          most = state;
        }
      }
      if (most != null) {
        byState.computeIfAbsent(most, state -> new ArrayList<>()).add(member);
      }
    }
    BucklingModes modes = new BucklingModes(stiffness);
    for (Axial state : states) {
      List<Member> members = byState.getOrDefault(state, List.of());
      if (!members.isEmpty()) {
        new Assignment(frame, state, members).run(modes);
      }
    }
  }

  /**
   * Searches with all joints and supports bearing, also where a foot lifts or a tie slackens in one
   * of the states.
   *
   * @param states at least those that compress each member most; their axial forces count
   */
  public static CriticalLengths of(
      FrameAnalysis analysis, Collection<? extends MemberForces> states) {
    List<Axial> axial = new ArrayList<>();
    double[] start = new double[FORCES];
    double[] end = new double[FORCES];
    for (MemberForces state : states) {
      double[] means = new double[analysis.frame().segments().size()];
      for (Segment segment : analysis.frame().segments()) {
        state.at(new Station(segment, 0), start);
        state.at(new Station(segment, segment.length()), end);
        means[segment.index()] = 0.5 * (start[0] + end[0]);
      }
      axial.add(new Axial(state.instance().words(), means));
    }
    return new CriticalLengths(new FrameStiffness(analysis), axial);
  }

  @Override
  public Optional<BucklingLength> of(Member member, BucklingMode mode) {
    return Optional.ofNullable(lengths.get(new Key(member.name(), mode)));
  }

  /** The greatest compression in a member, N; 0 if it has none. */
  private static double compression(Frame frame, Member member, Axial state) {
    double most = 0;
    for (Segment segment : frame.segmentsOf(member)) {
      most = Math.max(most, -state.forces[segment.index()]);
    }
    double least =
        Math.min(
            member.section().properties().secondMomentY(),
            member.section().properties().secondMomentZ());
    double euler =
        Math.PI * Math.PI * member.alloy().youngsModulus() * least / Math.pow(member.length(), 2);
    return most > NONE * euler ? most : 0;
  }

  /** Goes through the modes of one state. */
  private final class Assignment {
    private final Frame frame;
    private final Axial state;
    private final List<Member> members;
    private int open;

    Assignment(Frame frame, Axial state, List<Member> members) {
      this.frame = frame;
      this.state = state;
      this.members = members;
      open = 2 * members.size();
    }

    void run(BucklingModes modes) {
      boolean whole = modes.search(state.forces, LIMIT, MOST_TRIALS, this::take);
      for (Member member : members) {
        for (int axis = 0; axis < 2 && whole; axis++) {
          assign(
              member,
              axis,
              LIMIT,
              String.format(
                  Locale.ROOT,
                  "no mode below %.0f times %s bends it; as if it buckled there, on the safe side",
                  LIMIT,
                  state.name));
        }
      }
    }

    private boolean take(FrameMode mode) {
      double[] most = new double[2];
      for (Member member : frame.members()) {
        if (compression(frame, member, state) > 0) {
          for (int axis = 0; axis < 2; axis++) {
            most[0] = Math.max(most[0], sum(member, axis, mode::energy));
            most[1] = Math.max(most[1], sum(member, axis, mode::work));
          }
        }
      }
      for (Member member : members) {
        for (int axis = 0; axis < 2; axis++) {
          double bends = sum(member, axis, mode::energy) / most[0];
          double drives = sum(member, axis, mode::work) / most[1];
          if (bends >= TAKES_PART && drives >= TAKES_PART) {
            assign(
                member,
                axis,
                mode.factor(),
                String.format(
                    Locale.ROOT,
                    "the frame buckles at %.4g times %s (factor %d from below: %s), this member with"
                        + " %.0f %% of the most that any bends",
                    mode.factor(),
                    state.name,
                    mode.number(),
                    mode.words(),
                    100 * bends));
          }
        }
      }
      return open > 0;
    }

    private double sum(Member member, int axis, ToDoubleBiFunction<Integer, Integer> bySegment) {
      double sum = 0;
      for (Segment segment : frame.segmentsOf(member)) {
        sum += bySegment.applyAsDouble(segment.index(), axis);
      }
      return sum;
    }

    private void assign(Member member, int axis, double factor, String why) {
      BucklingMode about = axis == 0 ? BucklingMode.FLEXURAL_Y : BucklingMode.FLEXURAL_Z;
      Key key = new Key(member.name(), about);
      if (lengths.containsKey(key)) {
        return;
      }
      double moment =
          axis == 0
              ? member.section().properties().secondMomentY()
              : member.section().properties().secondMomentZ();
      double[] values =
          LENGTH.run(
              member.alloy().youngsModulus(),
              moment,
              compression(frame, member, state),
              factor,
              member.length());
      lengths.put(
          key,
          new BucklingLength(
              values[LENGTH.slot("L_cr")],
              String.format(Locale.ROOT, "%.3g of its length; %s", values[LENGTH.slot("k")], why),
              CriticalLength.SOURCE));
      open--;
    }
  }
}
