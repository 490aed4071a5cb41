package spanledger.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spanledger.provenance.Source;

/** Choosing a row by designation, form and wall thickness. The alloys are invented. */
class AlloyTableTest {

  private static final Set<ProductForm> PROFILES =
      EnumSet.of(ProductForm.OPEN_PROFILE, ProductForm.HOLLOW_PROFILE);

  private static final AlloyTable TABLE =
      new AlloyTable(
          List.of(
              alloy("6999-T5", PROFILES, 0, 3, 130),
              alloy("6999-T5", EnumSet.of(ProductForm.OPEN_PROFILE), 3, 25, 110),
              alloy("6998-T6", PROFILES, 0, 5, 250),
              alloy("6998-T6", PROFILES, 5, 15, 260)));

  @Test
  void theRowIsChosenByThickness() {
    assertThat(proof("6999-T5", ProductForm.OPEN_PROFILE, 2, 2)).isEqualTo(130);
    assertThat(proof("6999-T5", ProductForm.OPEN_PROFILE, 3, 3)).isEqualTo(130);
    assertThat(proof("6999-T5", ProductForm.OPEN_PROFILE, 3.01, 3.01)).isEqualTo(110);
  }

  @Test
  void aSectionWithWallsInTwoRowsTakesTheWeaker() {
    assertThat(proof("6999-T5", ProductForm.OPEN_PROFILE, 2, 6)).isEqualTo(110);
    assertThat(proof("6998-T6", ProductForm.HOLLOW_PROFILE, 4, 8)).isEqualTo(250);
  }

  @Test
  void whatIsNotPublishedIsRefusedWithWhatIs() {
    assertThatThrownBy(() -> proof("6999-T5", ProductForm.HOLLOW_PROFILE, 2, 4))
        .hasMessage(
            "Alloy 6999-T5 has no strengths for a hollow profile with a wall of 4 mm; published: up to 3 mm.");
    assertThatThrownBy(() -> proof("6999-T5", ProductForm.OPEN_PROFILE, 30, 30))
        .hasMessage(
            "Alloy 6999-T5 has no strengths for an open profile with a wall of 30 mm; published: up to 3 mm; over 3 mm, up to 25 mm.");
    assertThatThrownBy(() -> proof("6998-T6", ProductForm.TUBE, 2, 2))
        .hasMessage(
            "Alloy 6998-T6 has no strengths for a tube; published: open profile, hollow profile.");
    assertThatThrownBy(() -> proof("6997-T6", ProductForm.TUBE, 2, 2))
        .hasMessage("There is no alloy 6997-T6; known: 6999-T5, 6998-T6.");
  }

  @Test
  void alloysThatMakeNoSenseAreRefused() {
    assertThatThrownBy(() -> alloy("6996-T6", PROFILES, 0, 5, -1))
        .hasMessage("Alloy 6996-T6: the proof strength is -1.0 MPa, but must be positive.");
    assertThatThrownBy(() -> alloy("6996-T6", PROFILES, 0, 5, 400))
        .hasMessage(
            "Alloy 6996-T6 has an ultimate strength of 300.0 MPa, below its proof strength of 400.0 MPa.");
    assertThatThrownBy(() -> alloy("6996-T6", EnumSet.noneOf(ProductForm.class), 0, 5, 200))
        .hasMessage("Alloy 6996-T6 has no product form.");
    assertThatThrownBy(() -> new ThicknessRange(5, 5)).hasMessageContaining("thickness range");
  }

  private static double proof(String name, ProductForm form, double thinnest, double thickest) {
    return TABLE.select(name, form, thinnest, thickest).proofStrength();
  }

  private static Alloy alloy(
      String name, Set<ProductForm> forms, double over, double upTo, double proof) {
    return new Alloy(
        name,
        forms,
        new ThicknessRange(over, upTo),
        proof,
        300,
        BucklingClass.A,
        Optional.empty(),
        OptionalDouble.empty(),
        70_000,
        27_000,
        2.7e-6,
        Source.declared("test"),
        "");
  }
}
