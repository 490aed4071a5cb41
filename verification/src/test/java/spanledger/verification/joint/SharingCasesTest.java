package spanledger.verification.joint;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;
import spanledger.joint.sharing.BoltForce;
import spanledger.joint.sharing.BoltGroupMovement;
import spanledger.joint.sharing.ContactForce;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.FaceMovement;
import spanledger.joint.sharing.InstantaneousCentre;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.JointSharing;
import spanledger.joint.sharing.KeyForce;
import spanledger.joint.sharing.KeySharing;
import spanledger.joint.sharing.LoadDeformation;
import spanledger.joint.sharing.SharedForces;
import spanledger.joint.sharing.UltimateShear;
import spanledger.joint.stiffness.AxisStiffness;
import spanledger.joint.stiffness.BoltShearing;
import spanledger.joint.stiffness.BoltStretch;
import spanledger.joint.stiffness.CharacteristicValue;
import spanledger.joint.stiffness.CharacteristicValue.Scatter;
import spanledger.joint.stiffness.FittedCurve;
import spanledger.joint.stiffness.JointStiffness;
import spanledger.joint.stiffness.KeyTooth;
import spanledger.joint.stiffness.LipBending;
import spanledger.joint.stiffness.MomentResistance;
import spanledger.joint.stiffness.MomentRotationCurve;
import spanledger.joint.stiffness.PlateBending;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Step;
import spanledger.quantity.Dimension;
import spanledger.resistance.joint.JointProcedures;
import spanledger.verification.check.CaseFile;

/** Runs the sharing, stiffness and test-curve cases of the data file. */
class SharingCasesTest {

  private static final Map<String, Procedure> PROCEDURES =
      Stream.concat(
              JointProcedures.all().stream(),
              Stream.of(
                  BoltStretch.PROCEDURE,
                  PlateBending.PROCEDURE,
                  LipBending.PROCEDURE,
                  KeyTooth.PROCEDURE,
                  BoltShearing.PROCEDURE))
          .collect(Collectors.toMap(Procedure::name, Function.identity()));

  /** All proved residuals must stay below this; rounding leaves about 1e-13. */
  private static final double RESIDUAL = 1e-9;

  @TestFactory
  Stream<DynamicNode> cases() throws IOException {
    return CaseFile.tests(
        SharingCasesTest.class, "sharing-cases.json", 100, SharingCasesTest::values);
  }

