package spanledger.resistance.asnzs1664;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import spanledger.material.TemperStrengths;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.adm.AdmWelds;
import spanledger.resistance.adm.BendingSide;
import spanledger.resistance.adm.BucklingConstants;
import spanledger.resistance.adm.ElasticLateralBuckling;
import spanledger.resistance.adm.LateralGivens;
import spanledger.resistance.adm.LocalBuckling;
import spanledger.resistance.adm.MemberInputs;
import spanledger.resistance.adm.MetalShear;
import spanledger.resistance.adm.SoftArea;
import spanledger.resistance.adm.WeldZone;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.CutCheck;
import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.SectionForm;
import spanledger.resistance.member.Use;
import spanledger.resistance.member.Weld;
import spanledger.resistance.member.Working;
import spanledger.section.plate.PlateKind;

/** Puts the procedures of AS/NZS 1664.1 together for one member. */
final class AsNzsPreparation {

  private static final CompiledProcedure CONSTANTS = BucklingConstants.AS_NZS.compile();
  private static final CompiledProcedure TENSION = Tension.PROCEDURE.compile();
  private static final CompiledProcedure COLUMN = Column.PROCEDURE.compile();
  private static final CompiledProcedure BENDING = Bending.PROCEDURE.compile();
  private static final CompiledProcedure ELASTIC = ElasticLateralBuckling.PROCEDURE.compile();
  private static final CompiledProcedure LATERAL = LateralBuckling.PROCEDURE.compile();
  private static final CompiledProcedure COMBINED = CombinedActions.PROCEDURE.compile();
  private static final CompiledProcedure ZONE = WeldZone.PROCEDURE.compile();

  private static final String PARENT = "";
  private static final String WELD = ", beside welds";

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

  private final MemberCase member;
  private final MemberSection section;
  private final SoftArea soft;
  private final MemberInputs known;
  private final List<Working> workings = new ArrayList<>();
  private final List<CutCheck> checks = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  AsNzsPreparation(MemberCase member, TemperStrengths temper, CodeFigures figures) {
    this.member = member;
    section = member.section();
    soft = new SoftArea(member, figures.figure("weld.reach").value());
    known = new MemberInputs(member, temper, figures, SYMBOLS);
  }

  /** What one metal makes of the section by itself. */
  private record Metal(
      MemberInputs inputs, Working column, Map<BendingSide, Working> bending, MetalShear shear) {

    Working of(BendingSide side) {
      return Objects.requireNonNull(bending.get(side));
    }
  }

  PreparedMember prepare() {
    Metal parent = metal(known, PARENT);
    Metal beside = member.welds().isEmpty() ? parent : metal(known.besideWelds(), WELD);
    Metal bending = soft.hasAlong() ? beside : parent;
    Working tension =
        add(
            known
                .row(TENSION, "tension")
                .given("A_e", soft.net(known))
                .given("A_w", soft.ofNet(known))
                .run());
    Working column =
        add(
            parent
                .inputs()
                .row(COLUMN, "compression")
                .given("A_w", AdmWelds.ofMember(member, soft, known))
                .from(parent.column(), "P_lb", "P_lb")
                .from(parent.column(), "F_e_lb", "F_e_lb")
                .run());
    Working elastic = add(known.row(ELASTIC, "elastic").run());
    CutCheck lateral = lateral(bending, elastic, PARENT);
    checks.add(lateral);
    checks.add(
        combined(bending, tension, column)
            .with("P_c", column.feed("P_c"))
            .with("M_c_y", lateral.feed("M_c_y"))
            .check(USES.toArray(Use[]::new)));
    zones(beside, tension, column, elastic);
    member.declared().stream().map(DeclaredResistance::check).forEach(checks::add);
    remark();
    return new PreparedMember(member, workings, checks, remarks);
  }

  private Metal metal(MemberInputs numbers, String metal) {
    String label = metal.isEmpty() ? "parent metal" : "beside welds";
    MemberInputs inputs = numbers.with(add(numbers.row(CONSTANTS, label).run()));
    AsNzsElements elements = new AsNzsElements(inputs, label);
    add(elements.stockyRow());
    LocalBuckling local = new LocalBuckling(inputs, elements, metal, workings);
    Working column = local.column();
    Map<BendingSide, Working> bending = new EnumMap<>(BendingSide.class);
    for (BendingSide side : BendingSide.values()) {
      bending.put(
          side,
          add(
              inputs
                  .row(BENDING, side.words() + metal)
                  .given("I", inputs.section(side.moment(section), "second moment of area"))
                  .given("c_c", inputs.section(side.compressed(section), "compressed fibre"))
                  .given(
                      "c_t", inputs.section(side.opposite().compressed(section), "stretched fibre"))
                  .given("k_y", shape(1.17, 1.30))
                  .given("k_u", shape(1.24, 1.42))
                  .from(local.beam(side), "M_lb", "M_lb")
                  .run()));
    }
    return new Metal(
        inputs, column, bending, MetalShear.of(inputs, new AsNzsShear(soft), metal, workings));
  }

