package spanledger.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import spanledger.action.ActionPlanner;
import spanledger.analysis.FrameAnalysis;
import spanledger.analysis.MechanismException;
import spanledger.frame.Frame;
import spanledger.job.problem.Problem;
import spanledger.job.problem.ProblemReport;

/** However a file is spoilt, it is accepted or refused with reasons; nothing is thrown. */
class MutationTest {

  private static final Pattern TOKEN =
      Pattern.compile("\"[^\"]*\"|-?[0-9][0-9.eE+-]*|[{}\\[\\],:]|true|false|null");
  private static final List<String> FOREIGN =
      List.of(
          "null",
          "true",
          "0",
          "-1",
          "1e400",
          "{}",
          "[]",
          "[[]]",
          "\"\"",
          "\"1 mm\"",
          "\"-1 mm\"",
          "\"1e300 m\"",
          "\"0 kN\"",
          "\"A1\"",
          "\"beam-a\"",
          "\"post\"",
          "\"rigid\"",
          "\"free\"",
          "\"local -z\"",
          "\"properties\"",
          "\"node\"",
          "\"x\\u0000\"",
          "\"\\ud800\"",
          "\"~/~1\"");

  /**
   * A change of one token.
   *
   * @param at the token as a part of all tokens, from 0 to 1
   * @param way what is done with it
   * @param other another token, likewise
   * @param foreign an index of {@link #FOREIGN}
   */
  record Mutation(double at, Way way, double other, int foreign) {}

  enum Way {
    DELETE,
    DOUBLE,
    REPLACE_BY_FOREIGN,
    REPLACE_BY_OTHER,
    SWAP,
    SPOIL
  }

  @Property(tries = 400)
  void aSpoiltFileIsAcceptedOrRefused(
      @ForAll("mutations") List<Mutation> mutations, @ForAll("files") String file) {
    assertOutcome(mutated(Jobs.resource(file), mutations));
  }

  /** What the reader lets pass, the planner can plan and the analysis can set up. */
  @Property(tries = 300)
  void anAcceptedFileCanBeCalculated(
      @ForAll("places") double at, @ForAll("amounts") String amount, @ForAll("files") String file) {
    String text = Jobs.resource(file);
    List<int[]> quantities = new ArrayList<>();
    Matcher quantity = Pattern.compile("\"-?[0-9.]+ (?=[a-zA-Z])").matcher(text);
    while (quantity.find()) {
      quantities.add(new int[] {quantity.start(), quantity.end()});
    }
    int[] place = quantities.get((int) (at * (quantities.size() - 1)));
    ReadJob read =
        Jobs.readShipped(
            text.substring(0, place[0]) + "\"" + amount + " " + text.substring(place[1]));

    if (read instanceof ReadJob.Accepted accepted) {
      Job job = accepted.job();
      assertThatCode(
              () -> {
                ActionPlanner.plan(
                    job.frame(),
                    job.surfaces(),
                    job.rails(),
                    job.userCases(),
                    job.rules(),
                    job.combinations());
                analyse(job.frame());
              })
          .as(amount + " in place of " + text.substring(place[0], text.indexOf('\n', place[0])))
          .doesNotThrowAnyException();
    }
  }

  /** A mechanism is found in the analysis only, and told to the user there. */
  private static void analyse(Frame frame) {
    try {
      new FrameAnalysis(frame);
    } catch (MechanismException e) {
      assertThat(e).hasMessageContaining(" can ").hasMessageNotContaining("NaN");
    }
  }

  @Property(tries = 60)
  void aSpoiltExampleIsAcceptedOrRefused(@ForAll("mutations") List<Mutation> mutations) {
    assertOutcome(mutated(Jobs.example("packing-house-inspection-platform.json"), mutations));
  }

  @Property(tries = 200)
  void anyTextIsAcceptedOrRefused(@ForAll String text) {
    assertOutcome(text);
    assertOutcome("{\"job\": " + text);
  }

  /** Keys and values stay in their places, so that decoders and schema meet every kind of value. */
  @Property(tries = 600)
  void aWronglyFilledFileIsAcceptedOrRefused(
      @ForAll("places") double at, @ForAll("foreign") int foreign, @ForAll("files") String file) {
    String text = Jobs.resource(file);
    List<int[]> values = new ArrayList<>();
    Matcher token = TOKEN.matcher(text);
    while (token.find()) {
      boolean key = text.startsWith(":", token.end());
      if (!key && "{}[],:".indexOf(text.charAt(token.start())) < 0) {
        values.add(new int[] {token.start(), token.end()});
      }
    }
    int[] value = values.get((int) (at * (values.size() - 1)));
    assertOutcome(text.substring(0, value[0]) + FOREIGN.get(foreign) + text.substring(value[1]));
  }

  private static void assertOutcome(String text) {
    ReadJob read = Jobs.read(text);

    if (read instanceof ReadJob.Refused) {
      assertThat(read.problems()).anyMatch(Problem::isError);
    }
    assertThat(read.problems()).allSatisfy(MutationTest::assertReadable);
    ProblemReport report = new ProblemReport(Jobs.FILE, read.problems());
    assertThat(report.text()).doesNotContain("Exception").doesNotContain("spanledger.job.source");
    assertThat(report.json()).endsWith("}\n");
  }

  private static void assertReadable(Problem problem) {
    assertThat(List.of(problem.found(), problem.expected(), problem.remedy()))
        .allSatisfy(words -> assertThat(words).isNotBlank().doesNotContain("\n", "null:"));
    assertThat(problem.found()).hasSizeLessThan(500);
  }

  private static String mutated(String text, List<Mutation> mutations) {
    List<String> tokens = new ArrayList<>();
    Matcher token = TOKEN.matcher(text);
    while (token.find()) {
      tokens.add(token.group());
    }
    mutations.forEach(mutation -> mutate(tokens, mutation));
    return String.join(" ", tokens);
  }

  private static void mutate(List<String> tokens, Mutation mutation) {
    int at = (int) (mutation.at() * (tokens.size() - 1));
    int other = (int) (mutation.other() * (tokens.size() - 1));
    switch (mutation.way()) {
      case DELETE -> tokens.remove(at);
      case DOUBLE -> tokens.add(at, tokens.get(at));
      case REPLACE_BY_FOREIGN -> tokens.set(at, FOREIGN.get(mutation.foreign()));
      case REPLACE_BY_OTHER -> tokens.set(at, tokens.get(other));
      case SWAP -> tokens.set(at, tokens.set(other, tokens.get(at)));
      case SPOIL -> tokens.set(at, tokens.get(at).replace('m', 'k').replace('1', '7'));
    }
  }

  @Provide
  Arbitrary<List<Mutation>> mutations() {
    return Combinators.combine(places(), Arbitraries.of(Way.class), places(), foreign())
        .as(Mutation::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(3);
  }

  @Provide
  Arbitrary<String> files() {
    return Arbitraries.of("complete.json", "complete-assembly.json");
  }

  @Provide
  Arbitrary<String> amounts() {
    return Arbitraries.of(
        "0", "-1", "0.001", "1e-9", "1e-11", "0.5", "1", "2.5", "7", "60", "599", "1499", "3001",
        "1e5", "1e6", "1e9", "1e14", "-1e14");
  }

  @Provide
  Arbitrary<Double> places() {
    return Arbitraries.doubles().between(0, 1);
  }

  @Provide
  Arbitrary<Integer> foreign() {
    return Arbitraries.integers().between(0, FOREIGN.size() - 1);
  }
}
