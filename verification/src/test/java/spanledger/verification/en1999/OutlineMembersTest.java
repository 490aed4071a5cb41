package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.MemberSections;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.Working;
import spanledger.section.OutlineShape;
import spanledger.section.Section;
import spanledger.section.Shape;
import spanledger.section.outline.Outline;
import spanledger.section.outline.Ring;
import spanledger.section.outline.Similarity;
import spanledger.section.warping.FieldSolver;

/**
 * The same section by its sizes and by its outline: walls recognised, torsion and shear centre by
 * finite elements, asymmetry by integrals along the boundary. Two ways to the same resistances.
 */
class OutlineMembersTest {

  static Stream<Arguments> sections() {
    return Stream.of(
        Arguments.of(
            GivenMember.shape("tube", 80, 40, 2, 2),
            Outline.of(
                Ring.polygon(0, 0, 40, 0, 40, 80, 0, 80), Ring.polygon(2, 2, 38, 2, 38, 78, 2, 78)),
            0.01),
        Arguments.of(
            GivenMember.shape("i", 150, 80, 6, 4),
            Outline.of(
                Ring.polygon(
                    0, 0, 80, 0, 80, 6, 42, 6, 42, 144, 80, 144, 80, 150, 0, 150, 0, 144, 38, 144,
                    38, 6, 0, 6)),
            0.03),
        Arguments.of(
            GivenMember.shape("channel", 120, 50, 5, 4),
            Outline.of(Ring.polygon(0, 0, 50, 0, 50, 5, 4, 5, 4, 115, 50, 115, 50, 120, 0, 120)),
            0.03),
        Arguments.of(
            GivenMember.shape("angle", 80, 50, 5),
            Outline.of(Ring.polygon(0, 0, 50, 0, 50, 5, 5, 5, 5, 80, 0, 80)),
            0.05),
        // A drawing that lies askew is the same section.
        Arguments.of(
            GivenMember.shape("channel", 120, 50, 5, 4),
            Outline.of(Ring.polygon(0, 0, 50, 0, 50, 5, 4, 5, 4, 115, 50, 115, 50, 120, 0, 120))
                .moved(Similarity.rotation(0.3)),
            0.03));
  }

  private static PreparedMember prepared(Shape shape, Alloy alloy) {
    return GivenMember.prepared(1.1, GivenMember.equalLengths(shape, alloy, 1200));
  }

  @ParameterizedTest
  @MethodSource("sections")
  void resistancesAgree(Shape shape, Outline outline, double tolerance) {
    Alloy alloy = GivenMember.alloy(200, 245, BucklingClass.A);
    PreparedMember bySizes = prepared(shape, alloy);
    PreparedMember byOutline = prepared(OutlineShape.of(outline, FieldSolver.standard()), alloy);

    assertThat(byOutline.member().section().form()).isEqualTo(bySizes.member().section().form());
    assertThat(byOutline.member().section().doubt()).isEmpty();
    for (String[] what :
        List.of(
            new String[] {"en1999-effective-compression", "compression", "N_c_Rd"},
            new String[] {"en1999-effective-bending", "M_y > 0", "M_Rd"},
            new String[] {"en1999-effective-bending", "M_z > 0", "M_Rd"},
            new String[] {"en1999-shear", "V_z", "V_Rd"},
            new String[] {"en1999-flexural-buckling", "about y", "N_b_Rd"},
            new String[] {"en1999-flexural-buckling", "about z", "N_b_Rd"},
            new String[] {"en1999-torsional-buckling", "twisting", "N_b_Rd"},
            new String[] {"en1999-lateral-torsional", "M_y > 0", "M_b_Rd"})) {
      double expected = value(bySizes, what);
      assertThat(value(byOutline, what))
          .as("%s; thin walls against finite elements", String.join(" ", what))
          .isCloseTo(expected, within(tolerance * expected));
    }
  }

  private static double value(PreparedMember member, String[] what) {
    Working last = null;
    for (Working working : member.workings()) {
      boolean named = working.procedure().procedure().name().equals(what[0]);
      last = named && working.label().startsWith(what[1]) ? working : last;
    }
    return Objects.requireNonNull(last, what[0]).value(what[2]);
  }

  /** Asymmetry of an unequal angle by Gauss points over its legs and along its boundary. */
  @ParameterizedTest
  @MethodSource("sections")
  void placesAgree(Shape shape, Outline outline, double tolerance) {
    MemberSection sizes = MemberSections.of(new Section("S", shape)).orElseThrow();
    MemberSection drawn =
        MemberSections.of(new Section("S", OutlineShape.of(outline, FieldSolver.standard())))
            .orElseThrow();
    double reach = sizes.up() + sizes.down();

    // The shear centre of thin walls lies on midlines; finite elements know corners.
    assertThat(drawn.wagnerZ()).isCloseTo(sizes.wagnerZ(), within(0.03 * reach));
    assertThat(drawn.wagnerY()).isCloseTo(sizes.wagnerY(), within(0.03 * reach));
    assertThat(drawn.shearCentreY()).isCloseTo(sizes.shearCentreY(), within(0.02 * reach));
    assertThat(drawn.shearCentreZ()).isCloseTo(sizes.shearCentreZ(), within(0.02 * reach));
    assertThat(drawn.up()).isCloseTo(sizes.up(), within(1e-6 * reach));
    assertThat(drawn.right()).isCloseTo(sizes.right(), within(1e-6 * reach));
    assertThat(drawn.walls()).hasSameSizeAs(sizes.walls());
  }
}