  /** How much more than its yield or ultimate strength the stretched fibre of a shape may bear. */
  private Figured shape(double round, double solid) {
    if (isRound()) {
      return new Figured(round, "round tube", Given.clause("3.4.3"));
    }
    return section.form() == SectionForm.SOLID
        ? new Figured(solid, "solid bar", Given.clause("3.4.4"))
        : new Figured(1, "flat flange", Given.clause("3.4.2"));
  }

  private boolean isRound() {
    return section.walls().stream().anyMatch(wall -> wall.kind() == PlateKind.ROUND);
  }

  private CutCheck lateral(Metal metal, Working elastic, String label) {
    Working positive = metal.of(BendingSide.Y_POSITIVE);
    Working negative = metal.of(BendingSide.Y_NEGATIVE);
    Working.Feeding row =
        LateralGivens.feed(
            metal.inputs().row(LATERAL, "lateral buckling" + label), member, elastic);
    for (String symbol : List.of("W_c", "M_c")) {
      row.from(positive, symbol + "_pos", symbol).from(negative, symbol + "_neg", symbol);
    }
    return row.check();
  }

  private Working.Feeding combined(Metal metal, Working tension, Working column) {
    String label = metal.column().label().endsWith(WELD) ? WELD : PARENT;
    return metal
        .inputs()
        .row(COMBINED, "forces together" + label)
        .atCut(Effect.N, Effect.V_Y, Effect.V_Z, Effect.T, Effect.M_Y, Effect.M_Z)
        .from(tension, "P_t", "P_t")
        .from(metal.column(), "P_s", "P_lb")
        .from(column, "F_e_y", "F_e_y")
        .from(column, "F_e_z", "F_e_z")
        .from(metal.shear().alongY(), "V_c_y", "V_c")
        .from(metal.shear().alongZ(), "V_c_z", "V_c")
        .from(metal.shear().torsion(), "T_c", "T_c")
        .from(metal.of(BendingSide.Z_POSITIVE), "M_c_z_pos", "M_c")
        .from(metal.of(BendingSide.Z_NEGATIVE), "M_c_z_neg", "M_c")
        .given("C_m_y", MemberInputs.choice(1, "on the safe side"))
        .given("C_m_z", MemberInputs.choice(1, "on the safe side"))
        .given("round", MemberInputs.choice(isRound() ? 1 : 0, "shape of the section"));
  }

  /** Cuts beside welds across the member, with the strengths there. */
  private void zones(Metal beside, Working tension, Working column, Working elastic) {
    if (!soft.hasAcross()) {
      return;
    }
    CutCheck lateral = lateral(beside, elastic, WELD);
    CutCheck combined =
        combined(beside, tension, column)
            .with("P_c", beside.column().feed("P_lb"))
            .with("M_c_y", lateral.feed("M_c_y"))
            .check();
    checks.add(lateral);
    checks.add(combined);
    for (Weld weld : member.welds()) {
      if (weld instanceof Weld.Across across) {
        String of = "weld " + across.name();
        checks.add(
            known
                .row(ZONE, across.name())
                .atCut(Effect.PLACE)
                .given("x_w", across.place(), of + ", place", across.source())
                .given("r_w", soft.reach(across), of + ", reach", across.source())
                .with("η_w", combined.feed("η_NMVT"))
                .check(new Use("η_weld", "beside " + of, "3.4, 6.4")));
      }
    }
  }

  private void remark() {
    if (section.form() == SectionForm.OPEN) {
      remarks.add(
          "Torsion is checked without warping stresses; open sections should not carry torque.");
    }
    if (!section.doublySymmetric()) {
      remarks.add(
          "Outstands of the column count no strength after buckling, as the section is not doubly"
              + " symmetric.");
    }
    if (soft.hasAlong()) {
      remarks.add(
          "Welded along its length: bending and shear are checked as if all metal were beside the"
              + " weld.");
    }
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }
}
