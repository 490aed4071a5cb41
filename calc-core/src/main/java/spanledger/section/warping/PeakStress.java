package spanledger.section.warping;

import spanledger.section.outline.Point;

/**
 * The largest shear stress of a load case.
 *
 * @param stress MPa per unit load (N or N·mm)
 * @param place where it acts, mm
 */
public record PeakStress(double stress, Point place) {}
