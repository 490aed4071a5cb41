package spanledger.picture.joint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import spanledger.joint.BracketJoint;
import spanledger.joint.JointFace;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Spot;
import spanledger.verdict.Assessment;

/**
 * A kind of joint under the check that governs it: each face as seen from the member, with its
 * plies, bolts, keys, and the forces of every bolt.
 */
public final class JointPicture {

  private static final double WIDTH = 960;
  private static final double HEIGHT = 600;
  private static final double RIM = 30;
  private static final double HEAD = 110;
  private static final double SIZE = 13;

  /** Height of the faces of one of several brackets. */
  private static final double ROW = 400;

  private JointPicture() {}

  /** Every kind of bracketed joint that was judged, by short names. */
  public static Map<String, Drawing> all(Assessment assessment, Lettering lettering) {
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    assessment
        .joints()
        .map(JointPicture::worst)
        .orElse(Map.of())
        .values()
        .forEach(
            finding -> drawings.put("joint-" + (drawings.size() + 1), draw(finding, lettering)));
    return drawings;
  }

  private static Map<String, JointFinding> worst(JointJudgement judgement) {
    Map<String, JointFinding> worst = new TreeMap<>();
    for (JointFinding finding : judgement.findings()) {
      if (finding.joint() instanceof BracketJoint && finding.hangsOnLoads()) {
        worst.merge(
            finding.joint().name(),
            finding,
            (a, b) -> a.governing().value() >= b.governing().value() ? a : b);
      }
    }
    return worst;
  }

  private static Drawing draw(JointFinding finding, Lettering lettering) {
    BracketJoint joint = (BracketJoint) finding.joint();
    Drawing.Paper paper = new Drawing.Paper();
    String title = written("Joint " + joint.name(), lettering);
    String governs =
        String.format(
            Locale.ROOT,
            "%s: %s, used to %.1f %%",
            finding.faceName(),
            finding.use().words(),
            100 * finding.governing().value());
    List<String> lines =
        List.of(
            title + ", at " + finding.end().name(),
            "governs: " + governs,
            "under " + finding.instance().words(),
            String.format(
                Locale.ROOT,
                "longest arrow: shear %.2f kN; reddest bolt: tension %.2f kN; dots: pressing of the"
                    + " bed; green: keys; dotted: slot; thick: where the leg bends away",
                most(finding.run().faces(), "F_v") / 1000,
                most(finding.run().faces(), "F_t") / 1000));
    for (int i = 0; i < lines.size(); i++) {
      paper.words(
          new Spot(RIM, RIM + 1.5 * SIZE * i),
          written(lines.get(i), lettering),
          SIZE,
          Mark.Anchor.START,
          i == 0 ? Ink.BLACK : Ink.QUIET);
    }
    List<FaceRun> runs = finding.run().faces();
    double shear = most(runs, "F_v");
    double tension = most(runs, "F_t");
    double row = joint.isShared() ? ROW : HEIGHT - HEAD - RIM;
    int at = 0;
    for (int i = 0; i < joint.brackets().size(); i++) {
      List<JointFace> faces = joint.brackets().get(i).faces();
      double box = (WIDTH - 2 * RIM) / faces.size();
      for (int j = 0; j < faces.size(); j++) {
        Spot corner = new Spot(RIM + box * j, HEAD + (ROW + RIM) * i);
        new FaceDrawing(paper, lettering, corner, Math.min(box, 480), row, shear, tension)
            .draw(faces.get(j), runs.get(at++));
      }
    }
    return paper.finish(
        WIDTH,
        HEAD + joint.brackets().size() * (row + RIM),
        title,
        title
            + ": "
            + runs.size()
            + (runs.size() == 1 ? " face" : " faces")
            + " seen from the member, with the shear and tension of every bolt; "
            + written(governs, lettering));
  }

  private static double most(List<FaceRun> runs, String symbol) {
    return runs.stream()
        .flatMap(run -> run.demands().stream())
        .mapToDouble(demand -> demand.value(symbol))
        .max()
        .orElse(0);
  }

  /** Words as they are, or a question mark for each letter that the lettering does not have. */
  static String written(String words, Lettering lettering) {
    StringBuilder text = new StringBuilder();
    words
        .codePoints()
        .mapToObj(Character::toString)
        .forEach(letter -> text.append(lettering.canWrite(letter) ? letter : "?"));
    return text.toString();
  }
}
