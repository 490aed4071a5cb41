package spanledger.job;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import spanledger.material.TemperTable;
import spanledger.resistance.adm.AdmMemberCode;
import spanledger.resistance.asnzs1664.AsNzsMemberCode;
import spanledger.resistance.en1999.En1999;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.MemberCode;
import spanledger.tables.MemberRuleTables;
import spanledger.tables.TemperTables;

/** The member codes that come with the program. */
final class MemberCodes {

  private MemberCodes() {}

  /** By the id of their figures. */
  static Map<String, MemberCodeChoice> shipped() {
    TemperTable tempers = TemperTables.standard();
    Function<CodeFigures, MemberCode> adm = figures -> new AdmMemberCode(figures, tempers);
    Map<String, Function<CodeFigures, MemberCode>> codes =
        Map.of(
            "en-1999-1-1",
            En1999::new,
            "adm-2020-lrfd",
            adm,
            "adm-2020-asd",
            adm,
            "as-nzs-1664.1",
            figures -> new AsNzsMemberCode(figures, tempers));
    Map<String, MemberCodeChoice> choices = new TreeMap<>();
    codes.forEach(
        (id, code) -> choices.put(id, new MemberCodeChoice(MemberRuleTables.figures(id), code)));
    return choices;
  }
}
