package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.min;

import java.util.List;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** A key in a slot: it presses on the slot's side, is sheared off and bent at its root. */
final class Key {

  static final Procedure PROCEDURE = define();

  private static final CompiledProcedure COMPILED = PROCEDURE.compile();
  private static final String TEST = "derived from mechanics, confirm by test";

  private Key() {}

  static JointCheck check(Working keyStrengths, Working slotStrengths, KeyInSlot key, Feed force) {
    Working working =
        Working.of(COMPILED, key.name())
            .with("F_k", force)
            .given("h", of(key, key.depth(), "depth of the key in the slot"))
            .given("h_w", of(key, key.wall(), "depth of the slot's side"))
            .given("l", of(key, key.length(), "length of the key"))
            .given("t", of(key, key.thickness(), "thickness of the key at its root"))
            .from(keyStrengths, "f_k", "f_od")
            .from(keyStrengths, "τ_k", "τ_od")
            .from(slotStrengths, "f_s", "f_od")
            .run();
    return new JointCheck(
        working,
        List.of(
            new JointUse("η_kp", "key on the side of the slot", TEST, "F_k", "F_p"),
            new JointUse("η_kv", "root of the key in shear", TEST, "F_k", "F_v"),
            new JointUse("η_kb", "root of the key in bending", TEST, "F_k", "F_b"),
            new JointUse("η_kbv", "root in bending and shear", TEST, "both", "both_Rd")));
  }

  private static Figured of(KeyInSlot key, double value, String what) {
    return new Figured(value, key.name() + ", " + what, key.source());
  }

  private static Procedure define() {
    Source statics = JointSource.derived("Pressure, shear and plastic bending of a key");
    JointSteps p = new JointSteps("key", "Key in a slot");
    Reference force = p.force("F_k", "force of the key on the slot");
    Reference depth = p.size("h", "depth of the key in the slot");
    Reference wall = p.size("h_w", "depth of the slot's side");
    Reference length = p.size("l", "length of the key");
    Reference thickness = p.size("t", "thickness of the key at its root");
    Reference keyStrength = p.strength("f_k", "design yield strength of the key");
    Reference keyShear = p.strength("τ_k", "design yield strength of the key in shear");
    Reference slotStrength = p.strength("f_s", "design yield strength of the slot");
    Reference bears =
        p.step("h_b", "depth that bears: the lesser of key and side", min(depth, wall), statics);
    Reference pressed =
        p.step(
            "F_p",
            "force at which the softer of both yields",
            bears.times(length).times(min(keyStrength, slotStrength)),
            statics);
    Reference sheared =
        p.step(
            "F_v",
            "force that shears the root of the key",
            thickness.times(length).times(keyShear),
            statics);
    Reference bent =
        p.step(
            "F_b",
            "force at the hinge in the root, acting at half of the depth",
            thickness.pow(2).times(length).times(keyStrength).over(depth.times(2)),
            statics);
    p.use("η_kp", "key on the side of the slot", force, pressed, statics);
    p.use("η_kv", "root of the key in shear", force, sheared, statics);
    p.use("η_kb", "root of the key in bending", force, bent, statics);
    p.bendingAndShear("η_kbv", "root in bending and shear", force, bent, sheared);
    return p.build();
  }
}
