package spanledger.resistance.adm;

import spanledger.resistance.member.MemberSection;
import spanledger.section.outline.Point;

/**
 * Towards which side a member is bent. A positive M_y stretches the fibres at +z, a positive M_z
 * those at -y.
 */
public enum BendingSide {
  Y_POSITIVE("M_y > 0"),
  Y_NEGATIVE("M_y < 0"),
  Z_POSITIVE("M_z > 0"),
  Z_NEGATIVE("M_z < 0");

  private final String words;

  BendingSide(String words) {
    this.words = words;
  }

  /** The label of rows for it. */
  public String words() {
    return words;
  }

  /** Whether it is bending about y. */
  public boolean aboutY() {
    return this == Y_POSITIVE || this == Y_NEGATIVE;
  }

  /** The other side, about the same axis. */
  public BendingSide opposite() {
    return switch (this) {
      case Y_POSITIVE -> Y_NEGATIVE;
      case Y_NEGATIVE -> Y_POSITIVE;
      case Z_POSITIVE -> Z_NEGATIVE;
      case Z_NEGATIVE -> Z_POSITIVE;
    };
  }

  /** The distance of a point from the neutral axis, positive where it is compressed, mm. */
  public double distance(Point point) {
    return switch (this) {
      case Y_POSITIVE -> -point.z();
      case Y_NEGATIVE -> point.z();
      case Z_POSITIVE -> point.y();
      case Z_NEGATIVE -> -point.y();
    };
  }

  /** The most compressed fibre from the neutral axis, mm. */
  public double compressed(MemberSection section) {
    return switch (this) {
      case Y_POSITIVE -> section.down();
      case Y_NEGATIVE -> section.up();
      case Z_POSITIVE -> section.right();
      case Z_NEGATIVE -> section.left();
    };
  }

  /** The second moment of area about the axis, mm⁴. */
  public double moment(MemberSection section) {
    return aboutY() ? section.properties().secondMomentY() : section.properties().secondMomentZ();
  }

  /** The plastic modulus about the axis, mm³. */
  public double plastic(MemberSection section) {
    return aboutY()
        ? section.properties().plasticModulusY()
        : section.properties().plasticModulusZ();
  }
}
