package spanledger.joint;

/**
 * What a part of a foot is made of.
 *
 * @param name in words
 * @param proofStrength 0.2 % proof or yield strength, MPa
 * @param ultimateStrength MPa; the proof strength where nobody says more
 * @param youngsModulus MPa
 */
public record FootMetal(
    String name, double proofStrength, double ultimateStrength, double youngsModulus) {}
