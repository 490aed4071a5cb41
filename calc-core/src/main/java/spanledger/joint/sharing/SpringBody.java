package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Equilibrium of rigid bodies on springs, of which some act one way.
 *
 * <p>The energy of springs and loads is convex and quadratic between the places where a spring
 * begins or ends to act. Each step goes along Newton's direction for the springs that act, as far
 * as the energy falls; along a line that place is found exactly. Where the load moves the body in a
 * way that no acting spring resists, it goes that way alone until one does.
 */
final class SpringBody {

  /** Freedoms of one body in one face or off it. */
  private static final int ONE_FACE = 3;

  private static final int MOST_STEPS = 500;

  /** Of all stiffness together: what is less is rounding, and resists nothing. */
  private static final double NOTHING = 1e-13;

  /** Unbalanced force per load at which the search ends; rounding leaves less. */
  private static final double SETTLED = 1e-13;

  /** What is accepted if rounding keeps it from settling further. */
  private static final double ACCEPTED = 1e-9;

  private final int freedoms;
  private final SpringLine[] springs;
  private final double stiffest;

  /**
   * @param freedoms of all bodies together
   * @param springs each by its stretch per unit of every freedom
   */
  SpringBody(int freedoms, List<SpringLine> springs) {
    this.freedoms = freedoms;
    this.springs = springs.stream().filter(s -> s.stiffness() > 0).toArray(SpringLine[]::new);
    double sum = 0;
    for (SpringLine spring : this.springs) {
      for (int i = 0; i < freedoms; i++) {
        sum += spring.stiffness() * spring.along(i) * spring.along(i);
      }
    }
    stiffest = sum > 0 ? sum : 1;
  }

  /**
   * The movement in which springs and load balance; empty if nothing stops the body.
   *
   * @param load force on each freedom; not modified
   */
  Optional<double[]> balance(double[] load) {
    double scale = Math.sqrt(dot(load, load));
    if (scale == 0) {
      return Optional.of(new double[freedoms]);
    }
    double[] movement = start(load);
    double left = scale;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] unbalanced = unbalanced(load, movement);
      left = Math.sqrt(dot(unbalanced, unbalanced));
      if (left <= SETTLED * scale) {
        return Optional.of(movement);
      }
      double[] direction = direction(unbalanced, movement, SETTLED * scale);
      double length = lineSearch(load, movement, direction);
      if (Double.isInfinite(length)) {
        return Optional.empty();
      }
      if (!(length > 0)) {
        break;
      }
      for (int i = 0; i < freedoms; i++) {
        movement[i] += length * direction[i];
      }
    }
    if (left > ACCEPTED * scale + roundingOf(movement)) {
      throw new UnsettledFaceException(left / scale);
    }
    return Optional.of(movement);
  }

  /**
   * Where the search begins. Of several bodies few hold while no one-way spring acts, so they begin
   * where they would stand if all springs acted both ways.
   */
  private double[] start(double[] load) {
    if (freedoms <= ONE_FACE) {
      return new double[freedoms];
    }
    try {
      return new CholeskyDecomposition(stiffness(spring -> true), 1e-9, NOTHING * stiffest)
          .getSolver()
          .solve(new ArrayRealVector(load, false))
          .toArray();
    } catch (NonPositiveDefiniteMatrixException somethingFree) {
      return new double[freedoms];
    }
  }

  /**
   * What rounding of the movement leaves: a small load that closes a clearance presses no harder
   * than the last digit of the way to it times the stiffness.
   */
  private double roundingOf(double[] movement) {
    return 4 * Math.ulp(Math.sqrt(dot(movement, movement))) * stiffest;
  }

  /** The force on each freedom that springs leave over. */
  private double[] unbalanced(double[] load, double[] movement) {
    double[] rest = load.clone();
    for (SpringLine spring : springs) {
      double force = spring.force(spring.stretch(movement));
      for (int i = 0; i < freedoms; i++) {
        rest[i] -= force * spring.along(i);
      }
    }
    return rest;
  }

  /**
   * Newton's way where the acting springs resist everything that is left over; else, first, the way
   * that none of them resists.
   */
  private double[] direction(double[] unbalanced, double[] movement, double settled) {
    RealMatrix stiffness = stiffness(spring -> spring.acts(spring.stretch(movement)));
    RealVector rest = new ArrayRealVector(unbalanced, false);
    try {
      return new CholeskyDecomposition(stiffness, 1e-9, NOTHING * stiffest)
          .getSolver()
          .solve(rest)
          .toArray();
    } catch (NonPositiveDefiniteMatrixException somethingFree) {
      return directionOfFree(new EigenDecomposition(stiffness), rest, settled);
    }
  }

  private double[] directionOfFree(EigenDecomposition axes, RealVector rest, double settled) {
    RealVector free = new ArrayRealVector(freedoms);
    RealVector held = new ArrayRealVector(freedoms);
    for (int i = 0; i < freedoms; i++) {
      RealVector axis = axes.getEigenvector(i);
      double along = rest.dotProduct(axis);
      double stiffness = axes.getRealEigenvalue(i);
      if (stiffness <= NOTHING * stiffest) {
        free = free.add(axis.mapMultiply(along));
      } else {
        held = held.add(axis.mapMultiply(along / stiffness));
      }
    }
    return (free.getNorm() > settled ? free : held).toArray();
  }

  private RealMatrix stiffness(Predicate<SpringLine> counts) {
    double[][] stiffness = new double[freedoms][freedoms];
    for (SpringLine spring : springs) {
      if (counts.test(spring)) {
        for (int i = 0; i < freedoms; i++) {
          if (spring.along(i) == 0) {
            continue;
          }
          for (int j = 0; j < freedoms; j++) {
            stiffness[i][j] += spring.stiffness() * (spring.along(i) * spring.along(j));
          }
        }
      }
    }
    return new Array2DRowRealMatrix(stiffness, false);
  }

  /**
   * How far along the direction the energy falls; infinite if it falls for ever. Its slope rises
   * with the way, linearly between the places where springs begin or end to act.
   */
  private double lineSearch(double[] load, double[] movement, double[] direction) {
    List<double[]> turns = new ArrayList<>();
    double slope = -dot(load, direction);
    double curvature = 0;
    for (SpringLine spring : springs) {
      double rate = spring.stretch(direction);
      double stretch = spring.stretch(movement);
      if (rate == 0) {
        continue;
      }
      double bend = spring.stiffness() * rate * rate;
      double turn = (spring.startsAt() - stretch) / rate;
      boolean acts = spring.acts(stretch);
      if (acts) {
        slope += spring.force(stretch) * rate;
        curvature += bend;
      }
      if (spring.oneWay() && turn > 0 && (acts != rate > 0)) {
        turns.add(new double[] {turn, acts ? -bend : bend});
      } else if (spring.oneWay() && turn == 0 && !acts && rate > 0) {
        curvature += bend;
      }
    }
    turns.sort(Comparator.comparingDouble(turn -> turn[0]));
    double at = 0;
    for (double[] turn : turns) {
      double next = slope + curvature * (turn[0] - at);
      if (next >= 0) {
        break;
      }
      slope = next;
      at = turn[0];
      curvature += turn[1];
    }
    // What is left of curvatures that cancel is rounding.
    double floor = 1e-14 * stiffest * dot(direction, direction);
    if (curvature <= floor) {
      return slope < 0 ? Double.POSITIVE_INFINITY : at;
    }
    return at - slope / curvature;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
