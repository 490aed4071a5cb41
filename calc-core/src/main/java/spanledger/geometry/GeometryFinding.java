package spanledger.geometry;

import java.util.Optional;
import spanledger.action.Figure;

/**
 * A size of the structure against a limit.
 *
 * @param check what is limited, for example {@code rise}
 * @param subject on what, for example {@code stair1}
 * @param size the size, if it is known
 * @param limit the limit, if there is one
 * @param atMost whether the limit is a greatest value and not a least one
 * @param step where the size is worked out as a step of {@link StairSteps} for the subject, the
 *     symbol of that step
 * @param remark what to know beside; why it is not checked, if it is not
 */
public record GeometryFinding(
    String check,
    String subject,
    Optional<Double> size,
    Optional<Figure> limit,
    boolean atMost,
    Optional<String> step,
    String remark) {

  /** Whether size and limit are both known. */
  public boolean isChecked() {
    return size.isPresent() && limit.isPresent();
  }

  /**
   * The utilisation, at most 1 where the limit is kept.
   *
   * @throws java.util.NoSuchElementException if it is not checked
   */
  public double utilisation() {
    Figure figure = limit.orElseThrow();
    return LimitCheck.utilisation(figure.dimension(), atMost, size.orElseThrow(), figure.value());
  }
}
