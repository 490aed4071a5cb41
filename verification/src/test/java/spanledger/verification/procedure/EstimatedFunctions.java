package spanledger.verification.procedure;

import java.util.List;
import spanledger.procedure.MathFunction;
import spanledger.verification.procedure.Estimate.UndecidedException;

/** Mathematical functions with the scale of their values. */
final class EstimatedFunctions {

  /** A doubt of the argument beyond which the derivative no longer tells the function's change. */
  private static final double CURVED = 0.01;

  /** From this size on spreadsheets may refuse an angle, so it is not judged. */
  private static final double LARGE_ANGLE = 0x1p27;

  /**
   * Apache POI works tanh out from exponentials, 1 ± x for small x, and so is off by some 1E-16
   * however small the value: tanh(1E-30) is 0 there. Other programs are not, but are judged alike.
   */
  private static final double TANH_SCALE = 1e-3;

  private EstimatedFunctions() {}

  static Estimate call(MathFunction function, List<Estimate> arguments) {
    if (arguments.stream().anyMatch(Estimate::missing)) {
      return Estimate.MISSING;
    }
    Estimate x = arguments.get(0);
    double v = x.value();
    return switch (function) {
      case SQRT -> root(x);
      case ABS -> new Estimate(Math.abs(v), x.scale());
      case SIN -> wave(Math.sin(angle(x)), Math.cos(v), x);
      case COS -> wave(Math.cos(angle(x)), Math.sin(v), x);
      case TAN -> tangent(x);
      case ATAN -> Estimate.result(Math.atan(v), x.scale() / (1 + x.leastSize() * x.leastSize()));
      case EXP -> exponential(Math.exp(v), x.scale());
      case LN ->
          x.sign() <= 0
              ? Estimate.MISSING
              : Estimate.result(Math.log(v), x.scale() / x.leastSize());
      case TANH -> {
        double least = Math.tanh(x.leastSize());
        double slope = 1 - least * least;
        yield Estimate.result(Math.tanh(v), slope * x.scale() + TANH_SCALE);
      }
      case ATAN2 -> angleOf(x, arguments.get(1));
    };
  }

  /**
   * A value of exponential growth.
   *
   * @param relativeEffect the effect of the operands' scales on the value's logarithm
   */
  static Estimate exponential(double value, double relativeEffect) {
    if (relativeEffect * Estimate.CLOSE_CALL > CURVED) {
      throw new UndecidedException("exponent in doubt");
    }
    if (Double.isInfinite(value)) {
      // Doubt could bring it back into range only if it is just out of it.
      return Estimate.MISSING;
    }
    if (value == 0) {
      throw new UndecidedException("underflow");
    }
    return Estimate.result(value, Math.abs(value) * relativeEffect);
  }

  private static Estimate root(Estimate x) {
    int sign = x.sign();
    if (sign <= 0) {
      return sign == 0 ? Estimate.exact(0) : Estimate.MISSING;
    }
    double value = Math.sqrt(x.value());
    return Estimate.result(value, x.scale() / Math.sqrt(x.leastSize()));
  }

  /** At the crests of a wave the second derivative counts. */
  private static Estimate wave(double value, double slope, Estimate x) {
    return Estimate.result(value, (Math.abs(slope) + x.doubt()) * x.scale());
  }

  private static Estimate tangent(Estimate x) {
    double value = Math.tan(angle(x));
    if (Math.abs(value) * x.doubt() > CURVED) {
      throw new UndecidedException("too close to a pole");
    }
    return Estimate.result(value, (1 + value * value) * x.scale());
  }

  private static Estimate angleOf(Estimate x, Estimate y) {
    if (y.isZero()) {
      int sign = x.sign();
      return sign == 0 ? Estimate.MISSING : Estimate.exact(sign > 0 ? 0 : Math.PI);
    }
    if (Math.abs(y.value()) <= y.doubt() && x.value() <= x.doubt()) {
      throw new UndecidedException("too close to the turn from π to -π");
    }
    double length = Math.hypot(x.leastSize(), y.leastSize());
    return Estimate.result(
        Math.atan2(y.value(), x.value()),
        Math.abs(y.value()) / length * (x.scale() / length)
            + Math.abs(x.value()) / length * (y.scale() / length));
  }

  private static double angle(Estimate x) {
    if (Math.abs(x.value()) + x.doubt() >= LARGE_ANGLE || x.doubt() > CURVED) {
      throw new UndecidedException("angle of many turns, or in doubt");
    }
    return x.value();
  }
}
