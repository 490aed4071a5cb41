/** Graded triangle meshes of outlines. */
@NullMarked
package spanledger.section.mesh;

import org.jspecify.annotations.NullMarked;
