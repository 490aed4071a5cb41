package spanledger.section.outline;

import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The elastic section moduli of the two extreme fibres for bending about one axis. */
public final class ElasticModulus {

  private static final Source BENDING = Source.derived("Elastic bending of beams, extreme fibres");

  /** Inputs I, e_+, e_-; steps W_+, W_-, W_el. */
  public static final Procedure PROCEDURE = procedure();

  private ElasticModulus() {}

  private static Procedure procedure() {
    Procedure.Builder p = Procedure.named("elastic-modulus", "Elastic section moduli");
    Reference moment =
        p.input("I", "second moment about the axis", Dimension.SECOND_MOMENT, Domain.POSITIVE);
    Reference left =
        p.input("e_+", "farthest fibre on the positive side", Dimension.LENGTH, Domain.POSITIVE);
    Reference right =
        p.input("e_-", "farthest fibre on the negative side", Dimension.LENGTH, Domain.POSITIVE);
    Reference positive =
        p.step(
            "W_+",
            "modulus of the positive side",
            Dimension.SECTION_MODULUS,
            moment.over(left),
            BENDING);
    Reference negative =
        p.step(
            "W_-",
            "modulus of the negative side",
            Dimension.SECTION_MODULUS,
            moment.over(right),
            BENDING);
    p.step(
        "W_el",
        "elastic section modulus",
        Dimension.SECTION_MODULUS,
        min(positive, negative),
        BENDING);
    return p.build();
  }
}
