package spanledger.resistance.en1999;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import spanledger.material.BucklingClass;
import spanledger.procedure.CompiledProcedure;
import spanledger.resistance.member.BucklingLength;
import spanledger.resistance.member.BucklingMode;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.MemberCase;
import spanledger.resistance.member.MemberSection;
import spanledger.resistance.member.MomentFactors;
import spanledger.resistance.member.Working;
import spanledger.section.outline.Point;
import spanledger.section.plate.Plate;

/** Works out the buckling resistances of a member. */
final class BucklingResistances {

  private static final CompiledProcedure FLEXURAL = FlexuralBuckling.PROCEDURE.compile();
  private static final CompiledProcedure TWISTING = TorsionalBuckling.PROCEDURE.compile();
  private static final CompiledProcedure LATERAL = LateralTorsional.PROCEDURE.compile();
  private static final CompiledProcedure TORSION = Torsion.PROCEDURE.compile();
  private static final CompiledProcedure SOFTENED = SoftenedShare.PROCEDURE.compile();

  private final Inputs inputs;
  private final MemberCase member;
  private final MemberSection section;
  private final Softening softening;
  private final List<Working> workings;

  BucklingResistances(
      Inputs inputs, MemberCase member, Softening softening, List<Working> workings) {
    this.inputs = inputs;
    this.member = member;
    this.section = member.section();
    this.softening = softening;
    this.workings = workings;
  }

  /** All modes; strong and weak are the axes of greater and smaller second moment. */
  record Found(
      boolean strongIsY,
      Working strong,
      Working weak,
      Working twisting,
      Working lateralPositive,
      Working lateralNegative,
      Working torsion) {}

  Found of(EffectiveSections.Compressed compressed, Map<Bending, Working> bent) {
    Working softened =
        add(
            Working.of(SOFTENED, "welds along")
                .with("A", compressed.area())
                .with("A_haz", compressed.areaSoftened())
                .run());
    Working y = flexural(true, compressed, softened);
    Working z = flexural(false, compressed, softened);
    Working twisting = twisting(y, z, compressed);
    boolean strongIsY =
        section.properties().secondMomentY() >= section.properties().secondMomentZ();
    Bending positive = strongIsY ? Bending.Y_POSITIVE : Bending.Z_POSITIVE;
    Working up = lateral(positive, Objects.requireNonNull(bent.get(positive)));
    Working down =
        section.doublySymmetric() && !softening.along()
            ? up
            : lateral(positive.opposite(), Objects.requireNonNull(bent.get(positive.opposite())));
    return new Found(
        strongIsY, strongIsY ? y : z, strongIsY ? z : y, twisting, up, down, torsion());
  }

  private Figured length(BucklingMode mode) {
    BucklingLength length = Objects.requireNonNull(member.lengths().get(mode));
    return new Figured(length.length(), mode.words() + ": " + length.reason(), length.source());
  }

  private Working flexural(boolean y, EffectiveSections.Compressed compressed, Working softened) {
    boolean classB = inputs.alloy().bucklingClass() == BucklingClass.B;
    double inertia =
        y ? section.properties().secondMomentY() : section.properties().secondMomentZ();
    Working.Feeding run =
        inputs
            .yielding(inputs.youngsModulus(Working.of(FLEXURAL, y ? "about y" : "about z")))
            .given("I", inputs.ofSection(inertia, y ? "I_y" : "I_z"))
            .given("L_cr", length(y ? BucklingMode.FLEXURAL_Y : BucklingMode.FLEXURAL_Z))
            .with("A_eff", compressed.area())
            .given("w", Inputs.yes(softening.along(), "welded along"))
            .given("B", Inputs.yes(classB, "buckling class B"))
            .same(softened, "a_1");
    return add(inputs.curve(run, classB ? "flexural.B" : "flexural.A").run());
  }

