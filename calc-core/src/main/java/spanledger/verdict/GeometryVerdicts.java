package spanledger.verdict;

import java.util.List;
import java.util.Optional;
import spanledger.action.Figure;
import spanledger.geometry.GeometryFinding;

/** Judges sizes against their limits. */
final class GeometryVerdicts {

  private GeometryVerdicts() {}

  static List<Verdict> of(List<GeometryFinding> findings) {
    return findings.stream().map(GeometryVerdicts::verdict).toList();
  }

  private static Verdict verdict(GeometryFinding finding) {
    if (!finding.isChecked()) {
      return Verdict.notChecked(
          CheckGroup.GEOMETRY, words(finding), finding.subject(), finding.remark());
    }
    Figure limit = finding.limit().orElseThrow();
    double size = finding.size().orElseThrow();
    return new Verdict(
        CheckGroup.GEOMETRY,
        words(finding),
        finding.subject(),
        finding.utilisation() <= 1 ? Status.PASSED : Status.FAILED,
        finding.atMost() ? size : limit.value(),
        finding.atMost() ? limit.value() : size,
        limit.dimension().coreUnit(),
        Optional.empty(),
        (finding.remark().isEmpty() ? "" : finding.remark() + "; ") + limit.source().citation());
  }

  private static String words(GeometryFinding finding) {
    return finding.check() + (finding.atMost() ? ", at most" : ", at least");
  }
}
