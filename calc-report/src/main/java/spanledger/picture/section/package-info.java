/** Pictures of sections: dimensions and axes, plates and faces, warping and shear stress. */
@NullMarked
package spanledger.picture.section;

import org.jspecify.annotations.NullMarked;
