package spanledger.job;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.stiffness.MomentRotationCurve;
import spanledger.joint.stiffness.TestedJoint;
import spanledger.provenance.Source;
import spanledger.tables.MomentCurveTables;

/** Decodes springs of joints that are known from tests: a file of readings for each specimen. */
final class TestedSpringDecoder {

  private static final ReferredTable CURVE =
      new ReferredTable(
          "a test curve",
          "rotations and moments of one specimen as docs/job-file.md describes them",
          "correct the file, or leave the specimen out and say why in the report");

  /** Of the greatest moment; judgement, no source. */
  private static final double POOR_FIT = 0.05;

  private final Reading reading;
  private final StiffnessBound bound;

  TestedSpringDecoder(Reading reading, StiffnessBound bound) {
    this.reading = reading;
    this.bound = bound;
  }

  /**
   * The spring, with the play that the tests show, at the bound taken.
   *
   * @param files the paths of the specimens
   * @param source what the job says of them
   */
  Optional<Restraint> decode(Located files, String source) {
    if (!(files instanceof LocatedArray list)) {
      reading.gap(files.pointer());
      return Optional.empty();
    }
    List<MomentRotationCurve> curves = new ArrayList<>();
    Set<String> specimens = new HashSet<>();
    for (Located file : list.elements()) {
      if (!(file instanceof LocatedText text)) {
        reading.gap(file.pointer());
        continue;
      }
      Optional<MomentRotationCurve> curve = curve(text);
      curve.ifPresent(curves::add);
      if (curve.isPresent() && !specimens.add(curve.get().specimen())) {
        reading.error(
            text,
            "specimen " + Quoted.text(curve.get().specimen()) + " for the second time",
            "each specimen once",
            "leave the file out, or give the specimen its own name in it");
      }
    }
    if (curves.size() < list.elements().size() || specimens.size() < curves.size()) {
      return Optional.empty();
    }
    try {
      TestedJoint joint = TestedJoint.of(curves, OptionalDouble.empty(), Source.declared(source));
      warnOfPoorFits(list, curves, joint);
      return Optional.of(
          joint.restraint(
              bound == StiffnessBound.LOWER
                  ? StiffnessBounds.Bound.LOWER
                  : StiffnessBounds.Bound.UPPER));
    } catch (IllegalArgumentException tooFew) {
      // The schema tells how many specimens there must be.
      reading.gap(files.pointer());
      return Optional.empty();
    }
  }

  /** What the lines miss is no scatter between specimens, and so in no characteristic value. */
  private void warnOfPoorFits(
      LocatedArray files, List<MomentRotationCurve> curves, TestedJoint joint) {
    for (int i = 0; i < curves.size(); i++) {
      double missed = joint.curves().get(i).scatter() / curves.get(i).greatestMoment();
      if (missed > POOR_FIT) {
        reading.warning(
            files.elements().get(i),
            "readings of specimen "
                + Quoted.text(curves.get(i).specimen())
                + " that three straight lines (play, stiffness, moment held) miss by "
                + Math.round(100 * missed)
                + " % of the greatest moment",
            "readings close to such lines",
            "look at the curve; declare bounds of your own with \"lower\" and \"upper\" if it is sound");
      }
    }
  }

  private Optional<MomentRotationCurve> curve(LocatedText file) {
    return CURVE.read(
        reading,
        file,
        bytes -> MomentCurveTables.read(file.text(), new ByteArrayInputStream(bytes)));
  }
}
