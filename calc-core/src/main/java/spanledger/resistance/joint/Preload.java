package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.pi;
import static spanledger.procedure.Formulas.sqrt;

import java.util.List;
import spanledger.joint.Tightening;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/**
 * The preload that a tightening torque leaves in a bolt, between bounds, and what tightening does
 * to the bolt.
 *
 * <p>Step {@code F_p_min} is what joints may count on, {@code F_p_max} what parts must stand. What
 * settles after tightening, and what a change of temperature takes, is only in the part that is
 * declared lost.
 */
public final class Preload {

  /** Torque, scatter of the tool and bounds of friction to bounds of preload. */
  static final Procedure BY_FRICTION = byFriction();

  /** Nut factor and tightening factor to bounds of preload. */
  static final Procedure BY_TOOL = byTool();

  private static final CompiledProcedure BY_FRICTION_COMPILED = BY_FRICTION.compile();
  private static final CompiledProcedure BY_TOOL_COMPILED = BY_TOOL.compile();
  private static final String USE = "VDI 2230, stress while tightening";

  private Preload() {}

  /** Preload of a hexagon bolt or nut, less what the job declares lost. */
  public static JointCheck of(Bolt bolt, Tightening.Torque torque) {
    String words = torque.loss() > 0 ? "loss of preload" : "nothing declared lost";
    return of(bolt, torque, new Figured(torque.loss(), words, torque.source()));
  }

  /**
   * Preload of a hexagon bolt or nut that is turned.
   *
   * @param lost part of the preload that is lost after tightening, from 0 to below 1
   * @return a check of the stress while tightening, whose steps F_p_min and F_p_max are the bounds
   */
  public static JointCheck of(Bolt bolt, Tightening.Torque torque, Figured lost) {
    BoltInputs inputs = new BoltInputs(bolt);
    Source source = torque.source();
    Working.Feeding run =
        Working.of(BY_FRICTION_COMPILED, bolt.name())
            .given("T", torque.torque(), "torque", source)
            .given("s_T", torque.scatter(), "scatter of the torque", source)
            .given("μ_min", torque.lowerFriction(), "least friction of thread and head", source)
            .given("μ_max", torque.upperFriction(), "greatest friction of thread and head", source)
            .given("k_l", lost)
            .given("d_h", bolt.size().hole(), "bolt size, hole", bolt.size().source())
            .given("A_s", inputs.stressArea())
            .given("f_yb", inputs.proof());
    Working working = inputs.acrossFlats(inputs.pitch(inputs.diameter(run))).run();
    return new JointCheck(
        working,
        List.of(new JointUse("η_tight", "bolt while it is tightened", USE, "σ_red", "σ_most")));
  }

  /**
   * Preload from a nut factor.
   *
   * @param torque N·mm
   * @param nutFactor K of F = T/(K d), for the greatest preload
   * @param tighteningFactor greatest over least preload, α_A
   * @param lost part of the preload that is lost after tightening, from 0 to below 1
   */
  public static JointCheck of(
      Bolt bolt, Figured torque, Figured nutFactor, Figured tighteningFactor, Figured lost) {
    BoltInputs inputs = new BoltInputs(bolt);
    Working.Feeding run =
        Working.of(BY_TOOL_COMPILED, bolt.name())
            .given("T", torque)
            .given("K", nutFactor)
            .given("α_A", tighteningFactor)
            .given("k_l", lost)
            .given("A_s", inputs.stressArea())
            .given("f_yb", inputs.proof());
    Working working = inputs.diameter(run).run();
    return new JointCheck(
        working,
        List.of(
            new JointUse(
                "η_tight", "bolt in tension from preload alone", "common limit", "σ", "σ_most")));
  }

  private static Source vdi(String place) {
    return Source.fromMemory("VDI 2230 Part 1", place);
  }

