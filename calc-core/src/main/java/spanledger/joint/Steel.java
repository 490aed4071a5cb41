package spanledger.joint;

import spanledger.provenance.Source;

/** Stiffness of the steels of bolts and feet, MPa. */
public final class Steel {

  /** Young's modulus of carbon steel. */
  public static final double YOUNGS_MODULUS = 210_000;

  /** Young's modulus of austenitic stainless steel. */
  public static final double AUSTENITIC = 200_000;

  /** Where both come from. */
  public static final Source SOURCE =
      Source.fromMemory("EN 1993-1-1:2005", "3.2.6; EN 1993-1-4, 2.1.3, for austenitic steel");

  private Steel() {}
}
