package spanledger.section.warping;

import spanledger.section.outline.Point;

/**
 * Saint-Venant torsion and warping.
 *
 * @param torsionConstant I_t: the mean of its bounds, mm⁴
 * @param lowerBound the bound from the stress function, mm⁴
 * @param upperBound the bound from the warping function, mm⁴
 * @param torsionModulus W_t: torsion constant per largest shear stress of unit twist, mm³; see
 *     {@link FieldReport#sharpCorners}
 * @param peak largest shear stress per N·mm of torsion
 * @param shearCentre from the warping function (Trefftz), which no Poisson's ratio enters; in the
 *     coordinates of the outline, mm
 * @param warpingConstant I_w about the shear centre, mm⁶
 */
public record TorsionProperties(
    double torsionConstant,
    double lowerBound,
    double upperBound,
    double torsionModulus,
    PeakStress peak,
    Point shearCentre,
    double warpingConstant) {}
