package spanledger.deck;

import java.util.Optional;
import spanledger.material.Alloy;
import spanledger.section.Section;

/**
 * Planks side by side, or one plank as a tread; each bears as a beam of its own.
 *
 * @param name its name in the job
 * @param section of one plank; its depth stands upright
 * @param alloy of the plank
 * @param width of floor that one plank carries, mm
 * @param reference the drawing, or another document that describes it
 * @param weight for treads, MPa (N/mm²)
 * @param opening the widest opening, mm
 */
public record PlankPanel(
    String name,
    Section section,
    Alloy alloy,
    double width,
    String reference,
    double weight,
    Optional<Double> opening)
    implements Panel {}
