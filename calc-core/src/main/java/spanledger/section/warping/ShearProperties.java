package spanledger.section.warping;

import spanledger.section.outline.Point;

/**
 * Shear areas by energy: a beam of area A_s under constant shear stress V/A_s stores the same
 * energy as the section.
 *
 * @param poissonRatio ν used
 * @param areaY A_sy for shear along y, mm²
 * @param areaZ A_sz for shear along z, mm²
 * @param coupling energy of V_y on the strains of V_z, as 1/A_syz, 1/mm²; zero for symmetric
 *     sections
 * @param peakY largest shear stress per N along y
 * @param peakZ largest shear stress per N along z
 * @param elasticShearCentre where shear forces act without mean twist for this ν; in the
 *     coordinates of the outline, mm
 */
public record ShearProperties(
    double poissonRatio,
    double areaY,
    double areaZ,
    double coupling,
    PeakStress peakY,
    PeakStress peakZ,
    Point elasticShearCentre) {}