  private Working twisting(Working y, Working z, EffectiveSections.Compressed compressed) {
    boolean radiating = radiating();
    Feed area =
        radiating ? feed(inputs.ofSection(section.properties().area(), "A")) : compressed.area();
    Working.Feeding run =
        inputs
            .yielding(inputs.moduli(torsional(Working.of(TWISTING, "twisting"))))
            .given("A_g", inputs.ofSection(section.properties().area(), "A"))
            .given("I_y", inputs.ofSection(section.properties().secondMomentY(), "I_y"))
            .given("I_z", inputs.ofSection(section.properties().secondMomentZ(), "I_z"))
            .given("y_s", inputs.ofSection(section.shearCentreY(), "y_s"))
            .given("z_s", inputs.ofSection(section.shearCentreZ(), "z_s"))
            .given("L_T", length(BucklingMode.TORSIONAL))
            .from(y, "N_cr_y", "N_cr")
            .from(z, "N_cr_z", "N_cr")
            .with("A_eff", area);
    return add(
        inputs.curve(run, radiating ? Figures.TORSIONAL_OUTSTANDS : Figures.TORSIONAL).run());
  }

  /** Whether the section is all outstands from one point, as angles, tees and crosses are. */
  private boolean radiating() {
    List<Plate> walls = section.walls();
    if (walls.isEmpty() || !walls.stream().allMatch(EffectiveSections::isOutstand)) {
      return false;
    }
    Point root = walls.get(0).start();
    double reach = 3 * walls.stream().mapToDouble(Plate::thickness).max().orElse(0);
    return walls.stream().allMatch(wall -> wall.start().distance(root) < reach);
  }

  private Working.Feeding torsional(Working.Feeding run) {
    return run.given("I_t", inputs.ofSection(section.properties().torsionConstant(), "I_t"))
        .given("I_w", inputs.ofSection(section.warpingConstant(), "I_w"));
  }

  private Working lateral(Bending bending, Working moment) {
    MomentFactors m = member.moments();
    boolean y = bending.aboutY();
    double asymmetry = bending.sense() * (y ? section.wagnerZ() : section.wagnerY()) + 0.0;
    double iy = section.properties().secondMomentY();
    double iz = section.properties().secondMomentZ();
    String why = m.reason();
    return add(
        torsional(inputs.moduli(inputs.strength(Working.of(LATERAL, bending.words()))))
            .given("I_y", inputs.ofSection(y ? iy : iz, y ? "I_y" : "I_z"))
            .given("I_z", inputs.ofSection(y ? iz : iy, y ? "I_z" : "I_y"))
            .given("z_j", inputs.ofSection(asymmetry, y ? "z_j" : "y_j"))
            .given("L_LT", length(BucklingMode.LATERAL_TORSIONAL))
            .given("C1", m.c1(), why, m.source())
            .given("C2", m.c2(), why, m.source())
            .given("C3", m.c3(), why, m.source())
            .given("k_z", m.kz(), why, m.source())
            .given("k_w", m.kw(), why, m.source())
            .given("z_g", m.loadHeight(), why, m.source())
            .given("W_el", inputs.ofSection(bending.elasticModulus(section), "W_el"))
            .from(moment, "α_W", "α")
            .same(moment, "M_Rd", "class_s")
            .given("α_12", figure(Figures.imperfection(Figures.LATERAL_STOCKY)))
            .given("λ_0_12", figure(Figures.plateau(Figures.LATERAL_STOCKY)))
            .given("α_34", figure(Figures.imperfection(Figures.LATERAL_SLENDER)))
            .given("λ_0_34", figure(Figures.plateau(Figures.LATERAL_SLENDER)))
            .run());
  }

  private Working torsion() {
    return add(
        torsional(inputs.moduli(inputs.yielding(Working.of(TORSION, "torsion"))))
            .given("W_t", inputs.ofSection(section.properties().torsionModulus(), "W_t"))
            .given("ω_w", inputs.ofSection(section.warpingOrdinate(), "ω"))
            .given("L_T", length(BucklingMode.TORSIONAL))
            .run());
  }

  private Figured figure(String id) {
    return inputs.figures().figured(id);
  }

  private static Feed feed(Figured figured) {
    return new Feed.Given(figured.value(), figured.origin(), figured.source());
  }

  private Working add(Working working) {
    workings.add(working);
    return working;
  }
}
