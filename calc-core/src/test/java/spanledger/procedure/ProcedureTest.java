package spanledger.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static spanledger.procedure.Formulas.ln;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Procedures are checked when they are defined, and their inputs when they are run. */
class ProcedureTest {

  private static final Source SOURCE = Source.derived("elementary statics");

  /** Midspan moment and stress of a simply supported beam under a uniform load. */
  private static Procedure beam() {
    Procedure.Builder p = Procedure.named("uniform-beam", "Uniformly loaded beam");
    Reference q = p.input("q", "line load", Dimension.LINE_LOAD, Domain.NOT_NEGATIVE);
    Reference length = p.input("L", "span", Dimension.LENGTH, Domain.POSITIVE);
    Reference modulus = p.input("W", "section modulus", Dimension.SECTION_MODULUS);
    Reference moment =
        p.step("M", "midspan moment", Dimension.MOMENT, q.times(length.pow(2)).over(8), SOURCE);
    p.step("σ", "bending stress", Dimension.STRESS, moment.over(modulus), SOURCE);
    return p.build();
  }

  @Test
  void worksOutItsStepsInOrder() {
    CompiledProcedure beam = beam().compile();

    double[] values = beam.run(2, 3000, 30_000);

    // q L²/8 = 2·3000²/8 = 2 250 000 N·mm; /30 000 mm³ = 75 MPa. Exact in binary.
    assertThat(values[beam.slot("M")]).isEqualTo(2_250_000);
    assertThat(values[beam.slot("σ")]).isEqualTo(75);
    assertThat(beam.slotCount()).isEqualTo(5);
    assertThat(beam.slot("q")).isZero();
    assertThat(beam.procedure().symbol("σ").dimension()).isEqualTo(Dimension.STRESS);
  }

  @Test
  void namesTheInputThatIsOutOfItsDomain() {
    CompiledProcedure beam = beam().compile();

    assertThatThrownBy(() -> beam.run(2, -3000, 30_000))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessage("Uniformly loaded beam: span (L) is -3000 mm, but must be greater than 0.");
    assertThatThrownBy(() -> beam.run(-0.5, 3000, 30_000))
        .hasMessage("Uniformly loaded beam: line load (q) is -0.5 N/mm, but must be at least 0.");
    assertThatThrownBy(() -> beam.run(2, 3000, Double.NaN))
        .hasMessage(
            "Uniformly loaded beam: section modulus (W) is NaN mm³, but must be any finite number.");
    assertThatThrownBy(() -> beam.run(2, Double.POSITIVE_INFINITY, 30_000))
        .hasMessageContaining("span (L) is Infinity mm");
  }

  @Test
  void namesTheStepWithoutAValue() {
    CompiledProcedure beam = beam().compile();

    assertThatThrownBy(() -> beam.run(2, 3000, 0))
        .isInstanceOf(OutOfDomainException.class)
        .hasMessage("Uniformly loaded beam: bending stress (σ) has no value: 2250000/0.");
  }

  @Test
  void namesTheFirstOfSeveralStepsWithoutAValue() {
    Procedure.Builder p = Procedure.named("roots", "Roots");
    Reference x = p.input("x", "a number", Dimension.NONE);
    Reference root = p.step("r", "its root", Dimension.NONE, sqrt(x), SOURCE);
    p.step("s", "more", Dimension.NONE, root.plus(number(1)), SOURCE);
    CompiledProcedure roots = p.build().compile();

    assertThatThrownBy(() -> roots.run(-4)).hasMessage("Roots: its root (r) has no value: √(-4).");
  }

  @Test
  void countsItsInputs() {
    assertThatThrownBy(() -> beam().compile().run(2, 3000))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("uniform-beam takes 3 inputs, found 2.");
    assertThatThrownBy(() -> beam().compile().slot("V"))
        .hasMessage("Procedure uniform-beam has no symbol V.");
    assertThatThrownBy(() -> beam().symbol("V"))
        .hasMessage("Procedure uniform-beam has no symbol V.");
  }

