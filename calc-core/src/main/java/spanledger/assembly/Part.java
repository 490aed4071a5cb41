package spanledger.assembly;

import spanledger.frame.MemberEnd;
import spanledger.material.Alloy;
import spanledger.section.Section;

/**
 * What pieces of one kind are made of and how they are joined.
 *
 * @param name its name in the job, for example {@code edge-beam}
 * @param section the cross-section
 * @param material the name of its material in the job
 * @param alloy the material's alloy for this section
 * @param roll turn of the section about its length, rad
 * @param joint how both its ends are joined
 */
public record Part(
    String name, Section section, String material, Alloy alloy, double roll, MemberEnd joint) {}
