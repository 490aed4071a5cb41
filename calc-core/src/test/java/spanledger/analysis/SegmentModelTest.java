package spanledger.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;
import spanledger.procedure.CompiledProcedure;
import spanledger.section.Angle;
import spanledger.section.Section;

/** The matrices of a segment are its procedures; its axes are right-handed and principal. */
class SegmentModelTest {

  private static SegmentModel springyWithArms() {
    MemberEnd start =
        new MemberEnd(
            Restraint.FIXED, new Restraint.Spring(4e8), Restraint.FREE, new Vector(30, -20, 60));
    MemberEnd end =
        new MemberEnd(
            new Restraint.Spring(2e8), Restraint.FIXED, Restraint.FIXED, new Vector(-40, 10, 5));
    Node a = Bars.node("A", 100, 200, 300);
    Node b = Bars.node("B", 1_700, -900, 1_400);
    Member member =
        new Member("AB", MemberRole.OTHER, List.of(a, b), Bars.BOX, Bars.ALLOY, 0.4, start, end);
    return new SegmentModel(new Frame(List.of(a, b), List.of(member), List.of()).segments().get(0));
  }

  @Test
  void itsMatricesGiveWhatTheProceduresGive() {
    SegmentModel model = springyWithArms();
    Random random = new Random(7);
    double[] movements = random.doubles(12, -0.01, 0.01).toArray();
    double[] loadMoments = random.doubles(10, -1, 1).toArray();
    for (int k = 0; k < 10; k++) {
      int order = k < 2 ? k : (k - 2) % 4;
      loadMoments[k] *= 500 * Math.pow(1_000, order);
    }
    CompiledProcedure deformation = BasicDeformations.PROCEDURE.compile();
    CompiledProcedure endForce = EndForces.PROCEDURE.compile();
    CompiledProcedure nodeForce = NodeForces.PROCEDURE.compile();
    double[] first = deformation.newSlots();
    double[] second = endForce.newSlots();
    double[] third = nodeForce.newSlots();
    fill(deformation, first, model, SegmentMatrices.MOVEMENTS, movements);
    fill(endForce, second, model, SegmentMatrices.LOAD_MOMENTS, loadMoments);
    SlotCopy.between(deformation, endForce).copy(first, second);
    endForce.evaluate(second);
    fill(nodeForce, third, model, List.of(), new double[0]);
    SlotCopy.between(endForce, nodeForce).copy(second, third);
    nodeForce.evaluate(third);

    double[] deformations = new double[6];
    double[] endForces = new double[12];
    double[] nodeForces = new double[12];
    model.deformations(movements, deformations);
    model.endForces(deformations, endForces);
    model.addFixedEndForces(loadMoments, 1, endForces);
    model.nodeForces(endForces, nodeForces);

    same(deformation, first, SegmentMatrices.DEFORMATIONS, deformations);
    same(endForce, second, SegmentMatrices.END_FORCES, endForces);
    same(nodeForce, third, SegmentMatrices.NODE_FORCES, nodeForces);
  }

  @Test
  void itsStiffnessIsWhatTheProceduresGiveForUnitMovements() {
    SegmentModel model = springyWithArms();
    double[] movements = new double[12];
    double[] deformations = new double[6];
    double[] endForces = new double[12];
    double[] nodeForces = new double[12];
    for (int j = 0; j < 12; j++) {
      movements[j] = 1;
      model.deformations(movements, deformations);
      model.endForces(deformations, endForces);
      model.nodeForces(endForces, nodeForces);
      movements[j] = 0;
      for (int i = 0; i < 12; i++) {
        double scale = Math.sqrt(model.stiffness(i, i) * model.stiffness(j, j));
        assertThat(model.stiffness(i, j)).isCloseTo(nodeForces[i], within(1e-12 * scale));
      }
    }
  }

