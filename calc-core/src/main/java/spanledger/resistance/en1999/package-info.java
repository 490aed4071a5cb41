/**
 * Member checks of EN 1999-1-1: classes of walls, effective sections, resistances of sections,
 * member buckling, lateral-torsional buckling, interaction, softening beside welds, concentrated
 * loads on webs.
 *
 * <p>{@link spanledger.resistance.en1999.En1999} puts the procedures together for a member. Every
 * formula is a step of one of the procedures here and names its clause; clauses and formulas are
 * from memory unless a step says otherwise, and must be confirmed against the standard.
 */
@NullMarked
package spanledger.resistance.en1999;

import org.jspecify.annotations.NullMarked;
