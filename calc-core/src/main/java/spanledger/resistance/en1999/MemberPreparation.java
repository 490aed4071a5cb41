package spanledger.resistance.en1999;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.CodeFigures;
import spanledger.resistance.member.CutCheck;
import spanledger.resistance.member.DeclaredResistance;
import spanledger.resistance.member.Effect;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Hole;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.PreparedMember;
import spanledger.resistance.member.SectionForm;
import spanledger.resistance.member.Use;
import spanledger.resistance.member.Weld;
import spanledger.resistance.member.Working;

/** Puts the procedures together for one member. */
final class MemberPreparation {

  private static final CompiledProcedure TENSION = Tension.PROCEDURE.compile();
  private static final CompiledProcedure EXPONENTS = Exponents.PROCEDURE.compile();
  private static final CompiledProcedure WELD = WeakPlace.WELD.compile();
  private static final CompiledProcedure HOLES = WeakPlace.HOLES.compile();
  private static final CompiledProcedure REACHED = WeakPlace.REACHED.compile();
  private static final CompiledProcedure SECTION = SectionAtCut.PROCEDURE.compile();
  private static final CompiledProcedure MEMBER = MemberAtCut.PROCEDURE.compile();

  private final Inputs inputs;
  private final MemberCase member;
  private final MemberSection section;
  private final Softening softening;
  private final List<Working> workings = new ArrayList<>();
  private final List<CutCheck> checks = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final Map<Bending, Working> bent = new EnumMap<>(Bending.class);

  MemberPreparation(CodeFigures figures, MemberCase member) {
    inputs = new Inputs(figures, member.alloy(), member.section());
    this.member = member;
    section = member.section();
    softening = new Softening(inputs, member);
  }

  PreparedMember prepare() {
    EffectiveSections effective = new EffectiveSections(inputs, softening, workings);
    EffectiveSections.Compressed compressed = effective.compressed();
    for (Bending bending : Bending.values()) {
      Working mirrored = bent.get(bending.opposite());
      boolean same = mirrored != null && section.doublySymmetric() && !softening.along();
      bent.put(bending, same ? mirrored : effective.bent(bending));
    }
    Feed softArea = effective.softenedArea();
    ShearResistances shear = new ShearResistances(inputs, member, softening, workings);
    Working shearY = shear.along(false);
    Working shearZ = shear.along(true);
    BucklingResistances buckling = new BucklingResistances(inputs, member, softening, workings);
    BucklingResistances.Found found = buckling.of(compressed, bent);
    Working torsion = found.torsion();
    Working exponents = exponents(found, compressed);
    List<List<Hole>> groups = HoleGroups.of(member.holes());
    NetSections netSections = new NetSections(inputs, workings);
    List<NetSections.Net> nets =
        groups.stream().map(group -> netSections.of(group, softArea)).toList();
    Feed omega = weldsAcross();
    for (int i = 0; i < nets.size(); i++) {
      omega = holes(groups.get(i), nets.get(i), compressed, omega);
    }
    Working tension = tension(softArea, nets);
    checks.add(
        inputs
            .yielding(Working.of(SECTION, "section"))
            .atCut(Effect.N, Effect.V_Y, Effect.V_Z, Effect.T, Effect.M_Y, Effect.M_Z)
            .with("ω_0", omega)
            .same(tension, "N_t_Rd")
            .same(compressed.section(), "N_c_Rd")
            .from(of(Bending.Y_POSITIVE), "M_y_Rd_pos", "M_Rd")
            .from(of(Bending.Y_NEGATIVE), "M_y_Rd_neg", "M_Rd")
            .from(of(Bending.Z_POSITIVE), "M_z_Rd_pos", "M_Rd")
            .from(of(Bending.Z_NEGATIVE), "M_z_Rd_neg", "M_Rd")
            .from(shearY, "V_y_Rd", "V_Rd")
            .from(shearZ, "V_z_Rd", "V_Rd")
            .same(torsion, "T_Rd", "c_w")
            .given("h", Inputs.yes(section.form() == SectionForm.HOLLOW, "hollow"))
            .given("o", open())
            .same(exponents, "e_0", "ψ_0")
            .check(
                new Use("η_N", "axial force", "6.2.3, 6.2.4"),
                new Use("η_My", "bending about y", "6.2.5"),
                new Use("η_Mz", "bending about z", "6.2.5"),
                new Use("η_Vy", "shear along y", "6.2.6"),
                new Use("η_Vz", "shear along z", "6.2.6"),
                new Use("η_T", "torsion", "6.2.7"),
                new Use("η_section", "axial force and bending of the section", "6.2.9, 6.2.10")));
    checks.add(memberCheck(found, compressed, exponents, omega));
    for (DeclaredResistance declared : member.declared()) {
      checks.add(declared.check());
    }
    remark();
    return new PreparedMember(member, workings, checks, remarks);
  }

