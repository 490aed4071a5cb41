package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.material.BucklingClass;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.MemberEvaluator;
import spanledger.resistance.member.PreparedMember;

/**
 * All checks together against the exact plastic surface: fibres stressed to ±f_o on both sides of a
 * line give an axial force and two moments on the surface. Given: γ_M1 = 1, stocky walls, no length
 * to buckle. Expected: the greatest use there is at least 1, so that what is granted lies inside.
 */
class YieldSurfaceTest {

  private static final double STRENGTH = 200;
  private static final int FIBRES = 40;

  static Stream<Arguments> sections() {
    return Stream.of(
        Arguments.of("tube", new double[] {60, 60, 4, 4}),
        Arguments.of("tube", new double[] {100, 50, 5, 5}),
        Arguments.of("tube", new double[] {120, 60, 4, 5}),
        Arguments.of("i", new double[] {120, 80, 10, 8}),
        Arguments.of("i", new double[] {100, 60, 8, 6}),
        Arguments.of("channel", new double[] {80, 40, 8, 6}),
        Arguments.of("bar", new double[] {50, 30}));
  }

  private record Fibre(double y, double z, double area) {}

  @ParameterizedTest
  @MethodSource("sections")
  void codeGrantsNothingBeyondTheExactSurface(String shape, double[] s) {
    PreparedMember member =
        GivenMember.prepared(
            1.0,
            GivenMember.equalLengths(
                GivenMember.shape(shape, s), GivenMember.alloy(STRENGTH, 260, BucklingClass.A), 1));
    MemberEvaluator evaluator = member.evaluator();
    List<Fibre> fibres = fibres(shape, s);
    double least = Double.POSITIVE_INFINITY;
    for (int turn = 0; turn < 24; turn++) {
      double angle = 2 * Math.PI * turn / 24;
      for (double offset = -0.95; offset <= 0.951; offset += 0.05) {
        double n = 0;
        double my = 0;
        double mz = 0;
        double reach = reach(fibres, angle);
        for (Fibre fibre : fibres) {
          double across = fibre.z() * Math.cos(angle) + fibre.y() * Math.sin(angle);
          double force = Math.signum(across - offset * reach) * STRENGTH * fibre.area();
          n += force;
          // Tension at +z is a positive M_y, tension at -y a positive M_z.
          my += force * fibre.z();
          mz -= force * fibre.y();
        }
        evaluator.evaluate(Effect.uniform(n, 0, 0, 0, my, mz));
        least = Math.min(least, evaluator.greatestUse());
      }
    }

    assertThat(least)
        .as(
            "tolerance 1 %: the exponents of 6.2.9 are a fit; a hollow section bent about both axes lies that far out")
        .isGreaterThan(0.99);
  }

  private static double reach(List<Fibre> fibres, double angle) {
    return fibres.stream()
        .mapToDouble(f -> Math.abs(f.z() * Math.cos(angle) + f.y() * Math.sin(angle)))
        .max()
        .orElseThrow();
  }

  /** About the centroid. */
  private static List<Fibre> fibres(String shape, double[] s) {
    List<Fibre> fibres = new ArrayList<>();
    switch (shape) {
      case "bar" -> add(fibres, 0, 0, s[1], s[0]);
      case "tube" -> {
        add(fibres, 0, (s[0] - s[3]) / 2, s[1], s[3]);
        add(fibres, 0, -(s[0] - s[3]) / 2, s[1], s[3]);
        add(fibres, (s[1] - s[2]) / 2, 0, s[2], s[0] - 2 * s[3]);
        add(fibres, -(s[1] - s[2]) / 2, 0, s[2], s[0] - 2 * s[3]);
      }
      case "i" -> {
        add(fibres, 0, (s[0] - s[2]) / 2, s[1], s[2]);
        add(fibres, 0, -(s[0] - s[2]) / 2, s[1], s[2]);
        add(fibres, 0, 0, s[3], s[0] - 2 * s[2]);
      }
      case "channel" -> {
        add(fibres, s[3] / 2, 0, s[3], s[0]);
        add(fibres, (s[1] + s[3]) / 2, (s[0] - s[2]) / 2, s[1] - s[3], s[2]);
        add(fibres, (s[1] + s[3]) / 2, -(s[0] - s[2]) / 2, s[1] - s[3], s[2]);
      }
      default -> throw new IllegalArgumentException(shape);
    }
    double area = fibres.stream().mapToDouble(Fibre::area).sum();
    double y = fibres.stream().mapToDouble(f -> f.area() * f.y()).sum() / area;
    return fibres.stream().map(f -> new Fibre(f.y() - y, f.z(), f.area())).toList();
  }

  private static void add(List<Fibre> fibres, double y, double z, double width, double depth) {
    for (int i = 0; i < FIBRES; i++) {
      for (int j = 0; j < FIBRES; j++) {
        fibres.add(
            new Fibre(
                y + ((i + 0.5) / FIBRES - 0.5) * width,
                z + ((j + 0.5) / FIBRES - 0.5) * depth,
                width * depth / FIBRES / FIBRES));
      }
    }
  }
}
