package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spanledger.envelope.Governing;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointFinding;
import spanledger.jointdesign.JointJudgement;
import spanledger.jointdesign.JointRun;
import spanledger.quantity.Dimension;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.member.Feed;
import spanledger.resistance.member.Working;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.Outcome;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.WorkedPage;

/**
 * Joints: what their checks are given, how forces are shared bolt by bolt, the checks, the worst.
 */
final class JointSheets {

  private static final String USED = "utilisation";

  private final JointGroups groups;
  private final IdentityHashMap<Governing, NumberAt> uses = new IdentityHashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  private JointSheets(JointGroups groups) {
    this.groups = groups;
  }

  static JointSheets write(
      LedgerWorkbook workbook,
      Optional<JointJudgement> judgement,
      JointGroups groups,
      CutSheets cuts) {
    JointSheets sheets = new JointSheets(groups);
    if (judgement.isPresent() && !groups.shown().isEmpty()) {
      sheets.write(workbook, judgement.get(), cuts);
    }
    return sheets;
  }

  private void write(LedgerWorkbook workbook, JointJudgement judgement, CutSheets cuts) {
    String code = judgement.title();
    LedgerSheet given = workbook.sheet(SheetNames.JOINT_INPUTS);
    given.title(
        "Joint inputs",
        code + ": joints as the job describes them. Sizes, friction and tests are the job's own.");
    writeEnds(given);
    List<JointTables.Run> sharing = new ArrayList<>();
    List<JointTables.Run> checking = new ArrayList<>();
    for (JointRun run : groups.runs()) {
      sharing.add(new JointTables.Run(run, run.forces()));
      for (FaceRun face : run.faces()) {
        face.sharing().forEach(w -> sharing.add(new JointTables.Run(run, w)));
        face.checks().forEach(c -> checking.add(new JointTables.Run(run, c.working())));
      }
    }
    JointNumbers numbers = new JointNumbers(given, all(sharing, checking));
    JointMetals.write(given, judgement.contacts());
    JointTables joints = new JointTables(numbers, groups, cuts);
    LedgerSheet forces = workbook.sheet(SheetNames.JOINT_FORCES);
    forces.title(
        "Joint forces",
        "From the member end to each bolt, key and piece of the bed. A face moves as one rigid body"
            + " on springs; its movements are the solver's, and the balance below proves them.");
    joints.write(forces, sharing);
    new JointBalance(joints).write(forces, groups.runs());
    LedgerSheet checks = workbook.sheet(SheetNames.JOINT_CHECKS);
    checks.title(
        "Joint checks",
        code + ": every part under the combinations that govern. A utilisation above 1 fails.");
    joints.write(checks, checking);
    writeWorst(checks, joints);
    writeAll(checks, judgement);
    tables.addAll(joints.tables());
    writeWorked(workbook, joints);
  }

  private void writeEnds(LedgerSheet sheet) {
    Map<String, JointGroups.Shown> byJoint = new TreeMap<>();
    groups.shown().forEach(one -> byJoint.putIfAbsent(one.joint(), one));
    List<List<LedgerCell>> rows = new ArrayList<>();
    byJoint.forEach(
        (name, one) ->
            rows.add(
                List.of(
                    LedgerCell.text(name),
                    LedgerCell.text(String.join("; ", one.ends())),
                    LedgerCell.text(one.finding().joint().source().citation()))));
    sheet.add(
        new DataTable(
            "Member ends by their joint",
            List.of(
                Column.text("joint", 26),
                Column.wrapped("member ends", 60),
                Column.wrapped("described in", 40)),
            rows));
  }

  /** All runs, and those that feed them. */
  private static List<Working> all(List<JointTables.Run> first, List<JointTables.Run> second) {
    List<Working> all = new ArrayList<>();
    IdentityHashMap<Working, Boolean> known = new IdentityHashMap<>();
    first.forEach(run -> collect(run.working(), known, all));
    second.forEach(run -> collect(run.working(), known, all));
    return all;
  }

  private static void collect(
      Working working, IdentityHashMap<Working, Boolean> known, List<Working> into) {
    if (known.put(working, true) != null) {
      return;
    }
    for (Feed feed : working.feeds()) {
      if (feed instanceof Feed.Result result) {
        collect(result.from(), known, into);
      }
    }
    into.add(working);
  }

