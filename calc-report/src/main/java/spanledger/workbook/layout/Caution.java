package spanledger.workbook.layout;

import java.util.List;

/**
 * What a reader must know before relying on the sheet: the standing caution, then those of the job.
 *
 * @param further cautions in full sentences; may be empty
 */
public record Caution(List<String> further) implements Block<Integer> {

  /** Stands in every workbook. */
  public static final String STANDING =
      "This calculation is an aid to, and not a substitute for, the judgement of a licensed engineer,"
          + " who must check and approve it before anything is built or loaded. Local codes and the"
          + " authority having jurisdiction govern.";

  public Caution {
    further = List.copyOf(further);
  }

  /** The number of lines written. */
  @Override
  public Integer writeTo(LedgerSheet sheet) {
    sheet.paragraph(CellRole.CAUTION_HEAD, "⚠ Caution");
    sheet.paragraph(CellRole.CAUTION, STANDING);
    further.forEach(words -> sheet.paragraph(CellRole.CAUTION, words));
    return 2 + further.size();
  }
}