  private Working of(Bending bending) {
    return Objects.requireNonNull(bent.get(bending));
  }

  private Figured open() {
    return Inputs.yes(section.form() == SectionForm.OPEN, "open");
  }

  private CutCheck memberCheck(
      BucklingResistances.Found found,
      EffectiveSections.Compressed compressed,
      Working exponents,
      Feed omega) {
    boolean y = found.strongIsY();
    return Working.of(MEMBER, "member")
        .atCut(Effect.N)
        .with("M_y", new Feed.AtCut(y ? Effect.M_Y : Effect.M_Z))
        .with("M_z", new Feed.AtCut(y ? Effect.M_Z : Effect.M_Y))
        .with("ξ_y", new Feed.AtCut(y ? Effect.PART_Y : Effect.PART_Z))
        .with("ξ_z", new Feed.AtCut(y ? Effect.PART_Z : Effect.PART_Y))
        .atCut(Effect.PART_LATERAL)
        .with("ω_0", omega)
        .from(found.strong(), "N_b_y", "N_b_Rd")
        .from(found.weak(), "N_b_z", "N_b_Rd")
        .from(found.twisting(), "N_b_T", "N_b_Rd")
        .same(exponents, "χ_y", "χ_zT", "e_c", "N_Rd")
        .given("γ_M1", inputs.figures().figured(Figures.YIELDING))
        .from(found.strong(), "N_cr_y", "N_cr")
        .from(found.strong(), "μ_y", "μ")
        .from(found.weak(), "N_cr_z", "N_cr")
        .from(found.weak(), "μ_z", "μ")
        .with("e_y", shift(compressed, y ? "e_Ny" : "e_Nz"))
        .with("e_z", shift(compressed, y ? "e_Nz" : "e_Ny"))
        .from(of(y ? Bending.Y_POSITIVE : Bending.Z_POSITIVE), "M_y_Rd_pos", "M_Rd")
        .from(of(y ? Bending.Y_NEGATIVE : Bending.Z_NEGATIVE), "M_y_Rd_neg", "M_Rd")
        .from(of(y ? Bending.Z_POSITIVE : Bending.Y_POSITIVE), "M_z_Rd_pos", "M_Rd")
        .from(of(y ? Bending.Z_NEGATIVE : Bending.Y_NEGATIVE), "M_z_Rd_neg", "M_Rd")
        .from(found.lateralPositive(), "χ_LT_pos", "χ_LT")
        .from(found.lateralNegative(), "χ_LT_neg", "χ_LT")
        .given("o", open())
        .check(
            new Use("η_by", "flexural buckling about the stronger axis", "6.3.1"),
            new Use("η_bz", "flexural buckling about the weaker axis", "6.3.1"),
            new Use("η_bT", "torsional-flexural buckling", "6.3.1.4"),
            new Use("η_LT", "lateral-torsional buckling", "6.3.2"),
            new Use("η_member", "buckling with bending", "6.3.3"),
            new Use("η_second", "buckling with bending by second-order theory", ""));
  }

  private Feed shift(EffectiveSections.Compressed compressed, String symbol) {
    return compressed.section().feed(symbol);
  }

