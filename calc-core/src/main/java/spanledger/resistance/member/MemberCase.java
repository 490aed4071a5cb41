package spanledger.resistance.member;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import spanledger.material.Alloy;

/**
 * A member, or a bay of one, as a code looks at it.
 *
 * <p>A member whose lateral restraints are unequally spaced is one case per bay between them. All
 * axes are the principal axes of the section, as its properties are.
 *
 * @param name of the member, with the bay if there are several
 * @param section its cross-section
 * @param alloy what it is made of, chosen for form and wall thickness
 * @param lengths the buckling length of each mode; a mode without one makes the member {@link
 *     NotCheckable}
 * @param moments what lateral-torsional buckling has to know of the moment diagram and the load
 * @param welds along the member; empty if it is not welded
 * @param holes through its walls
 * @param declared resistances by test or table, checked beside those of the code
 */
public record MemberCase(
    String name,
    MemberSection section,
    Alloy alloy,
    Map<BucklingMode, BucklingLength> lengths,
    MomentFactors moments,
    List<Weld> welds,
    List<Hole> holes,
    List<DeclaredResistance> declared) {

  public MemberCase {
    lengths = Map.copyOf(lengths);
    welds = List.copyOf(welds);
    holes = List.copyOf(holes);
    declared = List.copyOf(declared);
  }

  /** A member without welds, holes and declared resistances, under a uniform moment. */
  public MemberCase(
      String name, MemberSection section, Alloy alloy, Map<BucklingMode, BucklingLength> lengths) {
    this(name, section, alloy, lengths, MomentFactors.uniform(), List.of(), List.of(), List.of());
  }

  /** Where cuts are needed besides where effects are greatest: welds across it and holes, mm. */
  public List<Double> weakPlaces() {
    return Stream.concat(
            welds.stream()
                .filter(Weld.Across.class::isInstance)
                .map(weld -> ((Weld.Across) weld).place()),
            holes.stream().map(Hole::place))
        .distinct()
        .sorted()
        .toList();
  }

  public MemberCase with(MomentFactors other) {
    return new MemberCase(name, section, alloy, lengths, other, welds, holes, declared);
  }

  public MemberCase withWelds(List<Weld> other) {
    return new MemberCase(name, section, alloy, lengths, moments, other, holes, declared);
  }

  public MemberCase withHoles(List<Hole> other) {
    return new MemberCase(name, section, alloy, lengths, moments, welds, other, declared);
  }

  public MemberCase withDeclared(List<DeclaredResistance> other) {
    return new MemberCase(name, section, alloy, lengths, moments, welds, holes, other);
  }
}
