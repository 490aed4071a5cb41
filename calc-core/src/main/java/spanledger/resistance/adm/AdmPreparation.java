package spanledger.resistance.adm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import spanledger.material.TemperStrengths;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.CutCheck;
import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.SectionForm;
import spanledger.resistance.member.Use;
import spanledger.resistance.member.Weld;
import spanledger.resistance.member.Working;

/** Puts the procedures of the Aluminum Design Manual together for one member. */
final class AdmPreparation {

  private static final CompiledProcedure CONSTANTS = BucklingConstants.ADM.compile();
  private static final CompiledProcedure TENSION = TensionStrength.PROCEDURE.compile();
  private static final CompiledProcedure COMPRESSION = CompressionStrength.PROCEDURE.compile();
  private static final CompiledProcedure SQUASH = SquashStrength.PROCEDURE.compile();
  private static final CompiledProcedure BENDING = BendingStrength.PROCEDURE.compile();
  private static final CompiledProcedure ELASTIC = ElasticLateralBuckling.PROCEDURE.compile();
  private static final CompiledProcedure LATERAL = LateralBucklingStrength.PROCEDURE.compile();
  private static final CompiledProcedure COMBINED = CombinedStrength.PROCEDURE.compile();
  private static final CompiledProcedure ZONE = WeldZone.PROCEDURE.compile();

  private static final String PARENT = "";
  private static final String WELD = ", beside welds";

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

  private final MemberCase member;
  private final MemberSection section;
  private final SoftArea soft;
  private final MemberInputs known;
  private final List<Working> workings = new ArrayList<>();
  private final List<CutCheck> checks = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  AdmPreparation(MemberCase member, TemperStrengths temper, CodeFigures figures) {
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
    boolean welded = !member.welds().isEmpty();
    Metal beside = welded ? metal(known.besideWelds(), WELD) : parent;
    Metal bending = soft.hasAlong() ? beside : parent;
    Working tension =
        add(
            known
                .row(TENSION, "tension")
                .given("A_e", soft.net(known))
                .given("A_w_l", soft.along(known))
                .given("A_w", soft.ofNet(known))
                .run());
    Working compression = compression(parent, beside);
    Working elastic = add(known.row(ELASTIC, "elastic").run());

    CutCheck lateral = lateral(bending, elastic, PARENT);
    CutCheck combined =
        combined(bending, tension, compression, compression, lateral, PARENT, AdmUses.ALL);
    checks.add(lateral);
    checks.add(combined);
    zones(beside, tension, compression, elastic);
    member.declared().stream().map(DeclaredResistance::check).forEach(checks::add);
    remark();
    return new PreparedMember(member, workings, checks, remarks);
  }

  private Metal metal(MemberInputs numbers, String metal) {
    Working constants =
        add(numbers.row(CONSTANTS, metal.isEmpty() ? "parent metal" : "beside welds").run());
    MemberInputs inputs = numbers.with(constants);
    AdmElements elements =
        new AdmElements(inputs, metal.isEmpty() ? "parent metal" : "beside welds");
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
                  .given("W_pl", inputs.section(side.plastic(section), "plastic modulus"))
                  .given("W_pl_n", soft.netPlastic(inputs, side))
                  .from(local.beam(side), "M_lb", "M_lb")
                  .run()));
    }
    return new Metal(
        inputs, column, bending, MetalShear.of(inputs, new AdmShear(soft), metal, workings));
  }

  private Working compression(Metal parent, Metal beside) {
    return add(
        parent
            .inputs()
            .row(COMPRESSION, "compression")
            .given("A_w", AdmWelds.ofMember(member, soft, parent.inputs()))
            .with("F_cyw", beside.inputs().of("F_cy"))
            .with("B_cw", beside.inputs().of("B_c"))
            .with("D_cw", beside.inputs().of("D_c"))
            .with("C_cw", beside.inputs().of("C_c"))
            .from(parent.column(), "P_lb", "P_lb")
            .from(parent.column(), "F_e_lb", "F_e_lb")
            .run());
  }

  private CutCheck lateral(Metal metal, Working elastic, String label) {
    Working positive = metal.of(BendingSide.Y_POSITIVE);
    Working negative = metal.of(BendingSide.Y_NEGATIVE);
    Working.Feeding row =
        LateralGivens.feed(
            metal.inputs().row(LATERAL, "lateral buckling" + label), member, elastic);
    for (String symbol : List.of("W_c", "M_np", "M_n", "M_u")) {
      row.from(positive, symbol + "_pos", symbol).from(negative, symbol + "_neg", symbol);
    }
    return row.with("F_e_fl_pos", AdmUses.flange(positive))
        .with("F_e_fl_neg", AdmUses.flange(negative))
        .check();
  }

  private CutCheck combined(
      Metal metal,
      Working tension,
      Working compression,
      Working columns,
      CutCheck lateral,
      String label,
      List<Use> uses) {
    Working.Feeding row =
        metal
            .inputs()
            .row(COMBINED, "forces together" + label)
            .atCut(Effect.N, Effect.V_Y, Effect.V_Z, Effect.T, Effect.M_Y, Effect.M_Z)
            .from(tension, "P_t", "P_t")
            .from(compression, "P_c", "P_c")
            .from(columns, "F_e_y", "F_e_y")
            .from(columns, "F_e_z", "F_e_z")
            .from(metal.shear().alongY(), "V_c_y", "V_c")
            .from(metal.shear().alongZ(), "V_c_z", "V_c")
            .from(metal.shear().torsion(), "T_c", "T_c")
            .with("M_c_y", lateral.feed("M_c_y"))
            .from(metal.of(BendingSide.Z_POSITIVE), "M_c_z_pos", "M_c")
            .from(metal.of(BendingSide.Z_NEGATIVE), "M_c_z_neg", "M_c")
            .given("C_m_y", MemberInputs.choice(1, "on the safe side"))
            .given("C_m_z", MemberInputs.choice(1, "on the safe side"))
            .given("bow", MemberInputs.choice(0, "moments of straight members"));
    return row.check(uses.toArray(Use[]::new));
  }

  /** Cuts beside welds across the member, with the strengths there. */
  private void zones(Metal beside, Working tension, Working columns, Working elastic) {
    if (!soft.hasAcross()) {
      return;
    }
    Working squash =
        add(
            beside
                .inputs()
                .row(SQUASH, "beside welds")
                .from(beside.column(), "P_lb", "P_lb")
                .run());
    CutCheck lateral = lateral(beside, elastic, WELD);
    CutCheck combined = combined(beside, tension, squash, columns, lateral, WELD, List.of());
    checks.add(lateral);
    checks.add(combined);
    for (Weld weld : member.welds()) {
      if (weld instanceof Weld.Across across) {
        checks.add(
            known
                .row(ZONE, across.name())
                .atCut(Effect.PLACE)
                .given("x_w", across.place(), "weld " + across.name() + ", place", across.source())
                .given(
                    "r_w", soft.reach(across), "weld " + across.name() + ", reach", across.source())
                .with("η_w", combined.feed("η_NMVT"))
                .check(new Use("η_weld", "beside weld " + across.name(), "A.3, F, H")));
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
          "Outstands of the column count no strength after buckling, as the section is not doubly symmetric.");
    }
    if (soft.hasAlong()) {
      remarks.add(
          "Welded along its length: bending and shear are checked as if all metal were beside the weld.");
    }
    if (soft.hasAcross()) {
      remarks.add(
          "Welds across count for buckling of the member unless they are within 0.05 of its length from its start.");
    }
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }
}
