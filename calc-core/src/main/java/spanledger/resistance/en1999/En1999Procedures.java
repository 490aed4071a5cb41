package spanledger.resistance.en1999;

import java.util.List;
import spanledger.procedure.Procedure;

/** The procedures of these checks, in the order in which they feed one another. */
public final class En1999Procedures {

  private static final List<Procedure> ALL =
      List.of(
          WallInCompression.PROCEDURE,
          WallInBending.PROCEDURE,
          RoundWall.PROCEDURE,
          SoftenedStrip.PROCEDURE,
          EffectiveCompression.PROCEDURE,
          EffectiveBending.PROCEDURE,
          ShearWall.PROCEDURE,
          Shear.PROCEDURE,
          SoftenedShare.PROCEDURE,
          FlexuralBuckling.PROCEDURE,
          TorsionalBuckling.PROCEDURE,
          LateralTorsional.PROCEDURE,
          Torsion.PROCEDURE,
          Exponents.PROCEDURE,
          WeakPlace.WELD,
          WeakPlace.HOLES,
          Tension.PROCEDURE,
          WeakPlace.REACHED,
          SectionAtCut.PROCEDURE,
          MemberAtCut.PROCEDURE,
          WebBearing.PROCEDURE);

  private En1999Procedures() {}

  /** All of them. */
  public static List<Procedure> all() {
    return ALL;
  }
}
