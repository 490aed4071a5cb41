package spanledger.resistance.asnzs1664;

import java.util.List;
import spanledger.material.TemperTable;
import spanledger.resistance.adm.Lacks;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Preparation;

/** Member checks by AS/NZS 1664.1:1997, limit state design. */
public final class AsNzsMemberCode implements MemberCode {

  private final CodeFigures figures;
  private final TemperTable tempers;

  /**
   * @param figures capacity factors, those of id {@code as-nzs-1664.1}
   * @param tempers compressive strengths and temper families
   */
  public AsNzsMemberCode(CodeFigures figures, TemperTable tempers) {
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
        ? new AsNzsPreparation(member, tempers.find(member.alloy()).orElseThrow(), figures)
            .prepare()
        : new NotCheckable(member, lacks);
  }
}
