package spanledger.job;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import spanledger.resistance.joint.AdmJoints;
import spanledger.resistance.joint.AsNzsJoints;
import spanledger.resistance.joint.En1999Joints;
import spanledger.resistance.joint.JointCode;
import spanledger.resistance.member.CodeFigures;

/** The codes by which joints can be checked. */
final class JointCodes {

  private JointCodes() {}

  /**
   * Those whose figures are at hand, by the id of their figures.
   *
   * @param members the member codes, which have the figures of their standards
   */
  static Map<String, JointCodeChoice> of(Map<String, MemberCodeChoice> members) {
    Map<String, Function<CodeFigures, JointCode>> known =
        Map.of(
            "en-1999-1-1",
            En1999Joints::new,
            "adm-2020-lrfd",
            AdmJoints::new,
            "adm-2020-asd",
            AdmJoints::new,
            "as-nzs-1664.1",
            AsNzsJoints::new);
    Map<String, JointCodeChoice> codes = new TreeMap<>();
    known.forEach(
        (id, code) -> {
          MemberCodeChoice figures = members.get(id);
          if (figures != null) {
            codes.put(id, new JointCodeChoice(figures.figures(), code));
          }
        });
    return codes;
  }
}
