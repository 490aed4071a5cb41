package spanledger.section.plate;

import java.util.Optional;
import java.util.OptionalDouble;
import spanledger.section.outline.Point;
import spanledger.section.outline.Similarity;

/** What a user says about one plate, in place of what was recognised. */
public sealed interface PlateCorrection {

  /** The name of the plate. */
  String plate();

  /** The correction after a move of the outline. */
  PlateCorrection moved(Similarity similarity);

  /**
   * The plate is as recognised, whatever doubt there was.
   *
   * @param near a point on its midline, which shows that the plate meant is the one of this name
   */
  record Confirm(String plate, Point near) implements PlateCorrection {
    @Override
    public Confirm moved(Similarity similarity) {
      return new Confirm(plate, similarity.apply(near));
    }
  }

  /**
   * The plate is of another kind or size.
   *
   * @param near a point on its midline
   */
  record Change(
      String plate,
      Point near,
      Optional<PlateKind> kind,
      OptionalDouble width,
      OptionalDouble thickness)
      implements PlateCorrection {
    @Override
    public Change moved(Similarity similarity) {
      return new Change(plate, similarity.apply(near), kind, width, thickness);
    }
  }

  /**
   * The plate is none.
   *
   * @param near a point on its midline
   */
  record Drop(String plate, Point near) implements PlateCorrection {
    @Override
    public Drop moved(Similarity similarity) {
      return new Drop(plate, similarity.apply(near));
    }
  }

  /**
   * A plate that was not recognised.
   *
   * @param added the plate
   */
  record Add(Plate added) implements PlateCorrection {
    @Override
    public String plate() {
      return added.name();
    }

    @Override
    public Add moved(Similarity similarity) {
      return new Add(added.moved(similarity));
    }
  }
}
