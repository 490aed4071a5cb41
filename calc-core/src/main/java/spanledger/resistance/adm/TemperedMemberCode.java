package spanledger.resistance.adm;

import java.util.List;
import spanledger.material.TemperStrengths;
import spanledger.material.TemperTable;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Preparation;
import spanledger.resistance.member.PreparedMember;

/** Member checks by one of the publications that start from the temper of the alloy. */
public abstract class TemperedMemberCode implements MemberCode {

  private final CodeFigures figures;
  private final TemperTable tempers;

  /**
   * @param figures resistance, safety or capacity factors
   * @param tempers compressive strengths and temper families
   */
  protected TemperedMemberCode(CodeFigures figures, TemperTable tempers) {
    this.figures = figures;
    this.tempers = tempers;
  }

  /** Puts the procedures of the publication together for a member that lacks nothing. */
  protected abstract PreparedMember prepare(MemberCase member, TemperStrengths temper);

  @Override
  public final CodeFigures figures() {
    return figures;
  }

  @Override
  public final String id() {
    return figures.id();
  }

  @Override
  public final String title() {
    return figures.title();
  }

  @Override
  public final Preparation prepare(MemberCase member) {
    List<NotCheckable.Lack> lacks = Lacks.of(member, tempers);
    return lacks.isEmpty()
        ? prepare(member, tempers.find(member.alloy()).orElseThrow())
        : new NotCheckable(member, lacks);
  }
}
