package spanledger.joint.sharing;

import static spanledger.procedure.Formulas.exp;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Shear of a bolt in a group that turns about its instantaneous centre, per the ultimate shear of a
 * bolt: the bolt farthest from the centre deforms most, the others in proportion.
 *
 * <p>Inputs r, r_max, Δ_max, μ, λ; steps Δ, ρ (shear per ultimate shear).
 */
public final class BoltLoadDeformation {

  /** The law and its figures; read for structural steel bolts only. */
  static final Source LAW =
      Source.fromMemory(
          "S. F. Crawford and G. L. Kulak, Eccentrically loaded bolted connections, J. Struct. Div."
              + " ASCE 97 (1971)",
          "ST3, pp. 765-783; AISC Steel Construction Manual, Part 7");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltLoadDeformation() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("bolt-load-deformation", "Shear of a bolt by its deformation");
    Reference distance =
        p.input("r", "distance from the centre", Dimension.LENGTH, Domain.NOT_NEGATIVE);
    Reference farthest =
        p.input("r_max", "distance of the farthest bolt", Dimension.LENGTH, Domain.POSITIVE);
    Reference most =
        p.input("Δ_max", "deformation at ultimate shear", Dimension.LENGTH, Domain.POSITIVE);
    Reference rate = p.input("μ", "rate of the law", Dimension.LENGTH.power(-1), Domain.POSITIVE);
    Reference power = p.input("λ", "exponent of the law", Dimension.NONE, Domain.POSITIVE);
    Reference deformation =
        p.step(
            "Δ",
            "deformation of the bolt",
            Dimension.LENGTH,
            most.times(distance).over(farthest),
            LAW);
    p.step(
        "ρ",
        "its shear per ultimate shear",
        Dimension.NONE,
        number(1).minus(exp(rate.times(deformation).negated())).pow(power),
        LAW);
    return p.build();
  }
}
