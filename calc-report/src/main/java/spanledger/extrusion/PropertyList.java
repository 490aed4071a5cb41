package spanledger.extrusion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.section.outline.BendingModuli;
import spanledger.section.outline.PlaneProperties;
import spanledger.section.outline.Point;
import spanledger.section.warping.AsymmetryProperties;
import spanledger.section.warping.FieldProperties;
import spanledger.section.warping.FieldReport;
import spanledger.section.warping.ShearProperties;
import spanledger.section.warping.TorsionProperties;

/** The properties of an extrusion one by one, for print and for other programs. */
public final class PropertyList {

  private static final String LENGTH = "mm";
  private static final String AREA = "mm²";
  private static final String MODULUS = "mm³";
  private static final String MOMENT = "mm⁴";

  /**
   * A property.
   *
   * @param symbol its symbol
   * @param words what it is
   * @param value in the unit
   * @param unit its unit; empty for pure numbers
   * @param error what is known of its error, relative; empty if it is exact
   */
  public record Property(
      String symbol, String words, double value, String unit, Optional<RelativeError> error) {}

  /**
   * What is known of an error.
   *
   * @param size relative
   * @param isBound whether it is a bound, and not the change in the last refinement
   */
  public record RelativeError(double size, boolean isBound) {}

  private final List<Property> list = new ArrayList<>();

  private PropertyList() {}

  /** What follows from the boundary exactly, arcs included. */
  public static List<Property> exact(PlaneProperties plane) {
    PropertyList all = new PropertyList();
    all.exact("A", "area", plane.area(), AREA);
    all.exact("L", "length of the boundary", plane.perimeter(), LENGTH);
    all.exact("L_o", "length of the outer boundary", plane.outerPerimeter(), LENGTH);
    all.exact("y_C", "y of the centroid", plane.centroid().y(), LENGTH);
    all.exact("z_C", "z of the centroid", plane.centroid().z(), LENGTH);
    all.exact("I_y", "second moment about y", plane.momentY(), MOMENT);
    all.exact("I_z", "second moment about z", plane.momentZ(), MOMENT);
    all.exact("I_yz", "product moment", plane.productYZ(), MOMENT);
    all.exact("α_1", "angle of the major axis from y", Math.toDegrees(plane.majorAngle()), "°");
    all.bending("y", plane.y(), plane.area());
    all.bending("z", plane.z(), plane.area());
    all.exact("I_1", "major principal moment", plane.major().secondMoment(), MOMENT);
    all.exact("I_2", "minor principal moment", plane.minor().secondMoment(), MOMENT);
    all.bending("1", plane.major(), plane.area());
    all.bending("2", plane.minor(), plane.area());
    return List.copyOf(all.list);
  }

  /** What finite elements found. */
  public static List<Property> byElements(FieldProperties field, Point centroid) {
    PropertyList all = new PropertyList();
    FieldReport report = field.report();
    RelativeError bound = new RelativeError(report.error(), true);
    RelativeError warping = new RelativeError(report.warpingChange(), false);
    RelativeError shear = new RelativeError(report.shearChange(), false);
    RelativeError peak = new RelativeError(report.peakChange(), false);
    TorsionProperties torsion = field.torsion();
    Point centre = torsion.shearCentre();
    all.found("I_t", "torsion constant", torsion.torsionConstant(), MOMENT, bound);
    all.found("W_t", "torsion modulus", torsion.torsionModulus(), MODULUS, peak);
    all.found("I_w", "warping constant", torsion.warpingConstant(), "mm⁶", warping);
    all.position("y_S", "y of the shear centre", centre.y(), LENGTH);
    all.position("z_S", "z of the shear centre", centre.z(), LENGTH);
    all.position(
        "y_s", "shear centre from the centroid, along y", centre.y() - centroid.y(), LENGTH);
    all.position(
        "z_s", "shear centre from the centroid, along z", centre.z() - centroid.z(), LENGTH);
    ShearProperties forces = field.shear();
    all.found("A_s_y", "shear area along y", forces.areaY(), AREA, shear);
    all.found("A_s_z", "shear area along z", forces.areaZ(), AREA, shear);
    all.found(
        "tau_A_y",
        "shear along y over its largest stress",
        1 / forces.peakY().stress(),
        AREA,
        peak);
    all.found(
        "tau_A_z",
        "shear along z over its largest stress",
        1 / forces.peakZ().stress(),
        AREA,
        peak);
    AsymmetryProperties asymmetry = field.asymmetry();
    all.position(
        "z_j",
        "asymmetry for bending about y (half the Wagner coefficient)",
        asymmetry.zJ(),
        LENGTH);
    all.position(
        "y_j",
        "asymmetry for bending about z (half the Wagner coefficient)",
        asymmetry.yJ(),
        LENGTH);
    all.position(
        "i_s", "polar radius of gyration about the shear centre", asymmetry.polarRadius(), LENGTH);
    return List.copyOf(all.list);
  }

  private void bending(String axis, BendingModuli moduli, double area) {
    String about = " about " + axis;
    exact(
        "i_" + axis, "radius of gyration" + about, Math.sqrt(moduli.secondMoment() / area), LENGTH);
    exact("W_el_" + axis, "least elastic modulus" + about, moduli.elasticModulus(), MODULUS);
    exact("W_pl_" + axis, "plastic modulus" + about, moduli.plasticModulus(), MODULUS);
    exact("v_" + axis, "plastic neutral axis, left of axis " + axis, moduli.plasticAxis(), LENGTH);
  }

  private void exact(String symbol, String words, double value, String unit) {
    list.add(new Property(symbol, words, value, unit, Optional.empty()));
  }

  /** Places found by finite elements, for which a relative error has no meaning near zero. */
  private void position(String symbol, String words, double value, String unit) {
    list.add(new Property(symbol, words, value, unit, Optional.empty()));
  }

  private void found(String symbol, String words, double value, String unit, RelativeError error) {
    list.add(new Property(symbol, words, value, unit, Optional.of(error)));
  }
}
