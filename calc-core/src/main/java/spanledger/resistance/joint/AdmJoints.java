package spanledger.resistance.joint;

import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;

/**
 * Joints by the Aluminum Design Manual 2020, from memory, by load and resistance factors or by
 * allowable strength: the figures decide.
 *
 * @param figures for example those of id {@code adm-2020-lrfd}
 */
public record AdmJoints(CodeFigures figures) implements FactoredJoints {

  @Override
  public boolean adm() {
    return true;
  }

  @Override
  public JointCheck blockTearing(BlockOfMetal block, Feed force) {
    return BlockTearing.adm(
        JointFigures.phi(figures, "joint"), JointFigures.omega(figures, "joint"), block, force);
  }
}
