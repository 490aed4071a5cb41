package spanledger.verification.en1999;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.resistance.en1999.En1999;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.MemberSections;
import spanledger.resistance.member.NotCheckable;
import spanledger.resistance.member.Weld;
import spanledger.section.PropertyRow;
import spanledger.section.Section;

/** What cannot be checked is named with what to add, all in one go, and never passes. */
class NotCheckableTest {

  private static final MemberCase TUBE =
      GivenMember.equalLengths(
          GivenMember.shape("tube", 80, 40, 2, 2),
          GivenMember.alloy(200, 245, BucklingClass.A),
          1000);

  private static String words(MemberCase member) {
    return ((NotCheckable) new En1999(GivenMember.figures()).prepare(member)).words();
  }

  @Test
  void modesWithoutLength() {
    MemberCase bare = new MemberCase("S1", TUBE.section(), TUBE.alloy(), Map.of());

    assertThat(words(bare))
        .contains("member S1 has no length for flexural buckling about y")
        .contains("member S1 has no length for lateral-torsional buckling")
        .contains("declare it");
  }

  @Test
  void weldWithoutPlaceAndAlloyWithoutStrengthsBesideIt() {
    Alloy soft =
        new Alloy(
            "case alloy",
            Set.of(ProductForm.OPEN_PROFILE),
            new ThicknessRange(0, 10),
            200,
            245,
            BucklingClass.A,
            Optional.empty(),
            OptionalDouble.empty(),
            70000,
            27000,
            2.7e-6,
            GivenMember.CASE,
            "");
    MemberCase welded =
        new MemberCase("S1", TUBE.section(), soft, TUBE.lengths())
            .withWelds(List.of(new Weld.WithoutPlace("W1")));

    assertThat(words(welded))
        .contains("alloy case alloy has no strengths beside welds; give weldProof and weldUltimate")
        .contains("weld W1 of member S1 has no place; give its place");
  }

  @Test
  void weldInAnUnknownWall() {
    MemberCase welded =
        TUBE.withWelds(
            List.of(
                new Weld.Along(
                    "W1", "web", 10, Weld.Method.MIG, OptionalDouble.empty(), GivenMember.CASE)));

    assertThat(words(welded))
        .contains("weld W1 names wall web")
        .contains("flange top, flange bottom, web left, web right");
  }

  @Test
  void wallsInDoubt() {
    MemberSection s = TUBE.section();
    MemberSection doubtful =
        new MemberSection(
            s.name(),
            s.form(),
            s.doublySymmetric(),
            s.properties(),
            s.up(),
            s.down(),
            s.right(),
            s.left(),
            0,
            0,
            0,
            0,
            0,
            0,
            s.walls(),
            Optional.of("wall P3 is unsure, because a bulb at its edge may or may not hold it"),
            s.source());

    assertThat(words(new MemberCase("S1", doubtful, TUBE.alloy(), TUBE.lengths())))
        .contains("wall P3 is unsure")
        .contains("confirm or correct its walls");
  }

  @Test
  void rowOfPropertiesHasNoWalls() {
    Section row =
        new Section(
            "R1",
            new PropertyRow(
                500,
                300,
                300,
                1e5,
                1e5,
                1e5,
                4000,
                4000,
                3000,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                2,
                2,
                Optional.empty(),
                GivenMember.CASE));

    assertThat(MemberSections.of(row)).isEmpty();
    assertThat(MemberSections.lack(row).found()).contains("section R1 is a row of properties");
  }
}
