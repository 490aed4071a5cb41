package spanledger.resistance.adm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import spanledger.material.TemperStrengths;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.CutCheck;
import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.SectionForm;
import spanledger.resistance.member.Use;
import spanledger.resistance.member.Weld;
import spanledger.resistance.member.Working;

/**
 * Puts the procedures of a publication together for one member, in the order that both publications
 * follow. The publication starts each row with what it alone asks for.
 */
public abstract class TemperedPreparation {

  private static final CompiledProcedure ELASTIC = ElasticLateralBuckling.PROCEDURE.compile();
  private static final CompiledProcedure ZONE = WeldZone.PROCEDURE.compile();

  private static final String PARENT = "";
  private static final String WELD = ", beside welds";

  /** Metal softened by welds, and holes. */
  protected final SoftArea soft;

  /** The numbers of the member, with the strengths of the parent metal. */
  protected final MemberInputs known;

  /** The member that is put together. */
  protected final MemberCase member;

  private final List<Working> workings = new ArrayList<>();
  private final List<CutCheck> checks = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  /**
   * @param symbols the symbol of each figure of the code that procedures use, by its id
   */
  protected TemperedPreparation(
      MemberCase member, TemperStrengths temper, CodeFigures figures, Map<String, String> symbols) {
    this.member = member;
    soft = new SoftArea(member, figures.figure("weld.reach").value());
    known = new MemberInputs(member, temper, figures, symbols);
  }

  /** The buckling constants of a metal. */
  protected abstract CompiledProcedure constants();

  /** Strengths of elements; {@code label} names the metal. */
  protected abstract LocalBuckling.Strengths elements(MemberInputs inputs, String label);

  /** Walls in shear. */
  protected abstract MetalShear.Rule shear();

  /** A row of bending with all but I, c_c, c_t and M_lb. */
  protected abstract Working.Feeding bending(MemberInputs inputs, BendingSide side, String label);

  /** A row with P_t. */
  protected abstract Working.Feeding tension(String label);

  /** A row with P_c, F_e_y and F_e_z of the whole member, with all but P_lb and F_e_lb. */
  protected abstract Working.Feeding compression(
      MetalStrengths parent, MetalStrengths beside, String label);

  /** The strength in compression of a cut beside a weld, where no length buckles. */
  protected abstract Feed compressionBeside(MetalStrengths beside, String label);

  /** A row with M_c_y, with what it takes from bending to both sides. */
  protected abstract Working.Feeding lateral(MetalStrengths metal, String label);

  /** A row of all forces together, with what no other publication asks for. */
  protected abstract Working.Feeding combined(MetalStrengths metal, String label);

  /** What is judged of all forces together. */
  protected abstract List<Use> uses();

  /** Clauses that judge a cut beside a weld. */
  protected abstract String weldClauses();

  /** Remarks beyond those of every publication. */
  protected abstract List<String> ownRemarks();

  /** Works out all that does not hang on loads. To be called once. */
  public final PreparedMember prepare() {
    MetalStrengths parent = metal(known, "parent metal", PARENT);
    MetalStrengths beside =
        member.welds().isEmpty() ? parent : metal(known.besideWelds(), "beside welds", WELD);
    Working tension = add(tension("tension").run());
    Working compression =
        add(
            compression(parent, beside, "compression")
                .from(parent.column(), "P_lb", "P_lb")
                .from(parent.column(), "F_e_lb", "F_e_lb")
                .run());
    Working elastic = add(known.row(ELASTIC, "elastic").run());
    Axial axial = new Axial(tension, compression, elastic);
    cut(soft.hasAlong() ? beside : parent, axial, compression.feed("P_c"), PARENT, uses());
    if (soft.hasAcross()) {
      zones(beside, axial);
    }
    member.declared().stream().map(DeclaredResistance::check).forEach(checks::add);
    remark();
    return new PreparedMember(member, workings, checks, remarks);
  }

  /** Rows of the whole member. */
  private record Axial(Working tension, Working compression, Working elastic) {}

  private MetalStrengths metal(MemberInputs numbers, String label, String mark) {
    MemberInputs inputs = numbers.with(add(numbers.row(constants(), label).run()));
    LocalBuckling.Strengths elements = elements(inputs, label);
    add(elements.stocky());
    LocalBuckling local = new LocalBuckling(inputs, elements, mark, workings);
    Working column = local.column();
    Map<BendingSide, Working> bending = new EnumMap<>(BendingSide.class);
    for (BendingSide side : BendingSide.values()) {
      bending.put(side, add(bending(inputs, side, local, side.words() + mark)));
    }
    return new MetalStrengths(
        inputs, column, bending, MetalShear.of(inputs, shear(), mark, workings));
  }

  private Working bending(
      MemberInputs inputs, BendingSide side, LocalBuckling local, String label) {
    MemberSection section = member.section();
    return bending(inputs, side, label)
        .given("I", inputs.section(side.moment(section), "second moment of area"))
        .given("c_c", inputs.section(side.compressed(section), "compressed fibre"))
        .given("c_t", inputs.section(side.opposite().compressed(section), "stretched fibre"))
        .from(local.beam(side), "M_lb", "M_lb")
        .run();
  }

  /** The checks of a cut: lateral buckling, then all forces together, which is returned. */
  private CutCheck cut(
      MetalStrengths metal, Axial axial, Feed compression, String mark, List<Use> uses) {
    CutCheck lateral =
        LateralGivens.feed(lateral(metal, "lateral buckling" + mark), member, axial.elastic())
            .check();
    CutCheck combined =
        combined(metal, "forces together" + mark)
            .atCut(Effect.N, Effect.V_Y, Effect.V_Z, Effect.T, Effect.M_Y, Effect.M_Z)
            .from(axial.tension(), "P_t", "P_t")
            .with("P_c", compression)
            .same(axial.compression(), "F_e_y", "F_e_z")
            .from(metal.shear().alongY(), "V_c_y", "V_c")
            .from(metal.shear().alongZ(), "V_c_z", "V_c")
            .from(metal.shear().torsion(), "T_c", "T_c")
            .with("M_c_y", lateral.feed("M_c_y"))
            .from(metal.of(BendingSide.Z_POSITIVE), "M_c_z_pos", "M_c")
            .from(metal.of(BendingSide.Z_NEGATIVE), "M_c_z_neg", "M_c")
            .given("C_m_y", MemberInputs.choice(1, "on the safe side"))
            .given("C_m_z", MemberInputs.choice(1, "on the safe side"))
            .check(uses.toArray(Use[]::new));
    checks.add(lateral);
    checks.add(combined);
    return combined;
  }

  /** Cuts beside welds across the member, with the strengths there. */
  private void zones(MetalStrengths beside, Axial axial) {
    Feed compression = compressionBeside(beside, "beside welds");
    CutCheck combined = cut(beside, axial, compression, WELD, List.of());
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
                .check(new Use("η_weld", "beside " + of, weldClauses())));
      }
    }
  }

  private void remark() {
    if (member.section().form() == SectionForm.OPEN) {
      remarks.add(
          "Torsion is checked without warping stresses; open sections should not carry torque.");
    }
    if (!member.section().doublySymmetric()) {
      remarks.add(
          "Outstands of the column count no strength after buckling, as the section is not doubly"
              + " symmetric.");
    }
    if (soft.hasAlong()) {
      remarks.add(
          "Welded along its length: bending and shear are checked as if all metal were beside the"
              + " weld.");
    }
    remarks.addAll(ownRemarks());
  }

  /** Keeps a row among the workings. */
  protected final Working add(Working working) {
    workings.add(working);
    return working;
  }
}
