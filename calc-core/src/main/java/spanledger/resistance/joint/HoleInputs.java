package spanledger.resistance.joint;

import java.util.OptionalDouble;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** Numbers of a hole on their way into a run; a distance of 0 says that nothing is near. */
record HoleInputs(HoleInPlate hole) {

  Working.Feeding all(Working.Feeding run) {
    return near(run)
        .given("t", ofHole(hole.thickness(), "thickness"))
        .given("d_0", ofHole(hole.hole(), "diameter of the hole"));
  }

  /** The distances alone. */
  Working.Feeding near(Working.Feeding run) {
    return run.given("e_1", near(hole.end(), "end distance"))
        .given("p_1", near(hole.pitch(), "pitch"))
        .given("e_2", near(hole.edge(), "edge distance"))
        .given("p_2", near(hole.gauge(), "gauge"));
  }

  Figured ofHole(double value, String what) {
    return new Figured(value, hole.name() + ", " + what, hole.source());
  }

  Figured near(OptionalDouble distance, String what) {
    return ofHole(
        distance.orElse(0), distance.isPresent() ? what : what + ", none near, written as 0");
  }

  static Figured ultimate(Metal metal) {
    return new Figured(metal.ultimateStrength(), "metal " + metal.name() + ", f_u", metal.source());
  }

  static Figured proof(Metal metal) {
    return new Figured(metal.proofStrength(), "metal " + metal.name() + ", f_o", metal.source());
  }
}
