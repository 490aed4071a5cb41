package spanledger.verification.envelope;

import spanledger.analysis.InternalForces;
import spanledger.envelope.StrengthMeasure;
import spanledger.frame.Member;
import spanledger.resistance.ResistanceFactors;
import spanledger.section.SectionProperties;

/**
 * Utilisations of one member written out by hand, as a check of the procedures: elastic stresses
 * added on the safe side, equivalent stress of the yield criterion (EN 1999-1-1:2007, 6.2.1(5),
 * from memory, confirm against the standard).
 */
record Stresses(Member member, double design) {

  static Stresses of(Member member, ResistanceFactors factors) {
    return new Stresses(
        member, factors.factor() * member.alloy().proofStrength() / factors.divisor());
  }

  double utilisation(StrengthMeasure measure, InternalForces f) {
    SectionProperties s = member.section().properties();
    double bending =
        Math.abs(f.momentY()) / s.elasticModulusY() + Math.abs(f.momentZ()) / s.elasticModulusZ();
    double shear =
        Math.abs(f.shearY()) / s.peakShearAreaY()
            + Math.abs(f.shearZ()) / s.peakShearAreaZ()
            + Math.abs(f.torque()) / s.torsionModulus();
    double normal = Math.abs(f.axial()) / s.area() + bending;
    return switch (measure) {
      case BENDING -> bending / design;
      case SHEAR -> shear * Math.sqrt(3) / design;
      case COMBINED -> Math.sqrt(normal * normal + 3 * shear * shear) / design;
      case WALL -> throw new IllegalArgumentException("Walls are compared elsewhere.");
    };
  }
}
