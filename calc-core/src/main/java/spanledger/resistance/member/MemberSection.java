package spanledger.resistance.member;

import java.util.List;
import java.util.Optional;
import spanledger.provenance.Source;
import spanledger.section.SectionProperties;
import spanledger.section.plate.Plate;

/**
 * What member checks need of a section beyond {@link SectionProperties}: its walls with their
 * places, shear centre, warping, asymmetry. Made by {@link MemberSections#of}.
 *
 * <p>The origin is the centroid, y and z are the principal axes that the properties are about.
 *
 * @param name of the section
 * @param form its family
 * @param doublySymmetric whether both axes are axes of symmetry
 * @param properties the gross properties
 * @param up from the centroid to the farthest fibre at +z, mm
 * @param down the same at -z, mm
 * @param right the same at +y, mm
 * @param left the same at -y, mm
 * @param shearCentreY y_s, mm
 * @param shearCentreZ z_s, mm
 * @param wagnerY y_j = y_s − ∫y(y² + z²) dA / (2 I_z), mm
 * @param wagnerZ z_j = z_s − ∫z(y² + z²) dA / (2 I_y), mm
 * @param warpingConstant I_w, mm⁶
 * @param warpingOrdinate the greatest warping ω about the shear centre, mm²
 * @param walls flat parts and round tubes; start, end and names as in the section
 * @param doubt why the walls are not known for sure; empty if they are
 * @param source where the properties come from
 */
public record MemberSection(
    String name,
    SectionForm form,
    boolean doublySymmetric,
    SectionProperties properties,
    double up,
    double down,
    double right,
    double left,
    double shearCentreY,
    double shearCentreZ,
    double wagnerY,
    double wagnerZ,
    double warpingConstant,
    double warpingOrdinate,
    List<Plate> walls,
    Optional<String> doubt,
    Source source) {

  public MemberSection {
    walls = List.copyOf(walls);
  }

  /** The wall of that name, if there is one. */
  public Optional<Plate> wall(String plate) {
    return walls.stream().filter(wall -> wall.name().equals(plate)).findFirst();
  }
}
