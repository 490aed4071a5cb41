package spanledger.verification.section;

import spanledger.section.outline.PlaneProperties;
import spanledger.section.warping.FieldProperties;

/** The symbols that section cases use, and where the program keeps their values. */
final class SectionQuantity {

  private SectionQuantity() {}

  /**
   * The value that the program finds for a symbol.
   *
   * @throws IllegalArgumentException if there is no such symbol
   */
  static double of(String symbol, PlaneProperties plane, FieldProperties field) {
    return switch (symbol) {
      case "A" -> plane.area();
      case "y_c" -> plane.centroid().y();
      case "z_c" -> plane.centroid().z();
      case "I_y" -> plane.momentY();
      case "I_z" -> plane.momentZ();
      case "i_y" -> Math.sqrt(plane.momentY() / plane.area());
      case "i_z" -> Math.sqrt(plane.momentZ() / plane.area());
      case "W_el_y" -> plane.y().elasticModulus();
      case "W_el_z" -> plane.z().elasticModulus();
      case "W_pl_y" -> plane.y().plasticModulus();
      case "W_pl_z" -> plane.z().plasticModulus();
      case "I_yz" -> plane.productYZ();
      case "I_1" -> plane.major().secondMoment();
      case "I_2" -> plane.minor().secondMoment();
      case "alpha_1" -> Math.toDegrees(plane.majorAngle());
      case "W_el_1" -> plane.major().elasticModulus();
      case "W_el_2" -> plane.minor().elasticModulus();
      case "W_pl_1" -> plane.major().plasticModulus();
      case "W_pl_2" -> plane.minor().plasticModulus();
      case "z_j" -> field.asymmetry().zJ();
      case "I_t" -> field.torsion().torsionConstant();
      case "W_t" -> field.torsion().torsionModulus();
      case "I_w" -> field.torsion().warpingConstant();
      case "y_s" -> field.torsion().shearCentre().y();
      case "z_s" -> field.torsion().shearCentre().z();
      case "z_s_nu" -> field.shear().elasticShearCentre().z();
      case "A_v_y" -> field.shear().areaY();
      case "A_v_z" -> field.shear().areaZ();
      case "tau_A_y" -> 1 / field.shear().peakY().stress();
      case "tau_A_z" -> 1 / field.shear().peakZ().stress();
      default ->
          throw new IllegalArgumentException(
              "A section case asks for " + symbol + ", unknown here.");
    };
  }
}
