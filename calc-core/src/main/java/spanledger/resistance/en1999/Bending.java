package spanledger.resistance.en1999;

import spanledger.resistance.member.MemberSection;
import spanledger.section.outline.Point;

/** The four senses of bending of a section. */
enum Bending {
  /** M_y > 0: +z stretched, -z compressed. */
  Y_POSITIVE("M_y > 0", 0, 1, -1),
  Y_NEGATIVE("M_y < 0", 0, 1, 1),
  /** M_z > 0: -y stretched, +y compressed. */
  Z_POSITIVE("M_z > 0", 1, 0, 1),
  Z_NEGATIVE("M_z < 0", 1, 0, -1);

  private final String words;
  private final int alongY;
  private final int alongZ;
  private final int sense;

  Bending(String words, int alongY, int alongZ, int sense) {
    this.words = words;
    this.alongY = alongY;
    this.alongZ = alongZ;
    this.sense = sense;
  }

  String words() {
    return words;
  }

  int alongY() {
    return alongY;
  }

  int alongZ() {
    return alongZ;
  }

  /** 1 if the side of larger coordinates is compressed, else -1. */
  int sense() {
    return sense;
  }

  boolean aboutY() {
    return alongZ == 1;
  }

  /** The other sense about the same axis. */
  Bending opposite() {
    return switch (this) {
      case Y_POSITIVE -> Y_NEGATIVE;
      case Y_NEGATIVE -> Y_POSITIVE;
      case Z_POSITIVE -> Z_NEGATIVE;
      case Z_NEGATIVE -> Z_POSITIVE;
    };
  }

  /** How far a point lies from the centroid towards the compressed side. */
  double place(Point point) {
    // Adding zero keeps a negative zero out of the workbook.
    return sense * (alongY * point.y() + alongZ * point.z()) + 0.0;
  }

  double compressedFibre(MemberSection s) {
    return switch (this) {
      case Y_POSITIVE -> s.down();
      case Y_NEGATIVE -> s.up();
      case Z_POSITIVE -> s.right();
      case Z_NEGATIVE -> s.left();
    };
  }

  double stretchedFibre(MemberSection s) {
    return opposite().compressedFibre(s);
  }

  double secondMoment(MemberSection s) {
    return aboutY() ? s.properties().secondMomentY() : s.properties().secondMomentZ();
  }

  double elasticModulus(MemberSection s) {
    return aboutY() ? s.properties().elasticModulusY() : s.properties().elasticModulusZ();
  }

  double plasticModulus(MemberSection s) {
    return aboutY() ? s.properties().plasticModulusY() : s.properties().plasticModulusZ();
  }
}