  private static Map<String, Double> values(String kind, JsonNode given) {
    return switch (kind) {
      case "sharing" -> sharing(given);
      case "centre" -> centre(given);
      case "procedure" -> procedure(given);
      case "stiffness" -> stiffness(given);
      case "curve" -> curve(given);
      case "quantile" -> quantile(given);
      case "property" -> property(given);
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private static Map<String, Double> sharing(JsonNode given) {
    JointGeometry joint = GivenJoint.geometry(given);
    KeySharing model = KeySharing.valueOf(given.required("keySharing").asText());
    SharedForces shared = JointSharing.of(joint, GivenJoint.forces(given), model);
    assertThat(shared.residual()).isLessThan(RESIDUAL);
    Map<String, Double> values = new HashMap<>();
    shared.bolts().forEach(bolt -> put(values, bolt));
    for (KeyForce key : shared.keys()) {
      String name = "key " + key.key().name() + " ";
      values.put(name + "first", key.first());
      values.put(name + "second", key.second());
      values.put(name + "shearY", key.shearY());
      values.put(name + "shearZ", key.shearZ());
      values.put(name + "twist", key.twist());
      values.put(
          name + "bearing", (double) List.of(KeyForce.Bearing.values()).indexOf(key.bearing()));
    }
    for (ContactForce contact : shared.contacts()) {
      values.put("contact " + contact.contact().name(), contact.force());
    }
    FaceMovement movement = shared.movement();
    values.put("contact", shared.contactForce());
    values.put("greatest shear", shared.greatestShear());
    values.put("turn x", movement.aboutX());
    values.put("shift y", movement.y());
    if (given.has("bed")) {
      // From the pressed edge at -height/2 to where the plate does not move.
      values.put(
          "neutral axis",
          Math.abs(movement.x() / movement.aboutY() - given.get("bed").get(3).asDouble() / 2));
    }
    if (joint.keys().isEmpty()
        && joint.bolts().stream().allMatch(SharingCasesTest::holdsBothWays)) {
      assertClosedFormAgrees(joint, GivenJoint.forces(given), movement);
    }
    return values;
  }

  private static boolean holdsBothWays(spanledger.joint.sharing.BoltPlace bolt) {
    return bolt.shearStiffnessY() > 0 && bolt.shearStiffnessZ() > 0;
  }

  /** The closed form, which the workbook shows, gives what the one-way solver gives. */
  private static void assertClosedFormAgrees(
      JointGeometry joint, FaceForces forces, FaceMovement movement) {
    FaceMovement closed = BoltGroupMovement.of(joint.bolts(), forces);
    double scale =
        Math.abs(movement.y()) + Math.abs(movement.z()) + 100 * Math.abs(movement.aboutX());
    assertThat(closed.y()).isCloseTo(movement.y(), by(scale));
    assertThat(closed.z()).isCloseTo(movement.z(), by(scale));
    assertThat(closed.aboutX()).isCloseTo(movement.aboutX(), by(scale));
  }

  private static org.assertj.core.data.Offset<Double> by(double scale) {
    return org.assertj.core.data.Offset.offset(1e-11 * (scale + 1e-12));
  }

  private static void put(Map<String, Double> values, BoltForce bolt) {
    String name = bolt.bolt().name();
    values.put("shear " + name, bolt.shear());
    values.put("shearY " + name, bolt.shearY());
    values.put("shearZ " + name, bolt.shearZ());
    values.put("tension " + name, bolt.tension());
  }

  private static Map<String, Double> centre(JsonNode given) {
    FaceForces forces = GivenJoint.forces(given);
    UltimateShear found =
        InstantaneousCentre.of(
            GivenJoint.bolts(given), forces, LoadDeformation.STEEL_BOLTS_IN_STEEL);
    assertThat(found.residual()).isLessThan(RESIDUAL);
    Map<String, Double> values = new HashMap<>();
    values.put("required strength", found.requiredStrength());
    values.put("coefficient", found.coefficient(forces));
    found.bolts().forEach(bolt -> put(values, bolt));
    return values;
  }

  private static Map<String, Double> procedure(JsonNode given) {
    String name = given.required("procedure").asText();
    CompiledProcedure compiled = Objects.requireNonNull(PROCEDURES.get(name), name).compile();
    JsonNode inputs = given.required("inputs");
    double[] values =
        compiled.run(
            compiled.procedure().inputs().stream()
                .mapToDouble(input -> inputs.required(input.symbol().symbol()).asDouble())
                .toArray());
    Map<String, Double> steps = new HashMap<>();
    for (Step step : compiled.procedure().steps()) {
      steps.put(step.symbol().symbol(), values[compiled.slot(step.symbol().symbol())]);
    }
    return steps;
  }

  private static Map<String, Double> stiffness(JsonNode given) {
    JointGeometry joint = GivenJoint.geometry(given);
    JointStiffness stiffness = JointStiffness.of(joint, given.required("modification").asDouble());
    Map<String, Double> values = new HashMap<>();
    for (int axis = 0; axis < 3; axis++) {
      put(values, "along " + (axis + 1), stiffness.along().get(axis));
      put(values, "about " + (axis + 1), stiffness.about().get(axis));
    }
    JsonNode limits = given.required("limits");
    MomentResistance resistance =
        MomentResistance.of(
            joint,
            GivenJoint.forces(given),
            new MomentResistance.PartLimits(
                limits.get(0).asDouble(),
                limits.get(1).asDouble(),
                limits.get(2).asDouble(),
                limits.get(3).asDouble()));
    values.put("resistance factor", resistance.factor());
    return values;
  }

  private static void put(
      Map<String, Double> values, String name, Optional<AxisStiffness> stiffness) {
    stiffness.ifPresent(
        found -> {
          values.put(name + " lower", found.lower());
          values.put(name + " upper", found.upper());
        });
  }

  private static Map<String, Double> curve(JsonNode given) {
    List<MomentRotationCurve.Point> points = new ArrayList<>();
    for (int i = 0; i < given.required("rotations").size(); i++) {
      points.add(
          new MomentRotationCurve.Point(
              given.get("rotations").get(i).asDouble(),
              given.required("moments").get(i).asDouble()));
    }
    MomentRotationCurve curve = new MomentRotationCurve("specimen", points);
    FittedCurve fitted = FittedCurve.of(curve);
    Map<String, Double> values = new HashMap<>();
    values.put("play", fitted.play());
    values.put("stiffness", fitted.stiffness());
    values.put("plastic", fitted.plasticMoment().orElse(-1));
    values.put("scatter", fitted.scatter());
    values.put("secant at 400000", curve.secantStiffness(400000).orElse(-1));
    return values;
  }

  private static Map<String, Double> quantile(JsonNode given) {
    int specimens = given.required("n").asInt();
    double quantile = CharacteristicValue.quantile(specimens, given.required("known").asBoolean());
    CompiledProcedure procedure =
        CharacteristicValue.of(
                specimens, Dimension.NONE, Scatter.NORMAL, given.required("known").asBoolean())
            .compile();
    double[] inputs = new double[specimens + 2];
    inputs[specimens] = quantile;
    return Map.of("k_n", procedure.run(inputs)[procedure.slot("k_n")]);
  }

  private static Map<String, Double> property(JsonNode given) {
    double[] values =
        given.required("values").valueStream().mapToDouble(JsonNode::asDouble).toArray();
    boolean known = given.has("known");
    Scatter scatter = given.required("positive").asBoolean() ? Scatter.LOG_NORMAL : Scatter.NORMAL;
    CompiledProcedure procedure =
        CharacteristicValue.of(values.length, Dimension.NONE, scatter, known).compile();
    double[] inputs = Arrays.copyOf(values, values.length + 2);
    inputs[values.length] = CharacteristicValue.quantile(values.length, known);
    inputs[values.length + 1] =
        known ? given.get("known").asDouble() : CharacteristicValue.LEAST_VARIATION;
    double[] all = procedure.run(inputs);
    Map<String, Double> found = new HashMap<>();
    found.put("mean", all[procedure.slot("m")]);
    found.put("lower", all[procedure.slot("X_low")]);
    found.put("upper", all[procedure.slot("X_high")]);
    if (!known) {
      found.put("variation", all[procedure.slot("V")]);
    }
    return found;
  }
}
