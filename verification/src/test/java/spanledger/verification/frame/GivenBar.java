package spanledger.verification.frame;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import spanledger.material.Alloy;
import spanledger.material.BucklingClass;
import spanledger.material.ProductForm;
import spanledger.material.ThicknessRange;
import spanledger.provenance.Source;
import spanledger.section.PropertyRow;
import spanledger.section.Section;

/** Section and material of a bar of which only the stiffness matters. */
final class GivenBar {

  private static final Source GIVEN = Source.declared("Stiffness given in the case");

  private GivenBar() {}

  static Alloy alloy(String name, JsonNode bar) {
    return alloy(name, bar.required("E").asDouble(), bar.required("G").asDouble());
  }

  static Alloy alloy(String name, double modulus, double shearModulus) {
    return new Alloy(
        name,
        Set.of(ProductForm.OPEN_PROFILE),
        new ThicknessRange(0, 100),
        100,
        150,
        BucklingClass.A,
        Optional.empty(),
        OptionalDouble.empty(),
        modulus,
        shearModulus,
        2.7e-6,
        GIVEN,
        "");
  }

  static Section section(String name, JsonNode bar) {
    return section(
        name,
        bar.required("A").asDouble(),
        bar.required("A_v_y").asDouble(),
        bar.required("A_v_z").asDouble(),
        bar.required("I_y").asDouble(),
        bar.required("I_z").asDouble(),
        bar.required("I_t").asDouble());
  }

  static Section section(
      String name, double a, double avy, double avz, double iy, double iz, double it) {
    return new Section(
        name,
        new PropertyRow(
            a,
            avy,
            avz,
            iy,
            iz,
            it,
            // Strength plays no part here.
            1,
            1,
            1,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            1,
            1,
            Optional.empty(),
            GIVEN));
  }
}
