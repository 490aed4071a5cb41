package spanledger.robustness;

import java.util.List;
import spanledger.frame.Member;

/**
 * What becomes of the frame without one member.
 *
 * @param member the member left out
 * @param alike members of the same section and length of which each was left out in its turn and
 *     was no worse; with this one
 * @param without how the frame bears the loads without it
 */
public record BraceLoss(Member member, List<String> alike, FrameState without) {
  public BraceLoss {
    alike = List.copyOf(alike);
  }
}
