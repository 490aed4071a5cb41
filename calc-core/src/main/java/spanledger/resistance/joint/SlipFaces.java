package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * Faces that preloaded bolts hold by friction.
 *
 * @param name of the place
 * @param bolts how many bolts press the faces together
 * @param faces how many faces each bolt presses
 * @param friction between the faces
 * @param source where the numbers are given
 */
public record SlipFaces(String name, int bolts, int faces, Friction friction, Source source) {

  /**
   * @throws IllegalArgumentException if there is no bolt or no face
   */
  public SlipFaces {
    if (bolts < 1 || faces < 1) {
      throw new IllegalArgumentException(name + ": slip needs 1 bolt and 1 face or more.");
    }
  }
}
