package spanledger.picture.structure;

import java.util.Optional;
import spanledger.picture.Ink;
import spanledger.picture.Pen;
import spanledger.verdict.Status;
import spanledger.verdict.Verdict;

/** Bands of utilisation, each darker and wider than the one before. */
enum UseBand {
  LITTLE(0.25, 0xE3EDE6, 2.6, "up to 0.25"),
  MODERATE(0.5, 0xB3D2CB, 3.2, "0.25 to 0.50"),
  MUCH(0.75, 0x7CAFAE, 4, "0.50 to 0.75"),
  HIGH(0.9, 0x46808F, 5, "0.75 to 0.90"),
  NEARLY_ALL(1, 0x27495F, 6.2, "0.90 to 1.00"),
  FAILS(Double.POSITIVE_INFINITY, 0x6E0019, 7.6, "over 1: FAILS");

  private final double most;
  private final int rgb;
  private final double width;
  private final String words;

  UseBand(double most, int rgb, double width, String words) {
    this.most = most;
    this.rgb = rgb;
    this.width = width;
    this.words = words;
  }

  static UseBand of(Verdict verdict) {
    if (verdict.status() == Status.FAILED) {
      return FAILS;
    }
    for (UseBand band : values()) {
      if (verdict.utilisation() <= band.most) {
        return band;
      }
    }
    return FAILS;
  }

  Ink ink() {
    return new Ink(rgb);
  }

  String words() {
    return words;
  }

  BarStyle style() {
    return new BarStyle(
        ink(),
        Ink.BLACK,
        width,
        this == FAILS ? Optional.of(Pen.dashed(Ink.WHITE, 2.6, 6.0, 4.0)) : Optional.empty());
  }

  /** How a member looks for which nothing was worked out. */
  static BarStyle unknown() {
    return new BarStyle(Ink.WHITE, Ink.QUIET, 3, Optional.of(Pen.dashed(Ink.BLACK, 1, 1.5, 4.0)));
  }
}
