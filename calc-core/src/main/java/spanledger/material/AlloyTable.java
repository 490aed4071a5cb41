package spanledger.material;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Published alloys, several rows to a designation.
 *
 * @param rows the rows in the order of their table
 */
public record AlloyTable(List<Alloy> rows) {

  public AlloyTable {
    rows = List.copyOf(rows);
  }

  /** The designations, each once, in the order of the table. */
  public List<String> designations() {
    return rows.stream().map(Alloy::designation).distinct().toList();
  }

  /** This table with another's rows; of one designation, the other's count. */
  public AlloyTable replacing(AlloyTable other) {
    List<Alloy> all = new ArrayList<>(rows);
    all.removeIf(row -> other.designations().contains(row.designation()));
    all.addAll(other.rows());
    return new AlloyTable(all);
  }

  /** This table with rows added. */
  public AlloyTable with(List<Alloy> more) {
    List<Alloy> all = new ArrayList<>(rows);
    all.addAll(more);
    return new AlloyTable(all);
  }

  /**
   * The row for an extrusion. A section whose walls fall into several rows takes the one of least
   * proof strength for all of it, as EN 1999-1-1, Table 3.2b asks (from memory, confirm against the
   * standard).
   *
   * @param designation alloy and temper
   * @param form the product form
   * @param thinnest its thinnest wall, mm
   * @param thickest its thickest wall, mm
   * @throws IllegalArgumentException if the designation is unknown, or is not published for the
   *     form or a thickness; the message names what there is
   */
  public Alloy select(String designation, ProductForm form, double thinnest, double thickest) {
    List<Alloy> named = rows.stream().filter(r -> r.designation().equals(designation)).toList();
    if (named.isEmpty()) {
      throw new IllegalArgumentException(
          "There is no alloy "
              + designation
              + "; known: "
              + String.join(", ", designations())
              + ".");
    }
    List<Alloy> formed = named.stream().filter(r -> r.forms().contains(form)).toList();
    if (formed.isEmpty()) {
      String forms =
          named.stream()
              .flatMap(r -> r.forms().stream())
              .distinct()
              .sorted()
              .map(ProductForm::words)
              .collect(Collectors.joining(", "));
      throw new IllegalArgumentException(
          "Alloy "
              + designation
              + " has no strengths for "
              + form.withArticle()
              + "; published: "
              + forms
              + ".");
    }
    Alloy forThinnest = weakest(formed, form, thinnest);
    Alloy forThickest = weakest(formed, form, thickest);
    return forThinnest.proofStrength() <= forThickest.proofStrength() ? forThinnest : forThickest;
  }

  private static Alloy weakest(List<Alloy> formed, ProductForm form, double thickness) {
    return formed.stream()
        .filter(row -> row.thickness().contains(thickness))
        .min(Comparator.comparingDouble(Alloy::proofStrength))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "Alloy "
                        + formed.get(0).designation()
                        + " has no strengths for "
                        + form.withArticle()
                        + " with a wall of "
                        + ThicknessRange.text(thickness)
                        + "; published: "
                        + formed.stream()
                            .map(row -> row.thickness().words())
                            .collect(Collectors.joining("; "))
                        + "."));
  }
}
