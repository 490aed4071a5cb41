package spanledger.verification.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.analysis.CaseResult;
import spanledger.analysis.FrameAnalysis;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.section.OutlineShape;
import spanledger.section.Section;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Ring;
import spanledger.section.warping.FieldSolver;

/** What an outline whose principal axes are not those of its drawing does in a frame. */
class OutlineInFrameTest {

  private static final double LENGTH = 5000;
  private static final double FORCE = 100;
  private static final double YOUNG = 70_000;

  private static final Alloy ALLOY =
      new Alloy(
          "case alloy",
          Set.of(ProductForm.OPEN_PROFILE),
          new ThicknessRange(0, 100),
          100,
          150,
          BucklingClass.A,
          Optional.empty(),
          OptionalDouble.empty(),
          YOUNG,
          27_000,
          2.7e-6,
          Source.declared("invented for this case"),
          "");

  /**
   * Given a cantilever 5 m long, an angle 80 x 60 x 6 with its legs along y and z, and 100 N down
   * at its tip; expected a movement down of P L³/(3 E) · I_z/(I_y I_z − I_yz²) and sideways of P
   * L³/(3 E) · I_yz/(I_y I_z − I_yz²). Source: unsymmetric bending about axes that are not
   * principal, with the moments of two rectangles by Steiner. Tolerance 0.05 %: the shear
   * deformation, which is left out there, is less.
   */
  @Test
  void anAngleUnderItsOwnAxesMovesSidewaysToo() {
    double area = 80 * 6 + 6 * 54;
    double yc = (80 * 6 * 40 + 6 * 54 * 3) / area;
    double zc = (80 * 6 * 3 + 6 * 54 * 33) / area;
    double iy = 80 * 216 / 12.0 + 480 * sq(3 - zc) + 6 * Math.pow(54, 3) / 12 + 324 * sq(33 - zc);
    double iz = 6 * Math.pow(80, 3) / 12 + 480 * sq(40 - yc) + 54 * 216 / 12.0 + 324 * sq(3 - yc);
    double iyz = 480 * (40 - yc) * (3 - zc) + 324 * (3 - yc) * (33 - zc);
    double flexibility = FORCE * Math.pow(LENGTH, 3) / (3 * YOUNG) / (iy * iz - iyz * iyz);

    CaseResult result =
        cantilever(Outline.of(Ring.polygon(0, 0, 80, 0, 80, 6, 6, 6, 6, 60, 0, 60)));

    Node tip = tip();
    assertThat(result.movement(tip, Freedom.SHIFT_Z))
        .isCloseTo(-flexibility * iz, Percentage.withPercentage(0.05));
    assertThat(result.movement(tip, Freedom.SHIFT_Y))
        .isCloseTo(flexibility * iyz, Percentage.withPercentage(0.05));
  }

  /** The same angle with its legs the other way round moves to the other side. */
  @Test
  void aMirroredAngleMovesToTheOtherSide() {
    CaseResult one = cantilever(Outline.of(Ring.polygon(0, 0, 80, 0, 80, 6, 6, 6, 6, 60, 0, 60)));
    CaseResult other =
        cantilever(Outline.of(Ring.polygon(0, 0, 0, 60, -6, 60, -6, 6, -80, 6, -80, 0)));

    assertThat(other.movement(tip(), Freedom.SHIFT_Z))
        .isCloseTo(one.movement(tip(), Freedom.SHIFT_Z), Percentage.withPercentage(1e-6));
    assertThat(other.movement(tip(), Freedom.SHIFT_Y))
        .isCloseTo(-one.movement(tip(), Freedom.SHIFT_Y), Percentage.withPercentage(1e-6));
  }

  private static double sq(double x) {
    return x * x;
  }

  private static Node tip() {
    return new Node("tip", new Vector(LENGTH, 0, 0));
  }

  private static CaseResult cantilever(Outline outline) {
    Section section = new Section("drawn", OutlineShape.of(outline, FieldSolver.standard()));
    Node root = new Node("root", Vector.ZERO);
    Member member =
        new Member(
            "arm",
            MemberRole.OTHER,
            List.of(root, tip()),
            section,
            ALLOY,
            0,
            MemberEnd.RIGID,
            MemberEnd.RIGID);
    Frame frame =
        new Frame(
            List.of(root, tip()),
            List.of(member),
            List.of(new Support(root, Collections.nCopies(6, Restraint.FIXED))));
    LoadCase load =
        new LoadCase(
            "tip",
            List.of(new NodalLoad(tip(), new Vector(0, 0, -FORCE), Vector.ZERO, "tip load")),
            List.of());
    return new FrameAnalysis(frame).solve(List.of(load)).results().get(0);
  }
}
