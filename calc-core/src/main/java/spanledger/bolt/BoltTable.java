package spanledger.bolt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bolts by grade and by size.
 *
 * @param grades in the order of the data
 * @param sizes in the order of the data
 */
public record BoltTable(List<BoltGrade> grades, List<BoltSize> sizes) {

  /** No bolts. */
  public static final BoltTable EMPTY = new BoltTable(List.of(), List.of());

  public BoltTable {
    grades = List.copyOf(grades);
    sizes = List.copyOf(sizes);
  }

  /** This table with another's rows; of one name, the other's count. */
  public BoltTable with(BoltTable other) {
    List<BoltGrade> allGrades = new ArrayList<>(grades);
    other.grades.forEach(
        grade -> {
          allGrades.removeIf(own -> own.name().equals(grade.name()));
          allGrades.add(grade);
        });
    List<BoltSize> allSizes = new ArrayList<>(sizes);
    other.sizes.forEach(
        size -> {
          allSizes.removeIf(own -> own.name().equals(size.name()));
          allSizes.add(size);
        });
    return new BoltTable(allGrades, allSizes);
  }

  /** The grade of a name, if there is one. */
  public Optional<BoltGrade> grade(String name) {
    return grades.stream().filter(grade -> grade.name().equals(name)).findFirst();
  }

  /** The size of a name, if there is one. */
  public Optional<BoltSize> size(String name) {
    return sizes.stream().filter(size -> size.name().equals(name)).findFirst();
  }
}
