package spanledger.resistance.asnzs1664;

import spanledger.material.TemperStrengths;
import spanledger.material.TemperTable;
import spanledger.resistance.adm.TemperedMemberCode;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.PreparedMember;

/** Member checks by AS/NZS 1664.1:1997, limit state design. */
public final class AsNzsMemberCode extends TemperedMemberCode {

  /**
   * @param figures capacity factors, those of id {@code as-nzs-1664.1}
   * @param tempers compressive strengths and temper families
   */
  public AsNzsMemberCode(CodeFigures figures, TemperTable tempers) {
    super(figures, tempers);
  }

  @Override
  protected PreparedMember prepare(MemberCase member, TemperStrengths temper) {
    return new AsNzsPreparation(member, temper, figures()).prepare();
  }
}
