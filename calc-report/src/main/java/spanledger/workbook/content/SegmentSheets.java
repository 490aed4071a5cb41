package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spanledger.analysis.SegmentGeometry;
import spanledger.analysis.SegmentStiffness;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.job.Job;
import spanledger.provenance.Source;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Length, axes and stiffness of every segment. */
final class SegmentSheets implements SegmentNumbers {

  private static final Source JOB = Source.declared("job file");

  private final Frame frame;
  private final ProcedureCells geometry;
  private final ProcedureCells stiffness;
  private final SpringCells springs;

  private SegmentSheets(
      Frame frame, ProcedureCells geometry, ProcedureCells stiffness, SpringCells springs) {
    this.frame = frame;
    this.geometry = geometry;
    this.stiffness = stiffness;
    this.springs = springs;
  }

  static SegmentSheets write(
      LedgerWorkbook workbook,
      Job job,
      NodeSheet nodes,
      SectionSheet sections,
      SpringCells springs) {
    Frame frame = job.frame();
    ProcedureCells geometry = writeGeometry(workbook, frame, nodes, sections);
    ProcedureCells stiffness = writeStiffness(workbook, frame, geometry, sections, springs);
    return new SegmentSheets(frame, geometry, stiffness, springs);
  }

  private static ProcedureCells writeGeometry(
      LedgerWorkbook workbook, Frame frame, NodeSheet nodes, SectionSheet sections) {
    LedgerSheet sheet = workbook.sheet(SheetNames.SEGMENTS);
    sheet.title(
        "Segments",
        "A member is cut into segments at its nodes. Local x runs along the segment, z up without"
            + " roll.");
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      List<InputCell> inputs = new ArrayList<>();
      for (int axis = 0; axis < 3; axis++) {
        inputs.add(InputCell.shown(nodes.place(segment.first(), axis)));
      }
      for (int axis = 0; axis < 3; axis++) {
        inputs.add(InputCell.shown(nodes.place(segment.second(), axis)));
      }
      addArm(inputs, segment.start().offset());
      addArm(inputs, segment.end().offset());
      inputs.add(InputCell.literal(segment.member().roll(), JOB));
      inputs.add(InputCell.shown(sections.property(segment.member().section(), "alpha")));
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  segment.name(),
                  segment.member().role().words(),
                  segment.first().name(),
                  segment.second().name()),
              inputs));
    }
    return sheet.add(
        new ProcedureTable(
            "",
            SegmentGeometry.PROCEDURE.compile(),
            List.of(
                new ProcedureTable.Label("segment", 22),
                new ProcedureTable.Label("role", 13),
                new ProcedureTable.Label("first node", 16),
                new ProcedureTable.Label("second node", 16)),
            rows));
  }

  private static void addArm(List<InputCell> inputs, Vector arm) {
    inputs.add(InputCell.literal(arm.x(), JOB));
    inputs.add(InputCell.literal(arm.y(), JOB));
    inputs.add(InputCell.literal(arm.z(), JOB));
  }

  private static ProcedureCells writeStiffness(
      LedgerWorkbook workbook,
      Frame frame,
      ProcedureCells geometry,
      SectionSheet sections,
      SpringCells springs) {
    LedgerSheet sheet = workbook.sheet(SheetNames.STIFFNESS);
    sheet.title(
        "Stiffness",
        "Stiffness of each segment between its nodes, its joints included: r = 1 rigid, else spring"
            + " k (0 for a pin).");
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (Segment segment : frame.segments()) {
      Member member = segment.member();
      List<InputCell> inputs = new ArrayList<>();
      inputs.add(InputCell.inline(geometry.number(segment.index(), "L")));
      inputs.add(InputCell.shown(sections.alloy(member.alloy(), "E")));
      inputs.add(InputCell.shown(sections.alloy(member.alloy(), "G")));
      for (String symbol : List.of("A", "A_v_y", "A_v_z", "I_y", "I_z", "I_t")) {
        inputs.add(InputCell.shown(sections.property(member.section(), symbol)));
      }
      for (MemberEnd end : List.of(segment.start(), segment.end())) {
        for (Restraint hold : List.of(end.torsion(), end.aboutY(), end.aboutZ())) {
          addHold(inputs, hold, springs);
        }
      }
      addHold(inputs, segment.start().axial(), springs);
      addHold(inputs, segment.end().axial(), springs);
      rows.add(
          new ProcedureTable.Row(
              List.of(segment.name(), member.section().name(), member.alloy().designation()),
              inputs));
    }
    return sheet.add(
        new ProcedureTable(
            "",
            SegmentStiffness.PROCEDURE.compile(),
            List.of(
                new ProcedureTable.Label("segment", 22),
                new ProcedureTable.Label("section", 14),
                new ProcedureTable.Label("alloy", 14)),
            rows));
  }

  private static void addHold(List<InputCell> inputs, Restraint given, SpringCells springs) {
    Restraint hold = given.engaged();
    inputs.add(InputCell.literal(hold instanceof Restraint.Fixed ? 1 : 0, JOB));
    inputs.add(
        springs
            .stiffness(given)
            .map(InputCell::shown)
            .orElseGet(
                () ->
                    InputCell.literal(
                        hold instanceof Restraint.Spring s ? s.stiffness() : 0, JOB)));
  }

  /** The free play of a spring of a member end, if it is worked out in the workbook. */
  Optional<NumberAt> play(Restraint spring) {
    return springs.play(spring);
  }

  @Override
  public NumberAt geometry(Segment segment, String symbol) {
    return geometry.number(segment.index(), symbol);
  }

  @Override
  public NumberAt stiffness(Segment segment, String symbol) {
    return stiffness.number(segment.index(), symbol);
  }

  @Override
  public Frame frame() {
    return frame;
  }

  ProcedureCells geometryTable() {
    return geometry;
  }

  ProcedureCells stiffnessTable() {
    return stiffness;
  }
}
