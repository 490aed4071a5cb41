package spanledger.deck;

import java.util.Optional;

/** What people stand on between the members that carry it. */
public sealed interface Panel permits TestedPanel, PlankPanel {

  /** Its name in the job. */
  String name();

  /** Who tested or drew it, and in which document. */
  String reference();

  /** Its weight, MPa (N/mm²), for treads; floors have their finishes. */
  double weight();

  /** The widest opening in it and between two of it, mm, if its author says. */
  Optional<Double> opening();
}
