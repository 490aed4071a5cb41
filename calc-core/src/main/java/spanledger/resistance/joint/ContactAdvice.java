package spanledger.resistance.joint;

import spanledger.provenance.Source;

/**
 * Advice on two metals that touch; not a verdict.
 *
 * @param metal one of them
 * @param other the other
 * @param surroundings of the joint
 * @param advice in plain words
 * @param source where it comes from
 */
public record ContactAdvice(
    ContactMetal metal,
    ContactMetal other,
    Surroundings surroundings,
    String advice,
    Source source) {

  /** Both metals, for example {@code aluminium and zinc-coated steel}. */
  public String words() {
    return metal.words() + " and " + other.words();
  }
}
