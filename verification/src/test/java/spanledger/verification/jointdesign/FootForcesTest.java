package spanledger.verification.jointdesign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import spanledger.frame.Vector;
import spanledger.jointdesign.FootForces;
import spanledger.provenance.Source;
import spanledger.resistance.member.Working;

/**
 * The axes of a foot by another way: X, Y and Z turned about the level line of the ground by its
 * slope, and then about the square to it, each by the formula of Rodrigues.
 */
class FootForcesTest {

  private static final Source TEST = Source.declared("test");

  @Property(tries = 60)
  void forcesAreThoseOfTheTurnedAxes(
      @ForAll @DoubleRange(min = -3, max = 3) double turn,
      @ForAll @DoubleRange(min = 0, max = 0.7) double slope,
      @ForAll @DoubleRange(min = -3, max = 3) double falls) {
    Vector reaction = new Vector(310, -170, 950);
    Vector moment = new Vector(-2300, 4100, 700);
    Vector levelLine = new Vector(-Math.sin(falls), Math.cos(falls), 0);
    Vector u = turned(new Vector(0, 0, 1), levelLine, slope);
    Vector v = turned(turned(new Vector(1, 0, 0), levelLine, slope), u, turn);
    Vector w = turned(turned(new Vector(0, 1, 0), levelLine, slope), u, turn);

    Working found = run(turn, slope, falls, reaction, moment);

    // Rounding of a few products of numbers of this size.
    assertThat(found.value("P_u")).isCloseTo(-reaction.dot(u), within(1e-9));
    assertThat(found.value("P_v")).isCloseTo(-reaction.dot(v), within(1e-9));
    assertThat(found.value("P_w")).isCloseTo(-reaction.dot(w), within(1e-9));
    assertThat(found.value("C_u")).isCloseTo(-moment.dot(u), within(1e-8));
    assertThat(found.value("C_v")).isCloseTo(-moment.dot(v), within(1e-8));
    assertThat(found.value("C_w")).isCloseTo(-moment.dot(w), within(1e-8));
  }

  private static Working run(
      double turn, double slope, double falls, Vector reaction, Vector moment) {
    Working.Feeding run =
        Working.of(FootForces.PROCEDURE.compile(), "foot")
            .given("ψ", turn, "turn", TEST)
            .given("α", slope, "slope", TEST)
            .given("δ", falls, "falls", TEST);
    List<Double> given =
        List.of(reaction.x(), reaction.y(), reaction.z(), moment.x(), moment.y(), moment.z());
    for (int i = 0; i < given.size(); i++) {
      run.given(FootForces.OF_SUPPORT.get(i), given.get(i), "reaction", TEST);
    }
    return run.run();
  }

  /** Rodrigues: a turned about the unit vector k by an angle. */
  private static Vector turned(Vector a, Vector k, double angle) {
    return a.times(Math.cos(angle))
        .plus(k.cross(a).times(Math.sin(angle)))
        .plus(k.times(k.dot(a) * (1 - Math.cos(angle))));
  }
}
