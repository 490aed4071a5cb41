package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import spanledger.envelope.Governing;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.jointdesign.JointJudgement.OpenCheck;
import spanledger.memberdesign.MemberForces;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointUse;

/** Keeps the worst of every check of every face of joints and feet. */
final class WorstChecks {

  private static final int FORCES = 6;

  private final List<JointFinding> findings = new ArrayList<>();
  private final Set<OpenCheck> open = new LinkedHashSet<>();

  /**
   * Works a joint out in full under all states.
   *
   * @param calculation from the combination and N, V_y, V_z, T, M_y, M_z at the member end; the
   *     same run each time it is asked
   */
  void over(
      JointEnd end,
      Station station,
      Iterable<? extends MemberForces> states,
      BiFunction<Instance, double[], JointRun> calculation) {
    double[] atEnd = new double[FORCES];
    over(
        end,
        station,
        states,
        state -> {
          state.at(station, atEnd);
          return atEnd;
        },
        calculation,
        run -> {});
  }

  /**
   * Works a joint or a foot out in full under all states.
   *
   * @param sixForces what a state puts on it
   * @param calculation from the combination and these; the same run each time it is asked
   * @param seen looks at every run
   */
  void over(
      JointPlace end,
      Station station,
      Iterable<? extends MemberForces> states,
      Function<MemberForces, double[]> sixForces,
      BiFunction<Instance, double[], JointRun> calculation,
      Consumer<JointRun> seen) {
    Map<String, JointFinding> worst = new LinkedHashMap<>();
    for (MemberForces state : states) {
      double[] forces = sixForces.apply(state);
      try {
        JointRun run = calculation.apply(state.instance(), forces);
        seen.accept(run);
        JointUnderLoad loaded = new JointUnderLoad(state.instance(), forces, calculation);
        for (int face = 0; face < run.faces().size(); face++) {
          open(run, face);
          keepWorse(run, loaded, face, station, worst);
        }
      } catch (IllegalArgumentException e) {
        open(end, state.instance(), e);
        break;
      }
    }
    findings.addAll(worst.values());
  }

  private static void keepWorse(
      JointRun run,
      JointUnderLoad loaded,
      int face,
      Station station,
      Map<String, JointFinding> worst) {
    List<JointCheck> checks = run.faces().get(face).checks();
    for (int i = 0; i < checks.size(); i++) {
      for (JointUse use : checks.get(i).uses()) {
        double value = checks.get(i).working().value(use.symbol());
        CheckPlace place = CheckPlace.of(run, face, i, use);
        JointFinding known = worst.get(place.kind());
        if (known == null || value > known.governing().value()) {
          Governing governing = new Governing(run.instance(), station, value);
          worst.put(
              place.kind(), new JointFinding(run.end(), run.joint(), loaded, place, governing));
        }
      }
    }
  }

  /** Adds what was found elsewhere. */
  void add(List<JointFinding> found) {
    findings.addAll(found);
  }

  /**
   * Adds the worst of each check that was found under several assumptions on one joint.
   *
   * @param bounds what was found under each
   */
  void addWorst(List<WorstChecks> bounds) {
    Map<String, JointFinding> worst = new LinkedHashMap<>();
    for (WorstChecks bound : bounds) {
      for (JointFinding finding : bound.findings) {
        worst.merge(
            finding.kind(),
            finding,
            (a, b) -> b.governing().value() > a.governing().value() ? b : a);
      }
      open.addAll(bound.open);
    }
    findings.addAll(worst.values());
  }

  /** Adds what of a face cannot be checked. */
  void open(JointRun run, int face) {
    run.faces().get(face).open().forEach(what -> open(new OpenCheck(run.end().name(), what)));
  }

  /** Adds that a joint cannot be worked out under a combination. */
  void open(JointPlace end, Instance instance, IllegalArgumentException why) {
    open(new OpenCheck(end.name(), "under " + instance.words() + ": " + why.getMessage()));
  }

  /** Adds a check that cannot be made. */
  void open(OpenCheck check) {
    open.add(check);
  }

  List<JointFinding> findings() {
    return findings;
  }

  List<OpenCheck> open() {
    return List.copyOf(open);
  }
}
