package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import spanledger.procedure.Input;

/** What the header of a table says about where its inputs come from, and what its rows say. */
final class InputSources {

  private static final String PER_ROW = "see last column";

  private final ProcedureTable table;
  private final List<String> kinds = new ArrayList<>();
  private final List<String> sources = new ArrayList<>();
  private final List<Boolean> differing = new ArrayList<>();

  InputSources(ProcedureTable table) {
    this.table = table;
    for (int i = 0; i < inputs().size(); i++) {
      Set<String> kindsFound = new LinkedHashSet<>();
      Set<String> sourcesFound = new LinkedHashSet<>();
      for (ProcedureTable.Row row : table.rows()) {
        kindsFound.add(kind(row.inputs().get(i)));
        sourcesFound.add(source(row.inputs().get(i)));
      }
      kinds.add(String.join(" or ", kindsFound));
      sources.add(sourcesFound.size() == 1 ? sourcesFound.iterator().next() : PER_ROW);
      differing.add(sourcesFound.size() > 1);
    }
  }

  /** How the input comes into the table, for the header. */
  String kind(int input) {
    return kinds.get(input);
  }

  /** The source common to all rows, or where to look. */
  String source(int input) {
    return sources.get(input);
  }

  /** Whether rows have sources of their own. */
  boolean perRow() {
    return differing.contains(true);
  }

  /** Whether the source of the input differs from row to row. */
  boolean differs(int input) {
    return differing.get(input);
  }

  /** The sources of one row's inputs, where they differ from row to row. */
  String ofRow(int row) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < sources.size(); i++) {
      String source = source(table.rows().get(row).inputs().get(i));
      if (differing.get(i) && !source.isEmpty()) {
        texts.add(inputs().get(i).symbol().symbol() + ": " + source);
      }
    }
    return String.join("; ", texts);
  }

  /** How a single input comes in. */
  static String kind(InputCell cell) {
    if (cell instanceof InputCell.Literal) {
      return "given";
    } else if (cell instanceof InputCell.Solved) {
      return "solver value";
    } else if (cell instanceof InputCell.Linked linked) {
      return "from " + linked.target().at().sheet();
    } else if (cell instanceof InputCell.EarlierRow) {
      return "from a row above";
    }
    return "formula";
  }

  /** The source of a single input; empty for links, whose source stands at the other cell. */
  static String source(InputCell cell) {
    if (cell instanceof InputCell.Literal literal) {
      return SourceText.of(literal.source());
    } else if (cell instanceof InputCell.Solved solved) {
      return "proven by " + solved.proof();
    } else if (cell instanceof InputCell.Live live) {
      return live.note();
    }
    return "";
  }

  private List<Input> inputs() {
    return table.procedure().procedure().inputs();
  }
}
