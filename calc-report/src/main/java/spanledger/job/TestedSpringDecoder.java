package spanledger.job;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.frame.Restraint;
import spanledger.frame.StiffnessBounds.Bound;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.joint.stiffness.CharacteristicValue;
import spanledger.joint.stiffness.MomentRotationCurve;
import spanledger.jointdesign.JointTests;
import spanledger.jointdesign.JointTests.Measured;
import spanledger.jointdesign.JointTests.Specimen;
import spanledger.jointdesign.KnownVariation;
import spanledger.provenance.Source;
import spanledger.resistance.member.Figured;
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

  /** What the same tests are told by; several member ends may name them. */
  private record Named(
      List<String> files, KnownVariation known, Optional<Figured> factor, String source) {}

  private final Reading reading;
  private final Bound bound;
  private final SpringOrigins origins;
  private final TestFactorDecoder factors;
  private final Map<Named, JointTests> seen = new LinkedHashMap<>();
  private final Set<String> names = new TreeSet<>();

  TestedSpringDecoder(Reading reading, StiffnessBound bound, SpringOrigins origins) {
    this.reading = reading;
    this.bound = bound == StiffnessBound.LOWER ? Bound.LOWER : Bound.UPPER;
    this.origins = origins;
    this.factors = new TestFactorDecoder(reading);
  }

  /**
   * The spring, with the play that the tests show, at the bound taken.
   *
   * @param fields what the job says of it
   * @param files the paths of the specimens
   * @param source what the job says of them
   */
  Optional<Restraint> decode(Fields fields, Located files, Optional<LocatedText> source) {
    Optional<TestFactorDecoder.PartialFactor> factor = factors.partialFactor(fields);
    Optional<KnownVariation> known = factors.known(fields);
    if (!(files instanceof LocatedArray list)) {
      reading.gap(files.pointer());
      return Optional.empty();
    }
    List<Measured> measured = measured(list);
    if (measured.size() < list.elements().size()
        || factor.isEmpty()
        || known.isEmpty()
        || source.isEmpty()) {
      return Optional.empty();
    }
    if (measured.size() < CharacteristicValue.FEWEST && !known.get().isWhole()) {
      reading.error(
          files,
          measured.size() + (measured.size() == 1 ? " specimen" : " specimens"),
          "at least 3 specimens, of which the scatter is estimated",
          "test more, or say under \"knownVariation\" the scatter of \"moment\", \"stiffness\" and"
              + " \"slip\" if it is known from earlier tests");
      return Optional.empty();
    }
    Named named =
        new Named(
            measured.stream().map(Measured::file).toList(),
            known.get(),
            factor.get().declared(),
            source.get().text());
    JointTests tests = seen.get(named);
    if (tests == null) {
      tests =
          JointTests.of(
              name(measured),
              measured,
              named.known(),
              named.factor(),
              Source.declared(named.source()));
      seen.put(named, tests);
    }
    warnOfPoorFits(list, tests);
    return Optional.of(
        origins.add(tests.restraint(bound), new SpringOrigins.OfTests(tests, bound)));
  }

  /** Those that can be used; each specimen once. */
  private List<Measured> measured(LocatedArray list) {
    List<Measured> measured = new ArrayList<>();
    Set<String> specimens = new HashSet<>();
    for (Located file : list.elements()) {
      if (!(file instanceof LocatedText text)) {
        reading.gap(file.pointer());
        continue;
      }
      Optional<MomentRotationCurve> curve = curve(text);
      if (curve.isPresent() && !specimens.add(curve.get().specimen())) {
        reading.error(
            text,
            "specimen " + Quoted.text(curve.get().specimen()) + " for the second time",
            "each specimen once",
            "leave the file out, or give the specimen its own name in it");
      } else {
        curve.ifPresent(own -> measured.add(new Measured(text.text(), own)));
      }
    }
    return measured;
  }

  /** By the specimens, and a number where other tests have the same ones. */
  private String name(List<Measured> measured) {
    String first = measured.get(0).curve().specimen();
    String last = measured.get(measured.size() - 1).curve().specimen();
    String name =
        "tests "
            + switch (measured.size()) {
              case 1 -> first;
              case 2 -> first + " and " + last;
              default -> first + " to " + last;
            };
    String own = name;
    for (int i = 2; !names.add(own); i++) {
      own = name + " (" + i + ")";
    }
    return own;
  }

  /** What the lines miss is no scatter between specimens, and so in no characteristic value. */
  private void warnOfPoorFits(LocatedArray files, JointTests tests) {
    for (int i = 0; i < tests.specimens().size(); i++) {
      Specimen specimen = tests.specimens().get(i);
      double missed = specimen.fit().scatter() / specimen.curve().greatestMoment();
      if (missed > POOR_FIT) {
        reading.warning(
            files.elements().get(i),
            "readings of specimen "
                + Quoted.text(specimen.fit().specimen())
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