  /** Sets the named inputs, and those that geometry and stiffness know. */
  private static void fill(
      CompiledProcedure procedure,
      double[] slots,
      SegmentModel model,
      List<String> names,
      double[] values) {
    procedure
        .procedure()
        .inputs()
        .forEach(
            input -> {
              String symbol = input.symbol().symbol();
              if (names.contains(symbol)) {
                slots[procedure.slot(symbol)] = values[names.indexOf(symbol)];
              } else if (knows(SegmentValues.GEOMETRY, symbol)) {
                slots[procedure.slot(symbol)] = model.geometryValue(symbol);
              } else if (knows(SegmentValues.STIFFNESS, symbol)) {
                slots[procedure.slot(symbol)] = model.stiffnessValue(symbol);
              }
            });
    procedure.evaluate(slots);
  }

  private static boolean knows(CompiledProcedure procedure, String symbol) {
    return procedure.procedure().inputs().stream().anyMatch(i -> i.symbol().symbol().equals(symbol))
        || procedure.procedure().steps().stream().anyMatch(s -> s.symbol().symbol().equals(symbol));
  }

  private static void same(
      CompiledProcedure procedure, double[] slots, List<String> names, double[] found) {
    double scale = 0;
    for (String name : names) {
      scale = Math.max(scale, Math.abs(slots[procedure.slot(name)]));
    }
    for (int i = 0; i < found.length; i++) {
      assertThat(found[i])
          .as(names.get(i))
          .isCloseTo(slots[procedure.slot(names.get(i))], within(1e-13 * scale));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-9, 1e-7, 4e-4, 2e-3, 0.3})
  void itsAxesAreRightHandedHoweverNearlyUprightItStands(double lean) {
    Node foot = Bars.node("A", 0, 0, 0);
    Node head = Bars.node("B", 2_000 * lean, 1_000 * lean, 2_000);
    SegmentModel model =
        new SegmentModel(
            new Frame(List.of(foot, head), List.of(Bars.member("leg", foot, head)), List.of())
                .segments()
                .get(0));

    assertThat(model.axisX().cross(model.axisY()).minus(model.axisZ()).norm()).isLessThan(1e-15);
    assertThat(model.axisX().dot(model.axisY())).isCloseTo(0, within(1e-15));
    assertThat(model.axisZ().norm()).isCloseTo(1, within(1e-15));
    if (lean < 5e-4) {
      assertThat(model.axisY().y()).as("y stays near global Y").isGreaterThan(0.999);
    }
  }

  /**
   * Given an unequal angle as a cantilever, a force up at its tip moves it up and sideways as the
   * theory of unsymmetric bending says with the second moments about level and upright axes.
   */
  @Test
  void anAngleBendsAboutItsPrincipalAxes() {
    Angle shape = new Angle(80, 50, 6);
    double[] inputs = shape.inputs();
    CompiledProcedure properties = shape.compiled();
    double[] values = properties.run(inputs);
    double iy = values[properties.slot("I_yg")];
    double iz = values[properties.slot("I_zg")];
    double iyz = values[properties.slot("I_yz")];
    double length = 2_000;
    Node root = Bars.node("A", 0, 0, 0);
    Node tip = Bars.node("B", length, 0, 0);
    Member arm =
        new Member(
            "arm",
            MemberRole.OTHER,
            List.of(root, tip),
            new Section("angle", shape),
            Bars.ALLOY,
            0,
            MemberEnd.RIGID,
            MemberEnd.RIGID);
    Frame frame = new Frame(List.of(root, tip), List.of(arm), List.of(Bars.clamp(root)));

    CaseResult result = Bars.solve(frame, Bars.nodal(Bars.force(tip, new Vector(0, 0, 100))));

    double bending = 100 * Math.pow(length, 3) / (3 * Bars.E * (iy * iz - iyz * iyz));
    double shear = 100 * length / (Bars.G * arm.section().properties().shearAreaZ());
    assertThat(result.shift(tip).z()).isCloseTo(bending * iz + shear, within(1e-9));
    assertThat(result.shift(tip).y()).isCloseTo(-bending * iyz, within(1e-9));
  }
}
