package spanledger.resistance.joint;

import spanledger.provenance.Source;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Figured;
import spanledger.resistance.member.Working;

/** Numbers of a bolt on their way into a run. */
record BoltInputs(Bolt bolt) {

  Working.Feeding diameter(Working.Feeding run) {
    return run.given(
        "d", bolt.size().diameter(), size("diameter of the thread"), bolt.size().source());
  }

  Working.Feeding areas(Working.Feeding run) {
    return run.given("A", bolt.size().shankArea(), size("area of the shank"), bolt.size().source())
        .given("A_s", stressArea());
  }

  Working.Feeding pitch(Working.Feeding run) {
    return run.given("P", bolt.size().pitch(), size("pitch of the thread"), bolt.size().source());
  }

  Working.Feeding acrossFlats(Working.Feeding run) {
    return run.given(
        "s", bolt.size().acrossFlats(), size("width across flats"), bolt.size().source());
  }

  Figured stressArea() {
    return new Figured(
        bolt.size().stressArea(), size("tensile stress area"), bolt.size().areaSource());
  }

  Figured ultimate() {
    return new Figured(
        bolt.grade().ultimateStrength(), grade("tensile strength"), bolt.grade().source());
  }

  Figured proof() {
    return new Figured(
        bolt.grade().proofStrength(), grade("0.2 % proof strength"), bolt.grade().proofSource());
  }

  private String size(String what) {
    return "bolt size " + bolt.size().name() + ", " + what;
  }

  private String grade(String what) {
    return "bolt grade " + bolt.grade().name() + ", " + what;
  }

  /** 1 or 0 as an input. */
  static Feed yes(boolean is, String what, Source source) {
    return new Feed.Given(is ? 1 : 0, what, source);
  }
}
