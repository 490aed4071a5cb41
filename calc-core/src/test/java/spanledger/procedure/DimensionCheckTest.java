package spanledger.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static spanledger.procedure.Formulas.angleOf;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.exp;
import static spanledger.procedure.Formulas.less;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.quantity.Dimension;

/** Quantities that do not fit are refused when the formula is built. */
class DimensionCheckTest {

  private final Reference force = new Reference("N_Ed", Dimension.FORCE);
  private final Reference length = new Reference("L", Dimension.LENGTH);
  private final Reference ratio = new Reference("λ", Dimension.NONE);

  @Test
  void addingForceToLengthIsRefusedByName() {
    assertThatThrownBy(() -> force.plus(length))
        .isInstanceOf(DimensionMismatchException.class)
        .hasMessage("Cannot add N_Ed (N) and L (mm).");
  }

  @Test
  void subtractingAPureNumberFromALengthIsRefused() {
    assertThatThrownBy(() -> length.minus(number(1)))
        .isInstanceOf(DimensionMismatchException.class)
        .hasMessage("Cannot subtract L (mm) and 1 (a pure number).");
  }

  @Test
  void comparingChoosingAndExtremesNeedLikeQuantities() {
    assertThatThrownBy(() -> less(force, length)).hasMessage("Cannot compare N_Ed (N) and L (mm).");
    assertThatThrownBy(() -> max(force, force, length))
        .hasMessage("Cannot compare N_Ed (N) and L (mm).");
    assertThatThrownBy(() -> choose(less(ratio, number(1)), force, length))
        .hasMessage("Cannot choose between N_Ed (N) and L (mm).");
    assertThatThrownBy(() -> angleOf(force, length))
        .hasMessage("Cannot take the angle of N_Ed (N) and L (mm).");
  }

  @Test
  void functionsOfNumbersRefuseQuantities() {
    assertThatThrownBy(() -> exp(length.over(force)))
        .isInstanceOf(DimensionMismatchException.class)
        .hasMessage("L/N_Ed has dimension mm/N, but the argument of exp must be a pure number.");
  }

  @Test
  void productsAndQuotientsCombineDimensions() {
    assertThat(force.times(length).dimension()).isEqualTo(Dimension.MOMENT);
    assertThat(force.over(length.pow(2)).dimension()).isEqualTo(Dimension.STRESS);
    assertThat(length.over(length).dimension()).isEqualTo(Dimension.NONE);
    assertThat(angleOf(length, length).dimension()).isEqualTo(Dimension.NONE);
    assertThat(length.times(2).negated().over(3).dimension()).isEqualTo(Dimension.LENGTH);
  }

  @Test
  void powersAndRootsScaleDimensions() {
    assertThat(length.pow(4).dimension()).isEqualTo(Dimension.SECOND_MOMENT);
    assertThat(length.pow(-1).dimension()).isEqualTo(Dimension.whole(-1, 0, 0, 0));
    assertThat(sqrt(length.pow(2)).dimension()).isEqualTo(Dimension.LENGTH);
    assertThat(sqrt(length).times(sqrt(length)).dimension()).isEqualTo(Dimension.LENGTH);
    // Warping length, sqrt(I_w/I_t): mm⁶/mm⁴.
    assertThat(
            sqrt(constant(1, Dimension.WARPING_CONSTANT).over(constant(1, Dimension.SECOND_MOMENT)))
                .dimension())
        .isEqualTo(Dimension.LENGTH);
  }

  @Test
  void fractionalPowersKeepTheirExactDimension() {
    assertThat(length.pow(0.25).pow(4).dimension()).isEqualTo(Dimension.LENGTH);
    // One third has no short decimal; fifteen digits of it are close enough to mean a cube root.
    assertThat(length.pow(3).pow(0.333333333333333).dimension()).isEqualTo(Dimension.LENGTH);
    assertThat(sqrt(force).dimension().coreUnit()).isEqualTo("N^(1/2)");
  }

  @Test
  void powersThatLeaveNoWritableUnitAreRefusedWhenBuilt() {
    assertThatThrownBy(() -> length.pow(0.3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("A quantity in mm cannot be raised to the power 0.3.");
    Expression twelfthRoot = sqrt(sqrt(length.pow(0.333333333333333)));
    assertThatThrownBy(() -> sqrt(twelfthRoot))
        .hasMessage("A quantity in mm^(1/12) cannot be raised to the power 0.5.");
  }

  @Test
  void variablePowersTakeNumbersOnly() {
    assertThat(ratio.pow(ratio).dimension()).isEqualTo(Dimension.NONE);
    assertThatThrownBy(() -> length.pow(ratio))
        .isInstanceOf(DimensionMismatchException.class)
        .hasMessage("L has dimension mm, but the base of a variable power must be a pure number.");
    assertThatThrownBy(() -> ratio.pow(length))
        .hasMessage("L has dimension mm, but an exponent must be a pure number.");
  }

  @Test
  void tablesAreReadInTheirOwnDimension() {
    List<Interpolation.Row> rows =
        List.of(new Interpolation.Row(0, 1), new Interpolation.Row(10, 2));
    assertThat(new Interpolation(rows, length, Dimension.LENGTH, Dimension.FORCE).dimension())
        .isEqualTo(Dimension.FORCE);
    assertThatThrownBy(() -> new Interpolation(rows, force, Dimension.LENGTH, Dimension.FORCE))
        .isInstanceOf(DimensionMismatchException.class)
        .hasMessage("The table is in mm, but it is read at N_Ed (N).");
  }
}
