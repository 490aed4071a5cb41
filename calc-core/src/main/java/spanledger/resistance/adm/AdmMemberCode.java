package spanledger.resistance.adm;

import java.util.List;
import spanledger.material.TemperTable;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Preparation;

/**
 * Member checks by the Aluminum Design Manual 2020, by load and resistance factors or by allowable
 * strength: the figures decide.
 */
public final class AdmMemberCode implements MemberCode {

  private final CodeFigures figures;
  private final TemperTable tempers;

  /**
   * @param figures resistance and safety factors, for example those of id {@code adm-2020-lrfd}
   * @param tempers compressive strengths and temper families
   */
  public AdmMemberCode(CodeFigures figures, TemperTable tempers) {
    this.figures = figures;
    this.tempers = tempers;
  }

  @Override
  public CodeFigures figures() {
    return figures;
  }

  @Override
  public String id() {
    return figures.id();
  }

  @Override
  public String title() {
    return figures.title();
  }

  @Override
  public Preparation prepare(MemberCase member) {
    List<NotCheckable.Lack> lacks = Lacks.of(member, tempers);
    return lacks.isEmpty()
        ? new AdmPreparation(member, tempers.find(member.alloy()).orElseThrow(), figures).prepare()
        : new NotCheckable(member, lacks);
  }
}