  private void writeWorst(LedgerSheet sheet, JointTables joints) {
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (JointGroups.Shown one : groups.shown()) {
      JointFinding finding = one.finding();
      List<String> cells = new ArrayList<>();
      double greatest = 0;
      Set<String> seen = new TreeSet<>();
      for (JointCheck check : alike(finding)) {
        NumberAt use = joints.number(check.working(), finding.use().symbol());
        if (seen.add(use.from(sheet.name()))) {
          cells.add(use.from(sheet.name()));
          greatest = Math.max(greatest, use.value());
        }
      }
      JointTables.Place place = joints.place(finding.check().working());
      rows.add(
          List.of(
              LedgerCell.text(one.joint()),
              LedgerCell.text(one.words()),
              LedgerCell.text(finding.use().clause()),
              LedgerCell.live("MAX(" + String.join(",", cells) + ")", greatest),
              LedgerCell.judged("{" + USED + "}<=1", greatest <= 1, Outcome.PASS, Outcome.FAIL),
              new LedgerCell.LiveText(
                  place.table().label(place.row(), 0).from(sheet.name()), finding.part()),
              new LedgerCell.LiveText(
                  place.table().label(place.row(), 1).from(sheet.name()),
                  JointTables.combination(
                      new JointTables.Run(finding.run(), finding.check().working())))));
    }
    DataCells cells =
        sheet.add(
            new DataTable(
                "The worst of each check",
                List.of(
                    Column.text("joint", 40),
                    Column.text("check", 40),
                    Column.text("clause", 30),
                    Column.number(USED, "demand per resistance", Dimension.NONE),
                    Column.text("verdict", 16),
                    Column.text("part", 50),
                    Column.text("combination", 60)),
                rows));
    for (int i = 0; i < rows.size(); i++) {
      uses.put(groups.shown().get(i).finding().governing(), cells.number(i, USED));
    }
  }

  /** The same check of all bolts or keys of its face, in the run that governs. */
  private static List<JointCheck> alike(JointFinding finding) {
    return finding.face().checks().stream()
        .filter(check -> check.uses().contains(finding.use()))
        .toList();
  }

  /** Every member end with its worst check, as found by the search. */
  private static void writeAll(LedgerSheet sheet, JointJudgement judgement) {
    Map<String, JointFinding> worst = new TreeMap<>();
    for (JointFinding finding : judgement.findings()) {
      worst.merge(
          finding.end().name(),
          finding,
          (a, b) -> a.governing().value() >= b.governing().value() ? a : b);
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    worst.forEach(
        (end, finding) ->
            rows.add(
                List.of(
                    LedgerCell.text(end),
                    LedgerCell.text(finding.joint().name()),
                    LedgerCell.solved(finding.governing().value()),
                    LedgerCell.judged(
                        finding.governing().value() <= 1 ? Outcome.PASS : Outcome.FAIL),
                    LedgerCell.text(finding.faceName() + ": " + finding.use().words()),
                    LedgerCell.text(finding.part()),
                    LedgerCell.text(finding.instance().words()))));
    sheet.add(
        new DataTable(
            "All joints: the worst check of every member end",
            List.of(
                Column.text("member end", 40),
                Column.text("kind of joint", 40),
                Column.number("greatest", "found by search", Dimension.NONE),
                Column.text("verdict of the search", 16),
                Column.text("governing check", 40),
                Column.text("part", 50),
                Column.text("combination", 60)),
            rows));
  }

  /** From the member end to the check that governs, for each kind of joint. */
  private void writeWorked(LedgerWorkbook workbook, JointTables joints) {
    LedgerSheet sheet = workbook.sheet(SheetNames.JOINT_WORKED);
    sheet.title(
        "Joint worked pages",
        "For each kind of joint the way from the member end to the check that governs. Change the"
            + " number in a thick box to see another joint, bolt or combination.");
    for (JointGroups.Shown one : groups.worst()) {
      List<Working> way = new ArrayList<>();
      collect(one.finding().check().working(), new IdentityHashMap<>(), way);
      sheet.heading(one.joint() + ", " + one.words());
      for (Working working : way) {
        JointTables.Place place = joints.place(working);
        sheet.heading(place.table().procedure().procedure().title());
        sheet.add(new WorkedPage(place.table(), place.row()));
        sheet.pageBreak();
      }
    }
  }

  /** The live utilisation that a verdict rests on, if it is shown. */
  Optional<NumberAt> use(Governing governing) {
    return Optional.ofNullable(uses.get(governing));
  }

  /** The member ends that a verdict stands for; empty if it is not shown. */
  Set<String> covered(Governing governing) {
    return groups.of(governing).map(JointGroups.Shown::ends).orElse(Set.of());
  }

  /** All tables in order. */
  List<ProcedureCells> tables() {
    return tables;
  }
}