  @Test
  void refusesUnknownAndLaterSymbols() {
    Procedure.Builder p = Procedure.named("p", "P");
    Reference stranger = new Reference("V_Ed", Dimension.FORCE);

    assertThatThrownBy(() -> p.step("x", "twice", Dimension.FORCE, stranger.times(2), SOURCE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Step x of p uses V_Ed, which is not defined before it.");
    // A refused step leaves nothing behind.
    assertThat(p.input("x", "a length", Dimension.LENGTH).symbol()).isEqualTo("x");
  }

  @Test
  void refusesASymbolOfAnotherProcedureWithAnotherDimension() {
    Procedure.Builder p = Procedure.named("p", "P");
    p.input("b", "width", Dimension.LENGTH);
    Reference other = new Reference("b", Dimension.AREA);

    assertThatThrownBy(() -> p.step("x", "same", Dimension.AREA, other, SOURCE))
        .isInstanceOf(DimensionMismatchException.class)
        .hasMessage("Step x of p uses b in mm², but it is defined in mm.");
  }

  @Test
  void refusesASymbolDefinedTwice() {
    Procedure.Builder p = Procedure.named("p", "P");
    Reference b = p.input("b", "width", Dimension.LENGTH);

    assertThatThrownBy(() -> p.input("b", "breadth", Dimension.LENGTH))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Procedure p defines b twice.");
    assertThatThrownBy(() -> p.step("b", "width again", Dimension.LENGTH, b, SOURCE))
        .hasMessage("Procedure p defines b twice.");
    assertThatThrownBy(() -> p.input(" ", "nothing", Dimension.LENGTH))
        .hasMessage("Procedure p has an empty symbol.");
  }

  @Test
  void refusesAStepOfAnotherDimensionThanDeclared() {
    Procedure.Builder p = Procedure.named("p", "P");
    Reference b = p.input("b", "width", Dimension.LENGTH);

    assertThatThrownBy(() -> p.step("A", "area", Dimension.AREA, b.pow(3), SOURCE))
        .isInstanceOf(DimensionMismatchException.class)
        .hasMessage("Step A of p should be in mm², but its formula b^3 is in mm³.");
  }

  @Test
  void isCheckedHoweverItIsMade() {
    Reference x = new Reference("x", Dimension.NONE);
    Reference y = new Reference("y", Dimension.NONE);
    Step step = new Step(y, "logarithm", ln(x), SOURCE);

    assertThatThrownBy(() -> new Procedure("p", "P", List.of(), List.of(step)))
        .hasMessage("Step y of p uses x, which is not defined before it.");
    assertThatThrownBy(() -> Procedure.named("two words", "P"))
        .hasMessage(
            "The name of a procedure must be without spaces and not empty, found \"two words\".");
  }

  @Test
  void domainsSayWhatTheyHold() {
    assertThat(Domain.ANY.words()).isEqualTo("any finite number");
    assertThat(Domain.POSITIVE.words()).isEqualTo("greater than 0");
    assertThat(Domain.NOT_NEGATIVE.words()).isEqualTo("at least 0");
    assertThat(Domain.FRACTION.words()).isEqualTo("at least 0 and at most 1");
    assertThat(new Domain(Double.NEGATIVE_INFINITY, false, 2.5).words()).isEqualTo("at most 2.5");
    assertThat(new Domain(1, false, 3).contains(1)).isFalse();
    assertThat(new Domain(1, true, 3).contains(1)).isTrue();
    assertThat(new Domain(1, true, 3).contains(3)).isTrue();
    assertThat(new Domain(1, true, 3).contains(Math.nextUp(3.0))).isFalse();
    assertThat(Domain.ANY.contains(Double.NEGATIVE_INFINITY)).isFalse();
    assertThatThrownBy(() -> new Domain(3, true, 1))
        .hasMessage("A domain must reach from less to more, found 3.0 to 1.0.");
    assertThatThrownBy(() -> new Domain(Double.NaN, true, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void checkedAndUncheckedRunsAgree() {
    CompiledProcedure beam = beam().compile();
    double[] values = beam.newSlots();
    values[beam.slot("q")] = 1.7;
    values[beam.slot("L")] = 1234;
    values[beam.slot("W")] = 9876;
    beam.evaluate(values);

    assertThat(values).containsExactly(beam.run(1.7, 1234, 9876), within(0.0));
  }
}
