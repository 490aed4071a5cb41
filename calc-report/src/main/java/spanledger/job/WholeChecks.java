package spanledger.job;

import java.util.HashSet;
import java.util.Set;
import spanledger.action.Rail;
import spanledger.action.Surface;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Quoted;

/**
 * Checks that span several parts of a job. Those that a fault of one part would set off as well run
 * only where the parts are sound, so that one fault is told once.
 */
final class WholeChecks {

  private final Reading reading;
  private final Structure structure;
  private final Names<Surface> surfaces;
  private final Names<Rail> rails;

  WholeChecks(Reading reading, Structure structure, Names<Surface> surfaces, Names<Rail> rails) {
    this.reading = reading;
    this.structure = structure;
    this.surfaces = surfaces;
    this.rails = rails;
  }

  /** Runs all checks. */
  void run(Located root, Frame frame, FrameChecks checks) {
    checks.findMissedJoints();
    if (structure.isUsable()) {
      checks.findLooseSupports();
      checks.findUnsupported();
    }
    for (Surface surface : surfaces.usable()) {
      FloorCarrying.fault(surface, frame).ifPresent(words -> reportCarrying(surface, words));
    }
    boolean known = structure.isUsable() && surfaces.areAllUsable() && rails.areAllUsable();
    if (known) {
      warnUnloaded(root);
    }
    if (known && structure.isSound()) {
      warnUnused();
    }
  }

  private void reportCarrying(Surface surface, String words) {
    reading.error(
        surfaces.entry(surface.name()),
        words,
        "members that together carry the whole floor once, over its full length",
        "correct \"carriedBy\" or \"corners\"");
  }

  private void warnUnused() {
    warnUnused(structure.sections(), "section");
    warnUnused(structure.materials(), "material");
    warnUnused(structure.panels(), "panel");
    warnUnused(structure.nodes(), "node");
  }

  private void warnUnused(Names<?> names, String kind) {
    for (Located.Entry entry : names.unused()) {
      reading.warning(
          entry,
          kind + " " + Quoted.text(entry.key()) + ", which nothing uses",
          "only what the structure needs",
          "remove it, or use it where it was meant");
    }
  }

  private void warnUnloaded(Located root) {
    Set<String> railed = new HashSet<>();
    for (Rail rail : rails.usable()) {
      rail.members().forEach(member -> railed.add(member.name()));
    }
    boolean floor = false;
    for (Member member : structure.members().usable()) {
      floor |= member.role() == MemberRole.FLOOR;
      if (member.role() == MemberRole.RAIL && !railed.contains(member.name())) {
        reading.warning(
            structure.members().entry(member.name()),
            "rail " + Quoted.text(member.name()) + ", which takes no guardrail load",
            "every member of role \"rail\" in one of \"rails\"",
            "add it to the members of a rail");
      }
    }
    if (floor && surfaces.usable().isEmpty()) {
      reading.warning(
          root,
          "floor members but no floor, so no floor load acts",
          "\"surfaces\" with the floors",
          "add them, unless the structure has no floor");
    }
  }
}
