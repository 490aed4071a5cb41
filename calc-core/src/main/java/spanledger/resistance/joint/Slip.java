package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.max;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** Faces held by friction under preload: joints that must not slip, and clamp feet. */
final class Slip {

  static final Procedure EN1999 =
      define(
          "en1999-slip",
          "Slip of preloaded faces, EN 1999-1-1",
          JointSource.en1999("8.5.9.3, 8.5.9.4"));
  static final Procedure ADM =
      define(
          "adm-slip",
          "Slip of preloaded faces, Aluminum Design Manual",
          Source.fromMemory("Aluminum Design Manual 2020", "J.3, slip-critical bolts"));
  static final Procedure AS_NZS =
      define(
          "asnzs1664-slip",
          "Slip of preloaded faces, AS 4100",
          Source.fromMemory("AS 4100:2020", "9.2.3"));

  private static final CompiledProcedure EN1999_COMPILED = EN1999.compile();
  private static final CompiledProcedure ADM_COMPILED = ADM.compile();
  private static final CompiledProcedure AS_NZS_COMPILED = AS_NZS.compile();

  private Slip() {}

  /**
   * What a code sets for a limit state.
   *
   * @param state the limit state
   * @param factor φ
   * @param divisor γ or Ω
   * @param tension part of the tension that the faces lose
   */
  record Factors(JointState state, Figured factor, Figured divisor, Figured tension) {

    /** Slip under loads of use is told apart from that under design loads. */
    String words() {
      return state == JointState.SERVICE ? "slip of faces in use" : "slip of faces";
    }
  }

  static JointCheck en1999(Factors code, SlipFaces faces, Feed preload, Feed tension, Feed shear) {
    return check(EN1999_COMPILED, "EN 1999-1-1, 8.5.9.3", code, faces, preload, tension, shear);
  }

  static JointCheck adm(Factors code, SlipFaces faces, Feed preload, Feed tension, Feed shear) {
    return check(ADM_COMPILED, "Aluminum Design Manual, J.3", code, faces, preload, tension, shear);
  }

  static JointCheck asNzs(Factors code, SlipFaces faces, Feed preload, Feed tension, Feed shear) {
    return check(AS_NZS_COMPILED, "AS 4100, 9.2.3", code, faces, preload, tension, shear);
  }

  private static JointCheck check(
      CompiledProcedure procedure,
      String clause,
      Factors code,
      SlipFaces faces,
      Feed preload,
      Feed tension,
      Feed shear) {
    Working working =
        Working.of(procedure, faces.name())
            .with("V", shear)
            .with("F_p", preload)
            .with("F_t", tension)
            .given("n_b", faces.bolts(), faces.name() + ", bolts", faces.source())
            .given("n_f", faces.faces(), faces.name() + ", faces", faces.source())
            .given(
                "μ",
                faces.friction().coefficient(),
                faces.name() + ", friction",
                faces.friction().source())
            .given("k_t", code.tension())
            .given("φ_s", code.factor())
            .given("γ_s", code.divisor())
            .run();
    return new JointCheck(
        working, List.of(new JointUse("η_s", code.words(), clause, "V", "F_s_Rd")));
  }

  private static Procedure define(String name, String title, Source clause) {
    JointSteps p = new JointSteps(name, title);
    Reference shear = p.force("V", "force along the faces, all bolts together");
    Reference preload = p.force("F_p", "least preload of one bolt");
    Reference tension = p.force("F_t", "tension on one bolt from outside");
    Reference bolts = p.factor("n_b", "bolts");
    Reference faces = p.factor("n_f", "faces that each bolt presses");
    Reference friction = p.factor("μ", "coefficient of friction");
    Reference lost = p.number0("k_t", "part of the tension that the faces lose");
    Reference factor = p.factor("φ_s", "resistance factor, slip");
    Reference divisor = p.factor("γ_s", "partial or safety factor, slip");
    Reference pressing =
        p.step(
            "F_c",
            "force that presses the faces, one bolt",
            max(constant(0, Dimension.FORCE), preload.minus(lost.times(tension))),
            clause);
    Reference resistance =
        p.step(
            "F_s_Rd",
            "resistance to slip",
            factor.times(bolts).times(faces).times(friction).times(pressing).over(divisor),
            clause);
    p.use("η_s", "slip of faces", shear, resistance, clause);
    return p.build();
  }
}
