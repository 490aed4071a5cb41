package spanledger.verification.adm;

import java.util.EnumMap;
import java.util.Map;
import spanledger.material.Alloy;
import spanledger.provenance.Source;
import spanledger.resistance.adm.AdmMemberCode;
import spanledger.resistance.asnzs1664.AsNzsMemberCode;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberCode;
import spanledger.resistance.member.MemberEvaluator;
import spanledger.resistance.member.MemberSections;
import spanledger.resistance.member.PreparedMember;
import spanledger.section.Section;
import spanledger.section.Shape;
import spanledger.tables.AlloyTables;
import spanledger.tables.MemberRuleTables;
import spanledger.tables.TemperTables;

/** Members to be checked, and the codes that check them. */
final class Members {

  static final double INCH = 25.4;
  static final double KSI = 6.89475729316836;

  private Members() {}

  static MemberCode adm(String id) {
    return new AdmMemberCode(MemberRuleTables.figures(id), TemperTables.standard());
  }

  static MemberCode asNzs() {
    return new AsNzsMemberCode(MemberRuleTables.figures("as-nzs-1664.1"), TemperTables.standard());
  }

  static Alloy alloy(String designation) {
    return AlloyTables.standard().rows().stream()
        .filter(row -> row.designation().equals(designation))
        .findFirst()
        .orElseThrow();
  }

  /** A member with the same length for every mode. */
  static MemberCase member(Shape shape, String alloy, double length) {
    Map<BucklingMode, BucklingLength> lengths = new EnumMap<>(BucklingMode.class);
    for (BucklingMode mode : BucklingMode.values()) {
      lengths.put(mode, new BucklingLength(length, "declared", Source.declared("test")));
    }
    Section section = new Section("section", shape);
    return new MemberCase(
        "member", MemberSections.of(section).orElseThrow(), alloy(alloy), lengths);
  }

  static PreparedMember prepared(MemberCode code, MemberCase member) {
    return (PreparedMember) code.prepare(member);
  }

  /** How much a check uses under six internal forces, uniform along the member. */
  static double use(PreparedMember member, String symbol, double... forces) {
    MemberEvaluator evaluator = member.evaluator();
    evaluator.evaluate(Effect.uniform(forces));
    for (int i = 0; i < member.uses().size(); i++) {
      if (member.uses().get(i).symbol().equals(symbol)) {
        return evaluator.use(i);
      }
    }
    throw new IllegalArgumentException("There is no use " + symbol + ".");
  }
}
