package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Local buckling of flat elements bent in their plane, Aluminum Design Manual 2020, B.5.5. */
public final class BentElement {

  private static final String WORK = "Aluminum Design Manual 2020";
  private static final Source IN_PLANE = Source.fromMemory(WORK, "B.5.5.1");
  private static final Source TIP = Source.fromMemory(WORK, "B.5.5.2");

  /** End of the line of webs as part of its intercept; all tempers. */
  private static final double K1 = 0.5;

  /** Factor on the strength of webs after buckling; all tempers. */
  private static final double K2 = 2.04;

  /** Both edges held. Inputs b, t, c_c, c_o, F_cy, E, B_br, D_br; steps m, F_e, λ_1, λ_2, F_c. */
  public static final Procedure BOTH_EDGES = bothEdges();

  /**
   * The edge in tension held, that in compression free. Inputs b, t, F_cy, E, B_br, D_br, C_br;
   * steps F_e, λ_1, λ_2, F_c.
   */
  public static final Procedure FREE_TIP = freeTip();

  private BentElement() {}

  private static Reference slenderness(
      Procedure.Builder p, Reference width, Reference thickness, Source source) {
    return p.step("λ", "slenderness", Dimension.NONE, width.over(thickness), source);
  }

  private static Procedure bothEdges() {
    Procedure.Builder p =
        Procedure.named("adm-bent-element", "Flat element bent in its plane, both edges held");
    Reference width = Symbols.length(p, "b", "flat width");
    Reference thickness = Symbols.length(p, "t", "thickness");
    Reference near = Symbols.length(p, "c_c", "most compressed edge from the neutral axis");
    Reference far =
        p.input(
            "c_o",
            "other edge from the neutral axis, negative if it is in tension",
            Dimension.LENGTH,
            Domain.ANY);
    Reference yield = Symbols.compressionYield(p);
    Reference modulus = Symbols.modulus(p);
    Reference intercept = Symbols.stress(p, "B_br", "intercept, bending in plane");
    Reference slope = Symbols.stress(p, "D_br", "slope, bending in plane");
    Reference slenderness = slenderness(p, width, thickness, IN_PLANE);
    Reference factor =
        p.step(
            "m",
            "factor for the distribution of stress",
            Dimension.NONE,
            choose(
                atMost(far, near.negated()),
                number(1.3).over(number(1).minus(far.over(near))),
                number(1.15).plus(far.over(near.times(2)))),
            IN_PLANE);
    UniformElement.elastic(p, "F_e", "elastic buckling stress", modulus, factor.times(slenderness));
    new ThreeRanges(
            slenderness,
            yield.times(1.5),
            intercept,
            factor.times(slope),
            intercept.times(K1).over(factor.times(slope)),
            sqrt(intercept.times(modulus)).times(K2).over(factor.times(slenderness)))
        .write(
            p, new ThreeRanges.Names("λ_1", "λ_2", "F_c", "element bent in its plane"), IN_PLANE);
    return p.build();
  }

  private static Procedure freeTip() {
    Procedure.Builder p =
        Procedure.named(
            "adm-bent-outstand", "Flat element bent in its plane, compressed edge free");
    Reference width = Symbols.length(p, "b", "flat width");
    Reference thickness = Symbols.length(p, "t", "thickness");
    Reference yield = Symbols.compressionYield(p);
    Reference modulus = Symbols.modulus(p);
    Reference intercept = Symbols.stress(p, "B_br", "intercept, bending in plane");
    Reference slope = Symbols.stress(p, "D_br", "slope, bending in plane");
    Reference end = Symbols.ratio(p, "C_br", "end of the line, bending in plane");
    Reference slenderness = slenderness(p, width, thickness, TIP);
    Reference elastic =
        UniformElement.elastic(
            p, "F_e", "elastic buckling stress", modulus, slenderness.times(3.5));
    new ThreeRanges(
            slenderness, yield.times(1.5), intercept, slope.times(3.5), end.over(3.5), elastic)
        .write(p, new ThreeRanges.Names("λ_1", "λ_2", "F_c", "bent outstand"), TIP);
    return p.build();
  }
}
