package spanledger.quantity;

/**
 * The physical dimension of a quantity as exponents of length, force, mass and time.
 *
 * <p>Exponents are held in twelfths, so that square, cube and fourth roots stay exact. The core
 * unit of each base is fixed: mm, N, kg and s. Angles (rad) are dimensionless.
 *
 * @param length twelfths of the exponent of mm
 * @param force twelfths of the exponent of N
 * @param mass twelfths of the exponent of kg
 * @param time twelfths of the exponent of s
 */
public record Dimension(int length, int force, int mass, int time) {

  private static final int WHOLE = 12;

  /** A pure number, a ratio or an angle in rad. */
  public static final Dimension NONE = whole(0, 0, 0, 0);

  /** Length, mm. */
  public static final Dimension LENGTH = whole(1, 0, 0, 0);

  /** Area, mm². */
  public static final Dimension AREA = whole(2, 0, 0, 0);

  /** Section modulus or volume, mm³. */
  public static final Dimension SECTION_MODULUS = whole(3, 0, 0, 0);

  /** Second moment of area or torsion constant, mm⁴. */
  public static final Dimension SECOND_MOMENT = whole(4, 0, 0, 0);

  /** Warping constant, mm⁶. */
  public static final Dimension WARPING_CONSTANT = whole(6, 0, 0, 0);

  /** Force, N. */
  public static final Dimension FORCE = whole(0, 1, 0, 0);

  /** Moment, N·mm; also rotational stiffness, N·mm per rad. */
  public static final Dimension MOMENT = whole(1, 1, 0, 0);

  /** Stress, modulus or pressure, MPa (N/mm²). */
  public static final Dimension STRESS = whole(-2, 1, 0, 0);

  /** Line load or translational stiffness, N/mm. */
  public static final Dimension LINE_LOAD = whole(-1, 1, 0, 0);

  /** Flexural rigidity, N·mm². */
  public static final Dimension FLEXURAL_RIGIDITY = whole(2, 1, 0, 0);

  /** Mass, kg. */
  public static final Dimension MASS = whole(0, 0, 1, 0);

  /** Density, kg/mm³. */
  public static final Dimension DENSITY = whole(-3, 0, 1, 0);

  /** Mass per length, kg/mm. */
  public static final Dimension MASS_PER_LENGTH = whole(-1, 0, 1, 0);

  /** Weight per mass (the acceleration of free fall), N/kg. */
  public static final Dimension FORCE_PER_MASS = whole(0, 1, -1, 0);

  /** Flexibility of a rotational spring, 1/(N·mm). */
  public static final Dimension ROTATIONAL_FLEXIBILITY = whole(-1, -1, 0, 0);

  /** Frequency, 1/s. */
  public static final Dimension FREQUENCY = whole(0, 0, 0, -1);

  /**
   * A dimension with whole exponents.
   *
   * @param length exponent of mm
   * @param force exponent of N
   * @param mass exponent of kg
   * @param time exponent of s
   */
  public static Dimension whole(int length, int force, int mass, int time) {
    return new Dimension(length * WHOLE, force * WHOLE, mass * WHOLE, time * WHOLE);
  }

  /** The dimension of a product. */
  public Dimension times(Dimension other) {
    return new Dimension(
        length + other.length, force + other.force, mass + other.mass, time + other.time);
  }

  /** The dimension of a quotient. */
  public Dimension per(Dimension other) {
    return new Dimension(
        length - other.length, force - other.force, mass - other.mass, time - other.time);
  }

  /**
   * The dimension of this raised to {@code exponent}.
   *
   * @throws IllegalArgumentException if an exponent of the result is not a whole number of twelfths
   */
  public Dimension power(double exponent) {
    return new Dimension(
        scaled(length, exponent),
        scaled(force, exponent),
        scaled(mass, exponent),
        scaled(time, exponent));
  }

  private int scaled(int twelfths, double exponent) {
    double exact = twelfths * exponent;
    long rounded = Math.round(exact);
    if (Math.abs(exact - rounded) > 1e-9) {
      throw new IllegalArgumentException(
          "A quantity in " + coreUnit() + " cannot be raised to the power " + exponent + ".");
    }
    return Math.toIntExact(rounded);
  }

  /** Whether this is a pure number. */
  public boolean isNone() {
    return equals(NONE);
  }

  /**
   * The core unit of this dimension as text, for example {@code N·mm}, {@code MPa} or {@code mm⁴};
   * an empty text for a pure number.
   */
  public String coreUnit() {
    return CoreUnitText.of(this);
  }

  @Override
  public String toString() {
    return isNone() ? "a pure number" : coreUnit();
  }
}
