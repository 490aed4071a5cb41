package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * From the strengths of elements to that of the section, a row per element that goes on from the
 * row before. Both publications share it.
 */
public final class ElementRows {

  private static final Source SUM =
      Source.fromMemory(
          "Aluminum Design Manual 2020", "E.4.1 (AS/NZS 1664.1:1997, 4.7.2), weighted average");
  private static final Source LIMIT =
      Source.fromMemory(
          "Aluminum Design Manual 2020", "F.3.3 (AS/NZS 1664.1:1997, 4.7.3), limiting element");

  /** Before the first element. Inputs F_0, A, E; steps P_lb, F_e_lb. */
  public static final Procedure COMPRESSION_START = compressionStart();

  /**
   * One element of a column. Inputs P_lb_0, F_e_lb_0 (before it), F_0, F_c, F_e, b, t; steps P_lb,
   * F_e_lb.
   */
  public static final Procedure COMPRESSION = compression();

  /** Before the first element. Inputs F_0, I, c, E; steps M_lb, F_e_fl. */
  public static final Procedure BENDING_START = bendingStart();

  /**
   * One element of a beam. Inputs M_lb_0, F_e_fl_0 (before it), F_c, F_e, I, c (its most compressed
   * edge from the neutral axis), flange; steps M_i, M_lb, F_e_fl.
   */
  public static final Procedure BENDING = bending();

  private ElementRows() {}

  private static Procedure compressionStart() {
    Procedure.Builder p =
        Procedure.named("element-sum-start", "Section in compression, all of it stocky");
    Reference stress = Symbols.stress(p, "F_0", "strength of stocky parts");
    Reference area = Symbols.area(p, "A", "area");
    Reference modulus = Symbols.modulus(p);
    p.step("P_lb", "strength of the section", Dimension.FORCE, stress.times(area), SUM);
    p.step(
        "F_e_lb",
        "least elastic buckling stress so far; E stands for none",
        Dimension.STRESS,
        modulus,
        SUM);
    return p.build();
  }

  private static Procedure compression() {
    Procedure.Builder p =
        Procedure.named("element-sum", "Section in compression, element after element");
    Reference before = p.input("P_lb_0", "strength before this element", Dimension.FORCE);
    Reference least = Symbols.stress(p, "F_e_lb_0", "least elastic buckling stress before");
    Reference stocky = Symbols.stress(p, "F_0", "strength of stocky parts");
    Reference stress = Symbols.stress(p, "F_c", "strength of the element");
    Reference elastic = Symbols.stress(p, "F_e", "elastic buckling stress of the element");
    Reference width = Symbols.length(p, "b", "width of the element");
    Reference thickness = Symbols.length(p, "t", "thickness of the element");
    Reference area =
        p.step("A_i", "area of the element", Dimension.AREA, width.times(thickness), SUM);
    p.step(
        "P_lb",
        "strength of the section",
        Dimension.FORCE,
        before.minus(stocky.minus(stress).times(area)),
        SUM);
    p.step(
        "F_e_lb",
        "least elastic buckling stress so far",
        Dimension.STRESS,
        min(least, elastic),
        SUM);
    return p.build();
  }

  private static Procedure bendingStart() {
    Procedure.Builder p =
        Procedure.named("element-limit-start", "Section in bending, all of it stocky");
    Reference stress = Symbols.stress(p, "F_0", "greatest strength of any fibre");
    Reference moment = Symbols.secondMoment(p, "I", "second moment of area");
    Reference fibre = Symbols.length(p, "c", "most compressed fibre from the neutral axis");
    Reference modulus = Symbols.modulus(p);
    p.step(
        "M_lb",
        "strength of the section",
        Dimension.MOMENT,
        stress.times(moment).over(fibre),
        LIMIT);
    p.step(
        "F_e_fl",
        "least elastic buckling stress of flanges so far; E stands for none",
        Dimension.STRESS,
        modulus,
        LIMIT);
    return p.build();
  }

  private static Procedure bending() {
    Procedure.Builder p =
        Procedure.named("element-limit", "Section in bending, element after element");
    Reference before =
        p.input("M_lb_0", "strength before this element", Dimension.MOMENT, Domain.POSITIVE);
    Reference least = Symbols.stress(p, "F_e_fl_0", "least elastic buckling stress before");
    Reference stress = Symbols.stress(p, "F_c", "strength of the element");
    Reference elastic = Symbols.stress(p, "F_e", "elastic buckling stress of the element");
    Reference moment = Symbols.secondMoment(p, "I", "second moment of area");
    Reference edge =
        Symbols.length(p, "c", "most compressed edge of the element from the neutral axis");
    Reference flange = Symbols.flag(p, "flange", "uniformly compressed");
    Reference own =
        p.step(
            "M_i",
            "moment at which this element has its strength",
            Dimension.MOMENT,
            stress.times(moment).over(edge),
            LIMIT);
    p.step("M_lb", "strength of the section", Dimension.MOMENT, min(before, own), LIMIT);
    p.step(
        "F_e_fl",
        "least elastic buckling stress of flanges so far",
        Dimension.STRESS,
        choose(Symbols.is(flange), min(least, elastic), least),
        LIMIT);
    return p.build();
  }
}
