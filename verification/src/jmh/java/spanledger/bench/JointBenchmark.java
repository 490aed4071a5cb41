package spanledger.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import spanledger.action.ActionPlanner;
import spanledger.action.Combination;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.Reaction;
import spanledger.envelope.Instance;
import spanledger.envelope.Station;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.job.Job;
import spanledger.job.JobReader;
import spanledger.job.ReadJob;
import spanledger.job.Tables;
import spanledger.jointdesign.JointDesign;
import spanledger.jointdesign.JointJudge;
import spanledger.jointdesign.JointJudgement;
import spanledger.memberdesign.MemberForces;

/**
 * Joints in hundreds: the beam of the hoist frame 250 times, so 500 member ends on brackets of two
 * faces with keys, heads in a slot and a leg that bends, under 200 sets of forces from a fixed
 * seed, and 60 under loads of use. Seconds are asked for. The feet are left out.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class JointBenchmark {

  private static final int BEAMS = 250;
  private static final int STATES = 200;
  private static final int IN_USE = 60;

  private @Nullable JointDesign design;
  private @Nullable FrameAnalysis analysis;
  private List<MemberForces> strength = List.of();
  private List<MemberForces> inUse = List.of();

  /** Makes the frame; the root of the project is a system property, else this directory. */
  @Setup
  public void read() throws IOException {
    Path example =
        Path.of(System.getProperty("spanledger.root", "."))
            .resolve("docs/examples/packing-house-hoist-frame.json");
    Path file = Files.createTempFile("joints", ".json");
    Files.writeString(file, repeated(new ObjectMapper().readTree(example.toFile())));
    ReadJob read = new JobReader(Tables.shipped()).read(file);
    Files.delete(file);
    if (!(read instanceof ReadJob.Accepted accepted)) {
      throw new IllegalStateException(read.problems().toString());
    }
    Job job = accepted.job();
    design = job.jointDesign().orElseThrow();
    analysis = new FrameAnalysis(job.frame());
    Combination combination =
        ActionPlanner.plan(
                job.frame(),
                job.surfaces(),
                job.rails(),
                job.userCases(),
                job.rules(),
                job.combinations())
            .combinations()
            .get(0);
    Random random = new Random(20261125);
    strength = states(STATES, combination, random);
    inUse = states(IN_USE, combination, random);
  }

  /** From the forces at the member ends to the worst of every check. */
  @Benchmark
  public JointJudgement fiveHundredMemberEnds() {
    return new JointJudge(Objects.requireNonNull(design))
        .judge(Objects.requireNonNull(analysis), strength, inUse, List.of());
  }

  private static List<MemberForces> states(int count, Combination combination, Random random) {
    List<MemberForces> states = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      states.add(new RandomForces(new Instance(combination, List.of(), Optional.empty()), random));
    }
    return states;
  }

  /** Every other member end has forces of its own, the same each time it is asked. */
  private static final class RandomForces implements MemberForces {
    private static final int FORCES = 6;
    private final Instance instance;
    private final double[] forces = new double[FORCES];

    RandomForces(Instance instance, Random random) {
      this.instance = instance;
      for (int i = 0; i < FORCES; i++) {
        forces[i] = random.nextGaussian() * (i < 3 ? 500 : 20_000);
      }
    }

    @Override
    public Instance instance() {
      return instance;
    }

    @Override
    public List<Station> cuts(Member member) {
      return List.of();
    }

    @Override
    public Reaction reaction(Node support) {
      throw new IllegalStateException("No feet are described.");
    }

    @Override
    public void at(Station cut, double[] into) {
      for (int i = 0; i < FORCES; i++) {
        into[i] = forces[i] * (1 + 1e-3 * cut.segment().index());
      }
    }
  }

  private static String repeated(JsonNode example) {
    ObjectNode job = example.deepCopy();
    for (String part : List.of("nodes", "members", "supports", "userCases")) {
      job.putObject(part);
    }
    ((ObjectNode) job.get("jointChecks")).putArray("feet");
    ((ArrayNode) job.at("/jointChecks/joints/0/members")).removeAll().add("beam-*");
    for (int i = 0; i < BEAMS; i++) {
      String mark = "-" + (i + 1);
      ObjectNode nodes = (ObjectNode) job.get("nodes");
      for (var node : example.get("nodes").properties()) {
        ArrayNode at = node.getValue().deepCopy();
        at.set(1, at.textNode(2000 * i + " mm"));
        nodes.set(node.getKey() + mark, at);
      }
      for (var member : example.get("members").properties()) {
        ObjectNode own = member.getValue().deepCopy();
        ArrayNode names = own.putArray("nodes");
        member.getValue().get("nodes").forEach(name -> names.add(name.asText() + mark));
        ((ObjectNode) job.get("members")).set(member.getKey() + mark, own);
      }
      for (var support : example.get("supports").properties()) {
        ObjectNode own = support.getValue().deepCopy();
        own.put("node", own.get("node").asText() + mark);
        ((ObjectNode) job.get("supports")).set(support.getKey() + mark, own);
      }
    }
    return job.toString();
  }
}
