package spanledger.job.problem;

import java.util.Comparator;

/**
 * A place in a text.
 *
 * @param line from 1; 0 if the problem belongs to the file as a whole
 * @param column from 1, in characters; 0 likewise
 */
public record Place(int line, int column) implements Comparable<Place> {

  /** The file as a whole. */
  public static final Place WHOLE_FILE = new Place(0, 0);

  private static final Comparator<Place> ORDER =
      Comparator.comparingInt(Place::line).thenComparingInt(Place::column);

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }
}
