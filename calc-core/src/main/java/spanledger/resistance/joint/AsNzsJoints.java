package spanledger.resistance.joint;

import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;

/**
 * Joints by AS/NZS 1664.1:1997 in limit state design, from memory; steel bolts, slip and block
 * tearing in the forms of AS 4100.
 *
 * @param figures for example those of id {@code as-nzs-1664.1}
 */
public record AsNzsJoints(CodeFigures figures) implements FactoredJoints {

  @Override
  public boolean adm() {
    return false;
  }

  @Override
  public JointCheck blockTearing(BlockOfMetal block, Feed force) {
    return BlockTearing.asNzs(
        JointFigures.phi(figures, "block"), JointFigures.omega(figures, "block"), block, force);
  }
}
