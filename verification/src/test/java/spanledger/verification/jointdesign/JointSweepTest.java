package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spanledger.action.ActionPlanner;
import spanledger.action.Actions;
import spanledger.action.LimitState;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.Reaction;
import spanledger.behaviour.Behaviour;
import spanledger.behaviour.BehaviourAnalysis;
import spanledger.envelope.EnvelopeSearch;
import spanledger.envelope.Findings;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudge;
import spanledger.jointdesign.JointJudgement;
import spanledger.memberdesign.MemberForces;
import spanledger.memberdesign.SolvedInstances;
import spanledger.resistance.ResistanceFactors;

/**
 * Joints judged under many states at once, of which most are only replayed, against each state
 * judged alone, which is worked out in full. Both must find the same worst of every check. The
 * joint is that of the hoist frame: heads in a slot, keys, a leg that bends, bolts in holes that
 * friction holds in use.
 */
class JointSweepTest {

  /** Of the value; the same procedures work on the same numbers. */
  private static final double SAME = 1e-9;

  private static Job job;
  private static FrameAnalysis analysis;
  private static List<MemberForces> strength;
  private static List<MemberForces> inUse;

  @BeforeAll
  static void analyse() {
    job =
        ((ReadJob.Accepted)
                new JobReader(Tables.shipped())
                    .read(
                        Path.of(System.getProperty("spanledger.root", ".."))
                            .resolve("docs/examples/packing-house-hoist-frame.json")))
            .job();
    analysis = new FrameAnalysis(job.frame());
    Actions actions =
        ActionPlanner.plan(
            job.frame(),
            job.surfaces(),
            job.rails(),
            job.userCases(),
            job.rules(),
            job.combinations());
    Findings linear =
        new EnvelopeSearch(
                analysis,
                actions,
                job.rails(),
                ResistanceFactors.of(job.rules()),
                job.placesPerSegment())
            .run();
    Behaviour behaviour =
        new BehaviourAnalysis(analysis, job.rules(), job.analysis().secondOrder())
            .run(actions, linear);
    strength = states(LimitState.STRENGTH, actions, linear, behaviour);
    inUse = states(LimitState.SERVICEABILITY, actions, linear, behaviour);
  }

  private static List<MemberForces> states(
      LimitState limitState, Actions actions, Findings linear, Behaviour behaviour) {
    return List.copyOf(
        new SolvedInstances(analysis, limitState, actions.combinations(), linear, behaviour)
            .states());
  }

  @Test
  void theWorstOfAllStatesIsTheWorstOfEachAlone() {
    compare(strength, inUse);
  }

  /** Forces of every sign and size, from a fixed seed, so that every part governs some time. */
  @Test
  void anyForcesAreJudgedAsIfTheyWereAlone() {
    Random random = new Random(20261125);
    List<MemberForces> pushed = new ArrayList<>();
    List<MemberForces> pushedInUse = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      pushed.add(new Pushed(strength.get(i % strength.size()).instance(), forces(random)));
      pushedInUse.add(new Pushed(inUse.get(i % inUse.size()).instance(), forces(random)));
    }
    compare(pushed, pushedInUse);
  }

  /**
   * One push and twenty more, each a tenth less than the one before: the first governs, and of the
   * others only the last is worked out in full, to prove what was replayed. Who works a joint out
   * asks for the name of its combination.
   */
  @Test
  void statesThatGovernNothingAreOnlyReplayed() {
    List<Pushed> weaker = new ArrayList<>();
    double[] forces = {900, 300, -400, 2_000, 30_000, -20_000};
    for (int i = 0; i <= 20; i++) {
      weaker.add(new Pushed(strength.get(0).instance(), forces.clone()));
      for (int k = 0; k < forces.length; k++) {
        forces[k] *= 0.9;
      }
    }
    new JointJudge(job.jointDesign().orElseThrow()).judge(analysis, weaker, List.of(), List.of());

    assertThat(weaker.get(0).asked).isPositive();
    assertThat(weaker.get(20).asked).isPositive();
    assertThat(weaker.subList(1, 20)).allSatisfy(state -> assertThat(state.asked).isZero());
  }

  /** What governs is shown worked out in full: its value is the one that was found. */
  @Test
  void whatGovernsIsWorkedOutToTheValueThatWasFound() {
    JointJudgement together = judge(strength, inUse);

    assertThat(together.findings())
        .allSatisfy(
            found -> {
              assertThat(found.check().working().value(found.use().symbol()))
                  .isEqualTo(found.governing().value());
              assertThat(found.check().working().label()).isEqualTo(found.part());
              assertThat(found.run().instance()).isEqualTo(found.governing().instance());
            });
    assertThat(together.findings().stream().map(JointFinding::run).distinct().count())
        .isLessThan(together.findings().size());
  }

  private static double[] forces(Random random) {
    double[] forces = new double[6];
    for (int i = 0; i < forces.length; i++) {
      double size = Math.pow(10, 1 + 2.5 * random.nextDouble()) * (i < 3 ? 1 : 30);
      forces[i] = random.nextInt(5) == 0 ? 0 : size * (random.nextBoolean() ? 1 : -1);
    }
    return forces;
  }

  private static void compare(List<MemberForces> states, List<MemberForces> use) {
    Map<String, JointFinding> alone = new LinkedHashMap<>();
    for (MemberForces state : states) {
      keepWorse(judge(List.of(state), List.of()), alone);
    }
    for (MemberForces state : use) {
      keepWorse(judge(List.of(), List.of(state)), alone);
    }
    Map<String, JointFinding> together = new LinkedHashMap<>();
    keepWorse(judge(states, use), together);

    assertThat(together).containsOnlyKeys(alone.keySet());
    together.forEach(
        (name, found) -> {
          JointFinding expected = alone.get(name);
          double value = expected.governing().value();
          assertThat(found.governing().value())
              .as(name)
              .isCloseTo(value, within(SAME * Math.abs(value)));
          assertThat(found.part()).as(name).isEqualTo(expected.part());
          assertThat(found.instance().words()).as(name).isEqualTo(expected.instance().words());
        });
  }

  private static void keepWorse(JointJudgement judged, Map<String, JointFinding> into) {
    for (JointFinding found : judged.findings()) {
      into.merge(
          found.end().name() + "|" + found.faceName() + "|" + found.use(),
          found,
          (old, now) -> now.governing().value() > old.governing().value() ? now : old);
    }
  }

  private static JointJudgement judge(List<MemberForces> states, List<MemberForces> use) {
    return new JointJudge(job.jointDesign().orElseThrow()).judge(analysis, states, use, states);
  }

  /** The same forces at every member end and every foot. */
  private static final class Pushed implements MemberForces {
    private final Instance instance;
    private final double[] forces;
    private int asked;

    Pushed(Instance instance, double[] forces) {
      this.instance = instance;
      this.forces = forces;
    }

    @Override
    public Instance instance() {
      asked++;
      return instance;
    }

    @Override
    public List<Station> cuts(Member member) {
      return List.of();
    }

    @Override
    public void at(Station cut, double[] into) {
      System.arraycopy(forces, 0, into, 0, forces.length);
    }

    @Override
    public Reaction reaction(Node node) {
      return new Reaction(
          node,
          new Vector(forces[0], forces[1], forces[2]),
          new Vector(forces[3], forces[4], forces[5]));
    }
  }
}
