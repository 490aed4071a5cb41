package spanledger.resistance.adm;

import java.util.Map;
import java.util.Objects;
import spanledger.resistance.member.Working;

/**
 * What one metal makes of a section by itself: the parent metal, or that beside welds.
 *
 * @param inputs of the member with this metal's strengths and buckling constants
 * @param column a row with P_lb and F_e_lb
 * @param bending a row with the strength of each side
 * @param shear both directions and torsion
 */
public record MetalStrengths(
    MemberInputs inputs, Working column, Map<BendingSide, Working> bending, MetalShear shear) {

  public MetalStrengths {
    bending = Map.copyOf(bending);
  }

  /** The row of bending to a side. */
  public Working of(BendingSide side) {
    return Objects.requireNonNull(bending.get(side));
  }

  /** Feeds results of bending about y, marked {@code _pos} and {@code _neg}. */
  public Working.Feeding bothSides(Working.Feeding row, String... symbols) {
    for (String symbol : symbols) {
      row.from(of(BendingSide.Y_POSITIVE), symbol + "_pos", symbol)
          .from(of(BendingSide.Y_NEGATIVE), symbol + "_neg", symbol);
    }
    return row;
  }
}
