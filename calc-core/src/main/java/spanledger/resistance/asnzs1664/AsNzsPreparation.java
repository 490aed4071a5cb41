package spanledger.resistance.asnzs1664;

import java.util.List;
import java.util.Map;
import spanledger.material.TemperStrengths;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.adm.AdmWelds;
import spanledger.resistance.adm.BendingSide;
import spanledger.resistance.adm.BucklingConstants;
import spanledger.resistance.adm.LocalBuckling;
import spanledger.resistance.adm.MemberInputs;
import spanledger.resistance.adm.MetalShear;
import spanledger.resistance.adm.MetalStrengths;
import spanledger.resistance.adm.TemperedPreparation;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.SectionForm;
import spanledger.resistance.member.Use;
import spanledger.resistance.member.Working;
import spanledger.section.plate.PlateKind;

/** What AS/NZS 1664.1 asks for in each row of a member. */
final class AsNzsPreparation extends TemperedPreparation {

  private static final CompiledProcedure CONSTANTS = BucklingConstants.AS_NZS.compile();
  private static final CompiledProcedure TENSION = Tension.PROCEDURE.compile();
  private static final CompiledProcedure COLUMN = Column.PROCEDURE.compile();
  private static final CompiledProcedure BENDING = Bending.PROCEDURE.compile();
  private static final CompiledProcedure LATERAL = LateralBuckling.PROCEDURE.compile();
  private static final CompiledProcedure COMBINED = CombinedActions.PROCEDURE.compile();

  private static final Map<String, String> SYMBOLS =
      Map.of(
          "phi.y", "φ_y",
          "phi.u", "φ_u",
          "phi.b", "φ_b",
          "phi.c", "φ_c",
          "phi.cp", "φ_cp",
          "phi.vp", "φ_vp",
          "phi.v", "φ_v",
          "phi.cc", "φ_cc_max",
          "weld.reach", "r_w");

  private static final List<Use> USES =
      List.of(
          new Use("η_N", "axial force", "3.4.2, 3.4.8 to 3.4.11"),
          new Use("η_My", "bending about y", "3.4.2 to 3.4.4, 3.4.12 to 3.4.18"),
          new Use("η_Mz", "bending about z", "3.4.2 to 3.4.4, 3.4.15 to 3.4.18"),
          new Use("η_Vy", "shear along y", "3.4.20"),
          new Use("η_Vz", "shear along z", "3.4.20"),
          new Use("η_T", "torsion", "3.4.20, 4.2"),
          new Use("η_NM", "axial force and bending", "4.1"),
          new Use("η_NMVT", "axial force, bending, shear and torsion", "4.4"));

  AsNzsPreparation(MemberCase member, TemperStrengths temper, CodeFigures figures) {
    super(member, temper, figures, SYMBOLS);
  }

  @Override
  protected CompiledProcedure constants() {
    return CONSTANTS;
  }

  @Override
  protected LocalBuckling.Strengths elements(MemberInputs inputs, String label) {
    return new AsNzsElements(inputs, label);
  }

  @Override
  protected MetalShear.Rule shear() {
    return new AsNzsShear(soft);
  }

  @Override
  protected Working.Feeding bending(MemberInputs inputs, BendingSide side, String label) {
    return inputs
        .row(BENDING, label)
        .given("k_y", shape(1.17, 1.30))
        .given("k_u", shape(1.24, 1.42));
  }

  /** How much more than its yield or ultimate strength the stretched fibre of a shape may bear. */
  private Figured shape(double round, double solid) {
    if (isRound()) {
      return new Figured(round, "round tube", Given.clause("3.4.3"));
    }
    return member.section().form() == SectionForm.SOLID
        ? new Figured(solid, "solid bar", Given.clause("3.4.4"))
        : new Figured(1, "flat flange", Given.clause("3.4.2"));
  }

  private boolean isRound() {
    return member.section().walls().stream().anyMatch(wall -> wall.kind() == PlateKind.ROUND);
  }

  @Override
  protected Working.Feeding tension(String label) {
    return known.row(TENSION, label).given("A_e", soft.net(known)).given("A_w", soft.ofNet(known));
  }

  @Override
  protected Working.Feeding compression(
      MetalStrengths parent, MetalStrengths beside, String label) {
    return parent.inputs().row(COLUMN, label).given("A_w", AdmWelds.ofMember(member, soft, known));
  }

  @Override
  protected Feed compressionBeside(MetalStrengths beside, String label) {
    return beside.column().feed("P_lb");
  }

  @Override
  protected Working.Feeding lateral(MetalStrengths metal, String label) {
    return metal.bothSides(metal.inputs().row(LATERAL, label), "W_c", "M_c");
  }

  @Override
  protected Working.Feeding combined(MetalStrengths metal, String label) {
    return metal
        .inputs()
        .row(COMBINED, label)
        .from(metal.column(), "P_s", "P_lb")
        .given("round", MemberInputs.choice(isRound() ? 1 : 0, "shape of the section"));
  }

  @Override
  protected List<Use> uses() {
    return USES;
  }

  @Override
  protected String weldClauses() {
    return "3.4, 6.4";
  }

  @Override
  protected List<String> ownRemarks() {
    return List.of();
  }
}
