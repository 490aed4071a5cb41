package spanledger.resistance.adm;

import java.util.List;
import java.util.Map;
import spanledger.material.TemperStrengths;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.Use;
import spanledger.resistance.member.Working;

/** What the Aluminum Design Manual asks for in each row of a member. */
final class AdmPreparation extends TemperedPreparation {

  private static final CompiledProcedure CONSTANTS = BucklingConstants.ADM.compile();
  private static final CompiledProcedure TENSION = TensionStrength.PROCEDURE.compile();
  private static final CompiledProcedure COMPRESSION = CompressionStrength.PROCEDURE.compile();
  private static final CompiledProcedure SQUASH = SquashStrength.PROCEDURE.compile();
  private static final CompiledProcedure BENDING = BendingStrength.PROCEDURE.compile();
  private static final CompiledProcedure LATERAL = LateralBucklingStrength.PROCEDURE.compile();
  private static final CompiledProcedure COMBINED = CombinedStrength.PROCEDURE.compile();

  private static final Map<String, String> SYMBOLS =
      Map.ofEntries(
          Map.entry("phi.yield", "φ_y"),
          Map.entry("omega.yield", "Ω_y"),
          Map.entry("phi.rupture", "φ_u"),
          Map.entry("omega.rupture", "Ω_u"),
          Map.entry("phi.compression", "φ_c"),
          Map.entry("omega.compression", "Ω_c"),
          Map.entry("phi.bending", "φ_b"),
          Map.entry("omega.bending", "Ω_b"),
          Map.entry("phi.shear", "φ_v"),
          Map.entry("omega.shear", "Ω_v"),
          Map.entry("alpha", "α"),
          Map.entry("weld.reach", "r_w"));

  AdmPreparation(MemberCase member, TemperStrengths temper, CodeFigures figures) {
    super(member, temper, figures, SYMBOLS);
  }

  @Override
  protected CompiledProcedure constants() {
    return CONSTANTS;
  }

  @Override
  protected LocalBuckling.Strengths elements(MemberInputs inputs, String label) {
    return new AdmElements(inputs, label);
  }

  @Override
  protected MetalShear.Rule shear() {
    return new AdmShear(soft);
  }

  @Override
  protected Working.Feeding bending(MemberInputs inputs, BendingSide side, String label) {
    return inputs
        .row(BENDING, label)
        .given("W_pl", inputs.section(side.plastic(member.section()), "plastic modulus"))
        .given("W_pl_n", soft.netPlastic(inputs, side));
  }

  @Override
  protected Working.Feeding tension(String label) {
    return known
        .row(TENSION, label)
        .given("A_e", soft.net(known))
        .given("A_w_l", soft.along(known))
        .given("A_w", soft.ofNet(known));
  }

  @Override
  protected Working.Feeding compression(
      MetalStrengths parent, MetalStrengths beside, String label) {
    return parent
        .inputs()
        .row(COMPRESSION, label)
        .given("A_w", AdmWelds.ofMember(member, soft, parent.inputs()))
        .with("F_cyw", beside.inputs().of("F_cy"))
        .with("B_cw", beside.inputs().of("B_c"))
        .with("D_cw", beside.inputs().of("D_c"))
        .with("C_cw", beside.inputs().of("C_c"));
  }

  @Override
  protected Feed compressionBeside(MetalStrengths beside, String label) {
    Working.Feeding row = beside.inputs().row(SQUASH, label);
    return add(row.from(beside.column(), "P_lb", "P_lb").run()).feed("P_c");
  }

  @Override
  protected Working.Feeding lateral(MetalStrengths metal, String label) {
    return metal
        .bothSides(metal.inputs().row(LATERAL, label), "W_c", "M_np", "M_n", "M_u")
        .with("F_e_fl_pos", AdmUses.flange(metal.of(BendingSide.Y_POSITIVE)))
        .with("F_e_fl_neg", AdmUses.flange(metal.of(BendingSide.Y_NEGATIVE)));
  }

  @Override
  protected Working.Feeding combined(MetalStrengths metal, String label) {
    return metal
        .inputs()
        .row(COMBINED, label)
        .given("bow", MemberInputs.choice(0, "moments of straight members"));
  }

  @Override
  protected List<Use> uses() {
    return AdmUses.ALL;
  }

  @Override
  protected String weldClauses() {
    return "A.3, F, H";
  }

  @Override
  protected List<String> ownRemarks() {
    return soft.hasAcross()
        ? List.of(
            "Welds across count for buckling of the member unless they are within 0.05 of its"
                + " length from its start.")
        : List.of();
  }
}
