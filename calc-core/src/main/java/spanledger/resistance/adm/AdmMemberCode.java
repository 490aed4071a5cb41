package spanledger.resistance.adm;

import spanledger.material.TemperStrengths;
import spanledger.material.TemperTable;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.PreparedMember;

/**
 * Member checks by the Aluminum Design Manual 2020, by load and resistance factors or by allowable
 * strength: the figures decide.
 */
public final class AdmMemberCode extends TemperedMemberCode {

  /**
   * @param figures resistance and safety factors, for example those of id {@code adm-2020-lrfd}
   * @param tempers compressive strengths and temper families
   */
  public AdmMemberCode(CodeFigures figures, TemperTable tempers) {
    super(figures, tempers);
  }

  @Override
  protected PreparedMember prepare(MemberCase member, TemperStrengths temper) {
    return new AdmPreparation(member, temper, figures()).prepare();
  }
}
