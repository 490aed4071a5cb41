package spanledger.jointdesign;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds;
import spanledger.frame.StiffnessBounds.Bound;
import spanledger.joint.TestedTurn;
import spanledger.joint.stiffness.CharacteristicValue;
import spanledger.joint.stiffness.CharacteristicValue.Scatter;
import spanledger.joint.stiffness.FittedCurve;
import spanledger.joint.stiffness.MomentRotationCurve;
import spanledger.joint.stiffness.TestHeld;
import spanledger.joint.stiffness.TestLine;
import spanledger.joint.stiffness.TestSums;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/**
 * Tests of one turn of a joint, several specimens in one sense: play, stiffness and the moment
 * resisted, with their characteristic values, from the readings on.
 */
public final class JointTests {

  private static final CompiledProcedure LINE = TestLine.PROCEDURE.compile();
  private static final CompiledProcedure HELD = TestHeld.PROCEDURE.compile();
  private static final Source READINGS = Source.derived("sum over readings of the test");

  /**
   * A specimen.
   *
   * @param file the file of its readings
   * @param curve its readings
   */
  public record Measured(String file, MomentRotationCurve curve) {}

  /**
   * A specimen with the lines through its readings.
   *
   * @param file the file of its readings
   * @param curve its readings
   * @param fit the lines
   * @param sums on which they rest
   * @param line the run of {@link TestLine}
   * @param held the run of {@link TestHeld}
   */
  public record Specimen(
      String file,
      MomentRotationCurve curve,
      FittedCurve fit,
      TestSums sums,
      Working line,
      Working held) {

    private Feed line(String symbol) {
      return line.feed(symbol);
    }

    private static Specimen of(Measured measured) {
      FittedCurve fit = FittedCurve.of(measured.curve());
      TestSums sums = TestSums.of(measured.curve().held(), fit.division());
      String name = "specimen " + fit.specimen();
      Working line =
          Working.of(LINE, name)
              .given("N", sums.rising(), name + ", rising readings", READINGS)
              .given("S_φ", sums.rotations(), name + ", rotations", READINGS)
              .given("S_M", sums.moments(), name + ", moments", READINGS)
              .given("S_φφ", sums.squares(), name + ", squares", READINGS)
              .given("S_φM", sums.products(), name + ", products", READINGS)
              .run();
      Working held =
          Working.of(HELD, name)
              .given("M_max", measured.curve().greatestMoment(), name + ", greatest", READINGS)
              .given("n_h", sums.held(), name + ", readings held", READINGS)
              .given("S_h", sums.heldMoments(), name + ", moments held", READINGS)
              .run();
      return new Specimen(measured.file(), measured.curve(), fit, sums, line, held);
    }
  }

  private final TestedTurn joint;
  private final List<Specimen> specimens;
  private final Optional<Figured> partialFactor;
  private final Working play;
  private final Working stiffness;
  private final Working moment;

  private JointTests(
      TestedTurn joint,
      List<Specimen> specimens,
      KnownVariation known,
      Optional<Figured> partialFactor) {
    this.joint = joint;
    this.specimens = List.copyOf(specimens);
    this.partialFactor = partialFactor;
    this.play =
        property("play", Dimension.NONE, Scatter.NORMAL, known, known.slip(), s -> s.line("φ_0"));
    this.stiffness =
        property(
            "stiffness",
            Dimension.MOMENT,
            Scatter.LOG_NORMAL,
            known,
            known.stiffness(),
            s -> s.line("k_φ"));
    this.moment =
        property(
            "moment resisted",
            Dimension.MOMENT,
            Scatter.LOG_NORMAL,
            known,
            known.moment(),
            s -> s.held().feed("M_R"));
  }

  /**
   * Fits all specimens and takes their characteristic values.
   *
   * @param name tells these tests from all others of the job
   * @param known coefficients of variation that are known beforehand
   * @param partialFactor by which the characteristic moment is divided, if the job says it
   * @param source the test report
   * @throws IllegalArgumentException if there are too few specimens
   */
  public static JointTests of(
      String name,
      List<Measured> measured,
      KnownVariation known,
      Optional<Figured> partialFactor,
      Source source) {
    // Too few are told before they are fitted.
    CharacteristicValue.quantile(measured.size(), known.isWhole());
    return new JointTests(
        new TestedTurn(name, source),
        measured.stream().map(Specimen::of).toList(),
        known,
        partialFactor);
  }

  private Working property(
      String words,
      Dimension dimension,
      Scatter scatter,
      KnownVariation known,
      OptionalDouble variation,
      Function<Specimen, Feed> value) {
    String of = joint.name() + ", " + words;
    boolean isKnown = variation.isPresent();
    int count = specimens.size();
    Working.Feeding run =
        Working.of(CharacteristicValue.of(count, dimension, scatter, isKnown).compile(), of)
            .given(
                "t",
                CharacteristicValue.quantile(count, isKnown),
                of + ", quantile",
                CharacteristicValue.QUANTILE_SOURCE)
            .given(
                "V_X",
                variation.orElse(CharacteristicValue.LEAST_VARIATION),
                of + ", coefficient of variation" + (isKnown ? "" : " at least"),
                isKnown ? known.source() : CharacteristicValue.LEAST_SOURCE);
    for (int i = 0; i < count; i++) {
      run.with("x_" + (i + 1), value.apply(specimens.get(i)));
    }
    return run.run();
  }

  /** What they are called in the job. */
  public TestedTurn joint() {
    return joint;
  }

  /** The specimens in the order of the job. */
  public List<Specimen> specimens() {
    return specimens;
  }

  /** The partial factor of the moment, if the job says it. */
  public Optional<Figured> partialFactor() {
    return partialFactor;
  }

  /** Rotation before anything resists, rad: a run of {@link CharacteristicValue}. */
  public Working play() {
    return play;
  }

  /** Stiffness then, N·mm/rad: a run of {@link CharacteristicValue}. */
  public Working stiffness() {
    return stiffness;
  }

  /** The moment resisted, N·mm: a run of {@link CharacteristicValue}. */
  public Working moment() {
    return moment;
  }

  /** The characteristic moment, N·mm. */
  public double characteristic() {
    return moment.value("X_low");
  }

  /** Which value of a property one run of the analysis takes: soft springs have wide plays. */
  public static String bound(Bound bound, boolean play) {
    return (bound == Bound.LOWER) == play ? "X_high" : "X_low";
  }

  /**
   * What holds a member end in one run: the softer bound with the greater play, or the opposite.
   */
  public Restraint restraint(Bound bound) {
    double free = play.value(bound(bound, true));
    double low = stiffness.value("X_low");
    double high = stiffness.value("X_high");
    Restraint spring = new StiffnessBounds(low, high, joint.source()).restraint(bound);
    return free > 0 && spring instanceof Restraint.Spring held
        ? new Restraint.Play(free, held.stiffness())
        : spring;
  }
}
