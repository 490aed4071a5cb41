/**
 * Saint-Venant torsion, warping and shear of sections of any shape by finite elements, with bounds
 * on the error.
 */
@NullMarked
package spanledger.section.warping;

import org.jspecify.annotations.NullMarked;