  private Working exponents(
      BucklingResistances.Found found, EffectiveSections.Compressed compressed) {
    return add(
        inputs
            .yielding(Working.of(EXPONENTS, "exponents"))
            .given("m", Inputs.yes(section.form() == SectionForm.SOLID, "solid"))
            .with("A_eff", compressed.area())
            .from(found.strong(), "N_b_y", "N_b_Rd")
            .from(found.weak(), "N_b_z", "N_b_Rd")
            .from(found.twisting(), "N_b_T", "N_b_Rd")
            .run());
  }

  private Working tension(Feed softArea, List<NetSections.Net> nets) {
    Feed least = softArea;
    for (NetSections.Net net : nets) {
      if (value(net.area()) < value(least)) {
        least = net.area();
      }
    }
    Working.Feeding run =
        inputs
            .rupture(inputs.yielding(Working.of(TENSION, "tension")))
            .with("A_g", softArea)
            .with("A_net", least);
    return add(
        member.holes().isEmpty()
            ? run.given("k_net", new Figured(1, "no holes", Inputs.CASE)).run()
            : run.given("k_net", inputs.figures().figured(Figures.NET)).run());
  }

  private static double value(Feed feed) {
    return feed instanceof Feed.Result result
        ? result.from().value(result.symbol())
        : feed instanceof Feed.Given given ? given.value() : Double.NaN;
  }

  /** ω_0 at the cut, from one weld to the next. */
  private Feed weldsAcross() {
    Feed omega = new Feed.Given(1, "no weak place", Inputs.CASE);
    for (Weld weld : member.welds()) {
      if (weld instanceof Weld.Across across) {
        Working run =
            add(
                inputs
                    .yielding(Working.of(WELD, weld.name()))
                    .given("γ_M2", inputs.figures().figured(Figures.RUPTURE))
                    .given("f_u_haz", softening.ultimate(across))
                    .run());
        omega =
            reached(
                weld.name(),
                new Figured(across.place(), "weld " + weld.name() + ", place", across.source()),
                softening.reach(weld).orElseThrow(),
                run,
                omega);
      }
    }
    return omega;
  }

  /** ω_0 at the cut with one more group of holes. */
  private Feed holes(
      List<Hole> group, NetSections.Net net, EffectiveSections.Compressed compressed, Feed before) {
    Hole first = group.get(0);
    Working run =
        add(
            inputs
                .rupture(Working.of(HOLES, first.name()))
                .with("A_net", net.area())
                .with("W_net_y", net.modulusY())
                .with("W_net_z", net.modulusZ())
                .same(compressed.section(), "N_c_Rd")
                .from(greater(Bending.Y_POSITIVE), "M_y_Rd", "M_Rd")
                .from(greater(Bending.Z_POSITIVE), "M_z_Rd", "M_Rd")
                .run());
    double reach = group.stream().mapToDouble(Hole::diameter).max().orElse(0);
    return reached(
        first.name(),
        new Figured(first.place(), "holes " + first.name() + ", place", first.source()),
        new Figured(reach, "holes " + first.name() + ", diameter", first.source()),
        run,
        before);
  }

  private Working greater(Bending bending) {
    Working one = of(bending);
    Working other = of(bending.opposite());
    return one.value("M_Rd") >= other.value("M_Rd") ? one : other;
  }

  private Feed reached(String name, Figured place, Figured reach, Working weak, Feed before) {
    CutCheck check =
        Working.of(REACHED, name)
            .atCut(Effect.PLACE)
            .given("x_w", place)
            .given("b_w", reach)
            .same(weak, "ω")
            .with("ω_b", before)
            .check();
    checks.add(check);
    return check.feed("ω_0");
  }

  private void remark() {
    if (section.warpingConstant() > 0 && section.form() == SectionForm.OPEN) {
      remarks.add("Stresses of held warping are counted by an upper bound.");
    }
    if (section.form() == SectionForm.OPEN && member.moments().loadHeight() <= 0) {
      remarks.add(
          "Lateral-torsional buckling without a load above the shear centre; give loadHeight if loads"
              + " stand on the upper flange and are not held sideways there.");
    }
    if (softening.along()) {
      remarks.add("Welded along its length: no plastic reserve is counted.");
    }
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }
}
