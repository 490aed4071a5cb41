package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import spanledger.joint.BasePlateFoot;
import spanledger.joint.FootMetal;
import spanledger.joint.PlateBending;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.joint.JointUse;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;

/** Works out how a base plate bends: what of it presses, and its stress beside the stem. */
final class PlateCheck {

  private static final CompiledProcedure WIDTH = PlateWidth.PROCEDURE.compile();
  private static final CompiledProcedure MOMENT = PlateLineMoment.PROCEDURE.compile();
  private static final CompiledProcedure STRESS = PlateStress.PROCEDURE.compile();

  private static final Source LINES =
      Source.derived(
          "Geometry of the plate, its stem and its anchors; a pull spreads at 45 deg, common"
              + " practice, no source");

  private final BasePlateFoot plate;
  private final PlateBending bending;
  private final String where;
  private final Working strengths;
  private final List<PlateLine> lines;

  /**
   * @param where the foot, in words
   */
  PlateCheck(JointCode code, BasePlateFoot plate, PlateBending bending, String where) {
    this.plate = plate;
    this.bending = bending;
    this.where = where;
    this.strengths = strengths(code, bending.metal(), plate.source());
    this.lines = PlateLine.of(plate, bending);
  }

  /**
   * Design strengths of a part of a foot.
   *
   * @param source of strengths that are of the foot itself
   */
  static Working strengths(JointCode code, FootMetal metal, Source source) {
    return code.strengths(
        new Metal(
            metal.name(),
            metal.proofStrength(),
            metal.ultimateStrength(),
            metal.youngsModulus(),
            OptionalDouble.empty(),
            metal.strengthSource().orElse(source)));
  }

  /** What of the plate presses. */
  Working width() {
    Source source = plate.source();
    return Working.of(WIDTH, where)
        .given("t", bending.thickness(), where + ", thickness of the plate", source)
        .from(strengths, "f_od", "f_od")
        .given("p_d", plate.allowablePressure(), where + ", allowable pressure", source)
        .given("L_1", plate.lengthX(), where + ", first side of the plate", source)
        .given("s_1", bending.stemX(), where + ", stem along the first side", source)
        .given("m_1", -plate.offset().x(), where + ", stem from the middle, first side", source)
        .given("L_2", plate.lengthY(), where + ", second side of the plate", source)
        .given("s_2", bending.stemY(), where + ", stem along the second side", source)
        .given("m_2", -plate.offset().y(), where + ", stem from the middle, second side", source)
        .run();
  }

  /**
   * The plate at every line about which its anchors bend it.
   *
   * @param demands of the anchors, in the order of the foot
   */
  List<JointCheck> checks(List<Working> demands) {
    List<JointCheck> checks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      checks.add(check(lines.get(i), where + ", line " + (i + 1) + " beside the stem", demands));
    }
    return checks;
  }

  private JointCheck check(PlateLine line, String name, List<Working> demands) {
    Feed moment = new Feed.Given(0, name + ", before the first anchor", LINES);
    for (int i = 0; i < demands.size(); i++) {
      if (line.arms().get(i) > 0) {
        String anchor = plate.anchors().size() == 1 ? "the anchor" : "anchor " + (i + 1);
        moment =
            Working.of(MOMENT, name + ", with " + anchor)
                .with("M_b", moment)
                .from(demands.get(i), "F_t", "F_t")
                .given("m", line.arms().get(i), name + ", " + anchor + " beyond it", LINES)
                .run()
                .feed("M");
      }
    }
    Working stress =
        Working.of(STRESS, name)
            .with("M", moment)
            .given("b", line.width(), name + ", width that bends", LINES)
            .given("t", bending.thickness(), where + ", thickness of the plate", plate.source())
            .from(strengths, "f_od", "f_od")
            .run();
    return new JointCheck(
        stress,
        List.of(
            new JointUse(
                "η_b", "base plate bent by its anchors", PlateStress.CLAUSE, "σ", "f_od")));
  }
}
