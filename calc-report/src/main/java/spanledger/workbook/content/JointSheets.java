package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.envelope.Governing;
import spanledger.jointdesign.FaceRun;
import spanledger.jointdesign.JointJudgement;
import spanledger.jointdesign.JointRun;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/**
 * Joints: all of them with their worst check; what the checks are given; how forces are shared bolt
 * by bolt; the checks; and for each kind of joint a worked page that follows the case chosen on it.
 */
final class JointSheets {

  private final JointGroups groups;
  private Optional<JointUses> uses = Optional.empty();
  private List<ProcedureCells> tables = List.of();

  private JointSheets(JointGroups groups) {
    this.groups = groups;
  }

  static JointSheets write(
      LedgerWorkbook workbook,
      Optional<JointJudgement> judgement,
      JointGroups groups,
      CutSheets cuts,
      SupportReactions reactions,
      SpringCells springs) {
    JointSheets sheets = new JointSheets(groups);
    if (judgement.isPresent() && !groups.shown().isEmpty()) {
      sheets.write(workbook, judgement.get(), cuts, reactions, springs);
    }
    return sheets;
  }

  private void write(
      LedgerWorkbook workbook,
      JointJudgement judgement,
      CutSheets cuts,
      SupportReactions reactions,
      SpringCells springs) {
    String code = judgement.title();
    JointCases cases = new JointCases(groups);
    JointRows rows = new JointRows(cases);
    List<JointRows.Row> sharing = new ArrayList<>();
    List<JointRows.Row> checking = new ArrayList<>();
    for (JointCases.Case one : cases.all()) {
      JointRun run = one.run();
      run.shares().forEach(w -> sharing.addAll(rows.add(run, w)));
      for (FaceRun face : run.faces()) {
        face.sharing().forEach(w -> sharing.addAll(rows.add(run, w)));
      }
      for (FaceRun face : run.faces()) {
        face.checks().forEach(c -> checking.addAll(rows.add(run, c.working())));
      }
    }
    List<JointRows.Row> all = new ArrayList<>(sharing);
    all.addAll(checking);

    LedgerSheet given = workbook.sheet(SheetNames.JOINT_INPUTS);
    given.title(
        "Joint inputs",
        code + ": joints as the job describes them. Sizes, friction and tests are the job's own.");
    JointNumbers numbers = new JointNumbers(given, cases, all);
    JointMetals.write(given, judgement.contacts());
    KeptStiffnessTable.write(given, judgement.kept());
    JointTables joints = new JointTables(rows, numbers, groups, cuts, reactions, springs);
    LedgerSheet forces = workbook.sheet(SheetNames.JOINT_FORCES);
    forces.title(
        "Joint forces",
        "From the member end to each bolt, key and piece of the bed. A face moves as one rigid body"
            + " on springs; its movements are the solver's, and the balance below proves them.");
    joints.write(forces, sharing);
    new BracketBalance(joints).write(forces, groups.runs());
    new JointBalance(joints).write(forces, groups.runs());
    LedgerSheet checks = workbook.sheet(SheetNames.JOINT_CHECKS);
    checks.title(
        "Joint checks",
        code + ": every part under the combinations that govern. A utilisation above 1 fails.");
    joints.write(checks, checking);
    JointUses found = new JointUses(groups, cases, joints);
    found.write(checks);
    uses = Optional.of(found);
    tables = joints.tables();
    writePages(workbook, judgement, cases, joints, found);
  }

  private void writePages(
      LedgerWorkbook workbook,
      JointJudgement judgement,
      JointCases cases,
      JointTables joints,
      JointUses found) {
    Map<String, String> pages = JointPage.names(cases);
    LedgerSheet overview = workbook.sheet(SheetNames.JOINTS);
    overview.title(
        "Joints",
        judgement.title()
            + ": all joints and feet with their worst check, and the pages on which they are worked.");
    JointIndex index = new JointIndex(overview, judgement, groups, cases, found, pages);
    LedgerSheet lists = workbook.sheet(SheetNames.JOINT_CHOICES);
    lists.title("Joint choices", "The lists from which the worked pages of joints choose.");
    JointChoices choices = new JointChoices(lists, cases, joints);
    pages.forEach(
        (kind, name) ->
            new JointPage(kind, cases, joints, found, index, choices).write(workbook.sheet(name)));
    workbook.moveBefore(SheetNames.JOINTS, SheetNames.JOINT_INPUTS);
    for (String name : pages.values()) {
      workbook.moveBefore(name, SheetNames.JOINT_CHOICES);
    }
  }

  /** The live utilisation that a verdict rests on, if it is shown. */
  Optional<NumberAt> use(Governing governing) {
    return uses.flatMap(found -> found.worst(governing));
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
