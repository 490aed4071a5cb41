package spanledger.assembly;

import spanledger.frame.MemberEnd;
import spanledger.material.Alloy;
import spanledger.section.Section;

/**
 * What pieces of one kind are made of and how they are joined. Pieces start at their western,
 * southern or lower end; posts at the foot, stringers at the foot of the flight.
 *
 * @param name its name in the job, for example {@code edge-beam}
 * @param section the cross-section
 * @param material the name of its material in the job
 * @param alloy the material's alloy for this section
 * @param roll turn of the section about its length, rad
 * @param start how its start is joined
 * @param end how its end is joined
 * @param inset how far both ends stand back from the centre lines that they join, mm
 */
public record Part(
    String name,
    Section section,
    String material,
    Alloy alloy,
    double roll,
    MemberEnd start,
    MemberEnd end,
    double inset) {

  public Part {
    if (!(inset >= 0)) {
      throw new IllegalArgumentException("A piece stands back by nothing or more, not " + inset);
    }
  }

  /** A piece joined alike at both ends, which reach to the centre lines. */
  public Part(
      String name, Section section, String material, Alloy alloy, double roll, MemberEnd joint) {
    this(name, section, material, alloy, roll, joint, joint, 0);
  }
}