  private static Procedure byFriction() {
    JointSteps p = new JointSteps("preload", "Preload from torque and friction");
    Reference torque = p.moment("T", "torque on the nut or head");
    Reference scatter = p.number0("s_T", "scatter of the torque, as a part either way");
    Reference least = p.factor("μ_min", "least friction of thread and head");
    Reference most = p.factor("μ_max", "greatest friction of thread and head");
    Reference lost = lost(p);
    Reference d = p.size("d", "diameter of the thread");
    Reference pitch = p.size("P", "pitch of the thread");
    Reference flats = p.size("s", "width of nut or head across flats");
    Reference hole = p.size("d_h", "diameter of the hole");
    Reference area = p.area("A_s", "tensile stress area");
    Reference proof = p.strength("f_yb", "0.2 % proof strength of the bolt");
    Reference flank =
        p.step(
            "d_2",
            "flank diameter of the thread",
            d.minus(pitch.times(0.6495)),
            Source.fromMemory("ISO 724", "basic dimensions"));
    Reference bearing =
        p.step("D_km", "mean diameter under nut or head", flats.plus(hole).over(2), vdi("5.4.3"));
    Reference thread1 =
        p.step(
            "c_1",
            "torque in the thread per force, least friction",
            thread(pitch, flank, least),
            vdi("5.4.3"));
    Reference thread2 =
        p.step(
            "c_2",
            "torque in the thread per force, greatest friction",
            thread(pitch, flank, most),
            vdi("5.4.3"));
    Reference greatest =
        p.step(
            "F_p_max",
            "greatest preload, right after tightening",
            torque.times(number(1).plus(scatter)).over(thread1.plus(bearing.times(least).over(2))),
            vdi("5.4.3"));
    p.step(
        "F_p_min",
        "least preload, less what is lost",
        number(1)
            .minus(lost)
            .times(torque.times(number(1).minus(scatter)))
            .over(thread2.plus(bearing.times(most).over(2))),
        vdi("5.4.3"));
    p.step(
        "T_max",
        "greatest torque of the tool",
        torque.times(number(1).plus(scatter)),
        JointSource.derived("Scatter of the tool"));
    Reference core =
        p.step(
            "d_s",
            "diameter of the stress area",
            sqrt(area.times(4).over(pi())),
            JointSource.derived("Geometry"));
    Reference tension = p.step("σ", "tension while tightening", greatest.over(area), vdi("5.5.1"));
    Reference twist =
        p.step(
            "τ",
            "shear while tightening, plastic twist",
            greatest.times(thread1).times(12).over(pi().times(core.pow(3))),
            vdi("5.5.1"));
    Reference reduced =
        p.step(
            "σ_red",
            "equivalent stress while tightening",
            sqrt(tension.pow(2).plus(twist.pow(2).times(3))),
            vdi("5.5.1"));
    limit(p, proof, reduced);
    return p.build();
  }

  private static Procedure byTool() {
    JointSteps p = new JointSteps("preload-tool", "Preload from a nut factor");
    Reference torque = p.moment("T", "torque on the nut or head");
    Reference nut = p.factor("K", "nut factor, for the greatest preload");
    Reference tool = p.factor("α_A", "greatest per least preload, by the way of tightening");
    Reference lost = lost(p);
    Reference d = p.size("d", "diameter of the thread");
    Reference area = p.area("A_s", "tensile stress area");
    Reference proof = p.strength("f_yb", "0.2 % proof strength of the bolt");
    Source short1 = Source.fromMemory("Short form of the torque of a bolt", "F = T/(K d)");
    Reference greatest =
        p.step(
            "F_p_max",
            "greatest preload, right after tightening",
            torque.over(nut.times(d)),
            short1);
    p.step(
        "F_p_min",
        "least preload, less what is lost",
        number(1).minus(lost).times(greatest).over(tool),
        vdi("5.4.3, tightening factor"));
    Reference tension = p.step("σ", "tension while tightening", greatest.over(area), short1);
    limit(p, proof, tension);
    return p.build();
  }

  private static Reference lost(JointSteps p) {
    return p.part("k_l", "part of the preload that is lost after tightening");
  }

  private static void limit(JointSteps p, Reference proof, Reference stress) {
    Reference most =
        p.step("σ_most", "stress that the bolt may have", proof.times(0.9), vdi("5.5.1, ν = 0.9"));
    p.step("η_tight", "bolt while it is tightened, use", stress.over(most), vdi("5.5.1"));
  }

  private static Expression thread(Reference pitch, Reference flank, Reference friction) {
    return pitch.over(pi().times(2)).plus(flank.times(friction).over(sqrt(number(3))));
  }
}
