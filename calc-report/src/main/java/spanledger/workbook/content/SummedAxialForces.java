package spanledger.workbook.content;

import spanledger.behaviour.CombinationBehaviour;
import spanledger.frame.Segment;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;

/** Mean axial forces under a combination as sums over its load cases, live. */
record SummedAxialForces(
    LedgerSheet sheet,
    CombinationBehaviour combination,
    CombinationSheet combinations,
    EndForceSheets forces,
    LoadSumSheet sums,
    SegmentSheets segments) {

  /** What pulls at the far end, and half of what acts along the segment. */
  LedgerCell of(Segment segment) {
    Sums ends = new Sums(sheet.name());
    Sums along = new Sums(sheet.name());
    for (CombinationSheet.Weighted part : combinations.parts(combination.instance())) {
      ends.plusProduct(part.factor(), forces.endForce(part.kept(), segment, "F_x2"));
      if (sums.isLoaded(part.kept(), segment)) {
        along.plusProduct(part.factor(), sums.number(part.kept(), segment, "m_1x"));
      }
    }
    if (along.isEmpty()) {
      return ends.cell();
    }
    var length = segments.geometry(segment, "L");
    return LedgerCell.live(
        ends.formula() + "+(" + along.formula() + ")/" + length.from(sheet.name()),
        ends.value() + along.value() / length.value());
  }
}
